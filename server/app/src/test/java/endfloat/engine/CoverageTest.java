package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverageTest {

  /** JCGM 100:2008, table G.2, column p = 95.45 % (values from memory, recomputed). */
  @ParameterizedTest
  @CsvSource({"1, 13.97", "2, 4.53", "3, 3.31", "5, 2.65", "10, 2.28", "20, 2.13", "50, 2.05"})
  void theFactorIsThatOfTableG2(double degrees, double factor) {
    assertEquals(factor, Coverage.factor(2, degrees), 0.005);
  }

  /** The same table, column p = 99.73 %, the normal share of k = 3; k itself where none are few. */
  @Test
  void anyKHasItsOwnProbability() {
    assertEquals(9.22, Coverage.factor(3, 3), 0.005);
    assertEquals(3, Coverage.factor(3, Double.POSITIVE_INFINITY));
    assertEquals(2, Coverage.factor(2, Double.NaN));
    assertEquals(2, Coverage.factor(2, 1e5), 1e-4);
  }

  /**
   * Mean of two repeats that differ by 0.02 mm: u = 0.01 mm (JCGM 100, 4.2.3), 1 degree of freedom,
   * so U = 13.97 x 0.01 mm, and a limit 0.05 mm away is not proven.
   */
  @Test
  void twoRepeatsAreShownAndJudgedWithTheirOneDegreeOfFreedom() {
    ValueGraph graph =
        ValueGraph.of(
            GraphSource.ofWorkings(
                """
                lash [mm] = 0.20 mm ± 0.02 mm (k = 2, dof = 1)
                twice [mm] = 2 * lash
                limit twice: at most 0.50 mm
                """));
    Figure twice = graph.figure("twice").orElseThrow();
    assertEquals("0.40 ± 0.28 mm", Shown.of(twice, graph.settings()).orElseThrow().text());
    assertEquals(
        List.of(Verdict.NOT_PROVEN), twice.judgements().stream().map(Judgement::verdict).toList());
  }
}
