package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * JCGM 100:2008, 5.1.2 note and F.2.4.4 (cosine error of an alignment that is nought on average):
 * the slope is nought there and says that the result is exact.
 */
class BendingTest {
  private static List<String> hints(String line) {
    return ValueGraph.of(
            GraphSource.ofWorkings("z = 0 mm ± 0.1 mm\nb = 1 mm ± 0.1 mm\ny = " + line))
        .figure("y")
        .orElseThrow()
        .hints()
        .stream()
        .map(h -> h.message())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "z * z",
        "z^2",
        "cos(z / 1 mm * 1 rad)",
        "hypot(z, 0.01 mm)",
        "cosine_error(150 mm, offset: z)"
      })
  void whatBendsMoreThanItSlopesIsSaid(String line) {
    List<String> hints = hints(line);
    assertEquals(1, hints.size());
    assertTrue(hints.get(0).contains("bends more than it slopes"), hints.get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "b * b",
        "z * b",
        "b^3",
        "hypot(z, b)",
        "cos(b / 1 mm * 1 rad)",
        "z - z",
        "big_enough(b, 1 mm)",
        "thermal_growth(b, 23e-6 1/K, 60 K)",
        // a step and a corner: what is chosen, not a curve
        "shim_pack(b, [0.5 mm, 0.52 mm, 0.6 mm])",
        "bore_wear([[50 mm + z, 50 mm], [50 mm, 50 mm]])"
      })
  void whatGoesByItsSlopeIsLeftInPeace(String line) {
    assertTrue(hints(line).stream().noneMatch(h -> h.contains("bends")), hints(line).toString());
  }
}
