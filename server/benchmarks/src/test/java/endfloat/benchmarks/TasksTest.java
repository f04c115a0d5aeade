package endfloat.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.engine.Figure;
import endfloat.engine.ValueGraph;
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

  @Test
  void chainInTheLanguageGivesTheReferenceFiguresAndUncertainties() {
    ValueGraph graph = ValueGraph.of(HotBacklash.SOURCE);
    for (int i = 0; i < HotBacklash.RESULTS.size(); i++) {
      Figure figure = graph.figure(HotBacklash.RESULTS.get(i)).orElseThrow();
      double value = HotBacklash.VALUES[i];
      double u = HotBacklash.UNCERTAINTIES[i];
      assertEquals(value, figure.si(), 1e-13 * Math.abs(value), figure.name());
      // The reference is printed to twelve figures.
      assertEquals(u, figure.standardUncertainty(), 1e-11 * u, figure.name());
    }
  }

  @Test
  void editInTheLanguageGivesTheFiguresByHand() {
    int families = 100;
    EditBenchmark edit = new EditBenchmark();
    edit.formulas = 10 * families;
    edit.spread = "";
    edit.setUp();
    for (int n = 0; n < 10; n++) {
      double ours = edit.editEndfloat();
      assertEquals(n % 2 == 0 ? edit.byHand(1.9) : edit.byHandFromStart(), ours, 1e-14);
    }
  }

  @Test
  void editOfTheExpressionEvaluatorGivesTheFiguresByHand() {
    EditBenchmark edit = new EditBenchmark();
    edit.formulas = 1000;
    edit.spread = "";
    edit.setUp();
    assertEquals(edit.byHand(1.1), edit.editExpressionEvaluator(), 1e-14);
    assertEquals(edit.byHand(1.9), edit.editExpressionEvaluator(), 1e-14);
  }
}
