package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A number without a unit is degrees to whoever types it and was radians to whoever reckoned:
 * sin(30) read so is -0.988 where 0.5 was meant (common practice, no source).
 */
class BareAngleTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = 30\ny = sin(a)",
        "n = 24\ny [deg] = 360 / n",
        "n = 24\ny = 2 * n\nlimit y: at most 50 deg",
        "a = 30\nb = a\ny = tan(b)",
        "a = 30 ± 1\ny = cos(a)",
        "a = 30\ny [deg] = a",
        "a = 30\ny = a + 5 deg",
        "a = 20\nlimit a: at most 30 deg",
        "a = 30\ny = offset_dowel_shift(0.12 mm, a)",
        "a = [0, 90, 180]\ny = eccentricity_from_dial([0 mm, 1 mm, 0 mm], a)"
      })
  void aNameThatIsABareNumberIsNoAngle(String lines) {
    List<String> messages =
        SheetOfLines.of(lines).errors().stream().map(e -> e.message() + " " + e.wayOut()).toList();
    assertEquals(1, messages.size(), messages.toString());
    assertTrue(messages.get(0).contains("without a unit"), messages.get(0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a = 3 mm / 10 mm\ny = tan(a)",
        "a [1] = 0.3\ny = tan(a)",
        "a = 0.3\ny = tan(a * 1 rad)",
        "a = 24\ny [deg] = 360 deg / a",
        "a = 0\ny = cos(a)",
        "m = 23\nn = 41\ny [deg] = atan(m / n)",
        "n = 24\ny = sin(pi / n)",
        "a = 2\nb = 3 mm / 6 mm\ny = tan(b + a)"
      })
  void aRatioIsOneInRadians(String lines) {
    assertEquals(List.of(), SheetOfLines.of(lines).errors());
  }

  /** What reads a name is looked at again when only this changes of it. */
  @Test
  void anEditFromARatioToANumberIsSeenByItsReaders() {
    ValueGraph graph = ValueGraph.of(GraphSource.ofWorkings("a = 3 mm / 10 mm\ny = tan(a)"));
    assertEquals(Figure.State.FRESH, graph.figure("y").orElseThrow().state());
    graph.update(GraphSource.ofWorkings("a = 30\ny = tan(a)"));
    assertEquals(Figure.State.ERROR, graph.figure("y").orElseThrow().state());
    graph.update(GraphSource.ofWorkings("a = 3 mm / 10 mm\ny = tan(a)"));
    assertEquals(Figure.State.FRESH, graph.figure("y").orElseThrow().state());
  }
}
