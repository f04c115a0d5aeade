package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ValueGraphTest {
  private static Clause.Working working(String id, String label, String text) {
    return new Clause.Working(id, label, text);
  }

  private static GraphSource source(Clause... clauses) {
    return new GraphSource(List.of(clauses), List.of(), GraphSettings.STANDARD);
  }

  private static double si(ValueGraph graph, String name) {
    return graph.figure(name).orElseThrow().si();
  }

  @Test
  void theOrderOfLinesAndClausesDoesNotMatter() {
    ValueGraph graph =
        ValueGraph.of(
            source(working("c1", "1", "c = a + b"), working("c2", "2", "b = 2 * a\na = 3")));
    assertEquals(9, si(graph, "c"));
  }

  @Test
  void anEditWorksOutWhatDependsOnItAndNothingElse() {
    ValueGraph graph = new ValueGraph(endfloat.catalogue.Catalogue.library());
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 100; i++) {
      text.append("x").append(i).append(" = ").append(i).append("\n");
      text.append("y").append(i).append(" = 2 * x").append(i).append("\n");
      text.append("z").append(i).append(" = y").append(i).append(" + 1\n");
    }
    graph.update(source(working("c1", "1", text.toString())));
    long before = graph.evaluations();
    ValueGraph.Changed changed =
        graph.update(working("c1", "1", text.toString().replace("x7 = 7\n", "x7 = 8\n")));
    assertEquals(3, graph.evaluations() - before);
    assertEquals(Set.of("x7", "y7", "z7"), changed.names());
    assertEquals(17, si(graph, "z7"));
    assertEquals(Set.of("c1"), changed.clauses());
  }

  @Test
  void anEditThatChangesNothingStopsAtOnce() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "a = 3\nb = abs(a)\nc = b + 1")));
    long before = graph.evaluations();
    graph.update(working("c1", "1", "a = -3\nb = abs(a)\nc = b + 1"));
    assertEquals(2, graph.evaluations() - before, "b is 3 as before, so c is not asked");
  }

  @Test
  void aNameDefinedTwiceIsAnErrorAtBothPlacesAndItsReadersWait() {
    ValueGraph graph =
        ValueGraph.of(
            source(working("c1", "2.1", "q = 1\na = 2"), working("c2", "2.4", "a = 3\nb = a")));
    String message = "The name a is defined twice: clause 2.1 line 2 and clause 2.4 line 1.";
    assertEquals(message, graph.problems("c1").get(0).problem().message());
    assertEquals(2, graph.problems("c1").get(0).problem().span().line());
    assertEquals(message, graph.problems("c2").get(0).problem().message());
    assertEquals(Figure.State.WAITING, graph.figure("b").orElseThrow().state());
    graph.update(working("c1", "2.1", "q = 1"));
    assertEquals(3, si(graph, "b"));
    assertEquals(List.of(), graph.problems("c2"));
  }

  @Test
  void aCircleIsNamedInItsOrder() {
    ValueGraph graph =
        ValueGraph.of(source(working("c1", "1", "a = b + 1\nb = c\nc = a\nd = c\ne = e + 1")));
    assertEquals(
        "These rest on one another in a circle: a, b, c, a.",
        graph.figure("a").orElseThrow().problem().orElseThrow().message());
    assertEquals(
        "The value e rests on itself.",
        graph.figure("e").orElseThrow().problem().orElseThrow().message());
    assertEquals(Figure.State.WAITING, graph.figure("d").orElseThrow().state());
    graph.update(working("c1", "1", "a = b + 1\nb = c\nc = 5\nd = c\ne = 2"));
    assertEquals(6, si(graph, "a"));
    assertEquals(5, si(graph, "d"));
  }

  @Test
  void anUnknownNameIsAnErrorUntilItIsDefined() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "b = a + 1")));
    Figure b = graph.figure("b").orElseThrow();
    assertEquals(Figure.State.ERROR, b.state());
    assertTrue(b.problem().orElseThrow().message().contains("a"));
    graph.update(working("c2", "2", "a = 4"));
    assertEquals(5, si(graph, "b"));
    graph.update(source(working("c1", "1", "b = a + 1")));
    assertEquals(Figure.State.ERROR, graph.figure("b").orElseThrow().state());
    assertTrue(graph.figure("a").isEmpty());
  }

  @Test
  void aLineThatCannotBeReadHoldsUpItsReadersOnly() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "a [mm] = 5 mm +\nb = a\nc = 3")));
    assertEquals(Figure.State.ERROR, graph.figure("a").orElseThrow().state());
    assertEquals(1, graph.figure("b").orElseThrow().waitingOn().get(0).line());
    assertEquals(3, si(graph, "c"));
  }

  @Test
  void linesPutInAboveMoveAFigureAndWorkNothingOut() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "a = 1 / 0\nb = a")));
    long before = graph.evaluations();
    graph.update(working("c1", "1", "-- three\n-- lines\n\na = 1 / 0\nb = a"));
    assertEquals(before, graph.evaluations());
    assertEquals(4, graph.problems("c1").get(0).problem().span().line());
    assertEquals(4, graph.figure("b").orElseThrow().waitingOn().get(0).line());
  }

  @Test
  void aChangeOfKindIsFelt() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "a = 3 mm\nb = a + 1 mm")));
    assertEquals(0.004, si(graph, "b"), 1e-18);
    graph.update(working("c1", "1", "a = 3 N\nb = a + 1 mm"));
    assertEquals(Figure.State.ERROR, graph.figure("b").orElseThrow().state());
    graph.update(working("c1", "1", "a = 5 mm\nb = a + 1 mm"));
    assertEquals(0.006, si(graph, "b"), 1e-18);
  }

  @Test
  void aPreviewIsNotKept() {
    ValueGraph graph =
        ValueGraph.of(source(working("c1", "1", "a = 3"), working("c2", "2", "b = a + 1")));
    ValueGraph.Preview preview = graph.preview("c1", "a = 10\nq = r");
    assertEquals(11, preview.figures().get("b").si());
    assertEquals(1, preview.problems().size());
    assertEquals(2, preview.lines().size());
    assertEquals(4, si(graph, "b"));
    assertTrue(graph.figure("q").isEmpty());
    assertEquals(List.of(), graph.problems("c1"));
  }

  @Test
  void aBracketHoldsLinesTogether() {
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", "a = max(\n  1,\n  2)\nb = a / 0")));
    assertEquals(2, si(graph, "a"));
    assertEquals(4, graph.problems("c1").get(0).problem().span().line());
  }

  @Test
  void aLongChainIsFollowedToItsEnd() {
    StringBuilder text = new StringBuilder("x0 = 1 / 0");
    for (int i = 1; i <= 5000; i++) {
      text.append("\nx").append(i).append(" = x").append(i - 1).append(" + 1");
    }
    ValueGraph graph = ValueGraph.of(source(working("c1", "1", text.toString())));
    Figure last = graph.figure("x5000").orElseThrow();
    assertEquals("x0", last.waitingOn().get(0).name());
    graph.update(working("c1", "1", text.toString().replace("1 / 0", "7")));
    assertEquals(5007, si(graph, "x5000"));
    assertTrue(graph.trace("x5000").isPresent());
  }

  @Test
  void limitsAreJudgedAndTold() {
    ValueGraph graph =
        ValueGraph.of(
            source(
                working(
                    "c1",
                    "1",
                    """
                    lash [mm] = 0.28 mm \u00b1 0.03 mm
                    limit lash: 0.10 .. 0.30 mm "works drawing, sheet 3" (condition: "cold")
                    limit lash: at most 0.32 mm (condition: "hot", rule: "guarded")
                    """)));
    Figure lash = graph.figure("lash").orElseThrow();
    assertEquals(2, lash.judgements().size());
    Judgement cold = lash.judgements().get(0);
    assertEquals(DecisionRule.SIMPLE, cold.rule(), "a limit with an authority is a maker's");
    assertEquals(Verdict.WITHIN, cold.verdict());
    assertEquals("cold", cold.condition());
    assertEquals("works drawing, sheet 3", cold.authority());
    assertEquals(2, cold.line());
    assertEquals(Verdict.WITHIN, lash.judgements().get(1).verdict());
    ValueGraph.Changed changed =
        graph.update(
            working(
                "c1",
                "1",
                "lash [mm] = 0.28 mm \u00b1 0.03 mm\nlimit lash: at most 0.30 mm (rule: \"guarded\")"));
    assertTrue(changed.names().contains("lash"));
    assertEquals("not proven", graph.figure("lash").orElseThrow().verdict().orElseThrow().word());
  }
}
