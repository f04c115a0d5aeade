package endfloat.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Every form of a task gives the same figures before it is timed. */
class TasksTest {

  private static void assertFigures(double[] out) {
    for (int i = 0; i < out.length; i++) {
      double expected = HotBacklash.VALUES[i];
      assertEquals(expected, out[i], 1e-14 * Math.abs(expected), HotBacklash.RESULTS.get(i));
    }
  }

  @Test
  void chainByHandGivesTheReferenceFigures() {
    double[] out = new double[HotBacklash.RESULTS.size()];
    HotBacklash.byHand(HotBacklash.SI, out);
    assertFigures(out);
  }

  @Test
  void chainOfTheExpressionEvaluatorGivesTheReferenceFigures() {
    double[] out = new double[HotBacklash.RESULTS.size()];
    ChainBenchmark.run(ChainBenchmark.evaluators(), out);
    assertFigures(out);
  }
}
