package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slow work is left for later, taken up when it is done, and dropped when an edit overtakes it. */
class HeavyWorkTest {
  private static final String LINES =
      """
      chain = chain_monte_carlo([link(10 mm, 0.1 mm, sense: 1), link(9 mm, 0.1 mm, sense: -1)], trials: 2000)
      gap [mm] = chain.mean + 1 mm
      other = 3
      """;

  private static ValueGraph graph() {
    ValueGraph graph = new ValueGraph(Catalogue.library());
    graph.leaveHeavyWork();
    graph.update(GraphSource.ofWorkings(LINES));
    return graph;
  }

  @Test
  void thereIsAHeavyCalculation() {
    assertTrue(Catalogue.library().all().stream().anyMatch(Calculation::heavy));
  }

  @Test
  void theRestGoesOnMeanwhile() {
    ValueGraph graph = graph();
    assertEquals(Figure.State.WORKING, graph.figure("chain").orElseThrow().state());
    assertEquals(Figure.State.WAITING, graph.figure("gap").orElseThrow().state());
    assertEquals("chain", graph.figure("gap").orElseThrow().waitingOn().get(0).name());
    assertEquals(3, graph.figure("other").orElseThrow().si());
  }

  @Test
  void whenItIsDoneTheFiguresAreThoseWorkedOutAtOnce() {
    ValueGraph graph = graph();
    List<HeavyWork> works = graph.takeHeavyWork();
    assertEquals(1, works.size());
    works.get(0).run();
    assertEquals(1.0, works.get(0).progress());
    assertTrue(graph.finished(works.get(0)).names().contains("gap"));
    assertEquals(
        ValueGraph.of(GraphSource.ofWorkings(LINES)).figures().values().stream().toList(),
        graph.figures().values().stream().toList());
    assertEquals(List.of(), graph.takeHeavyWork());
  }

  @Test
  void anEditElsewhereLeavesItRunningAndOneOfItsValuesCancelsIt() {
    ValueGraph graph = graph();
    HeavyWork work = graph.takeHeavyWork().get(0);
    graph.update(new Clause.Working("w1", "1", LINES.replace("other = 3", "other = 4")));
    assertTrue(!work.isCancelled());
    assertEquals(List.of(), graph.takeHeavyWork());
    graph.update(new Clause.Working("w1", "1", LINES.replace("10 mm", "11 mm")));
    assertTrue(work.isCancelled());
    work.run();
    graph.finished(work);
    assertEquals(Figure.State.WORKING, graph.figure("chain").orElseThrow().state());
    HeavyWork second = graph.takeHeavyWork().get(0);
    second.run();
    graph.finished(second);
    assertEquals(Figure.State.FRESH, graph.figure("chain").orElseThrow().state());
  }
}
