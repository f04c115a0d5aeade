package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever is typed in whatever order: figures and problems are those of a graph that was given the
 * last text alone, bit for bit.
 */
class GraphPropertyTest {
  private static final List<String> NAMES = List.of("a", "b", "c", "d", "e", "f");

  @Provide
  Arbitrary<List<List<String>>> edits() {
    Arbitrary<String> name = Arbitraries.of(NAMES);
    Arbitrary<Integer> number = Arbitraries.integers().between(-3, 9);
    Arbitrary<String> line =
        Arbitraries.oneOf(
            Combinators.combine(name, number).as((n, v) -> n + " = " + v),
            Combinators.combine(name, number).as((n, v) -> n + " = " + v + " \u00b1 0.25"),
            Combinators.combine(name, number).as((n, v) -> n + " = " + v + " mm \u00b1 0.1 mm"),
            Combinators.combine(name, name, name)
                .as((n, x, y) -> n + " = " + x + " * " + x + " + 2 * " + y),
            Combinators.combine(name, name, name)
                .as((n, x, y) -> n + " = sqrt(" + x + " / " + y + ")"),
            Combinators.combine(name, name, name)
                .as((n, x, y) -> n + " = if " + x + " < " + y + " then " + x + " else " + y),
            Combinators.combine(name, name, number)
                .as((n, x, v) -> n + " = solve z + " + x + " = " + v + " for z between -9 and 9"),
            Combinators.combine(name, name, name, number)
                .as(
                    (n, x, y, v) ->
                        n + " = solve " + x + " = " + v + " for " + y + " between -9 and 9"),
            Combinators.combine(name, name, number)
                .as(
                    (n, x, v) ->
                        n + " = solve " + x + " = " + v + " for " + n + " between -9 and 9"),
            Combinators.combine(name, name, name)
                .as((n, x, y) -> n + " = 0.5 * " + x + " - " + y + " + 1"),
            Combinators.combine(name, name, name)
                .as(
                    (n, x, y) ->
                        n + " = solve " + x + " = 1 mm for " + y + " between -9 mm and 9 mm"),
            Combinators.combine(name, number).as((n, v) -> "limit " + n + ": at most " + v),
            Combinators.combine(name, name).as((x, y) -> "correlate " + x + ", " + y + ": 0.5"),
            name.map(n -> n + " = 3 +"),
            Arbitraries.of("", "-- a comment"));
    return line.list().ofMaxSize(8).list().ofMinSize(2).ofMaxSize(6);
  }

  @Property(tries = 1000)
  void theOrderOfEditsLeavesNoTrace(@ForAll("edits") List<List<String>> texts) {
    ValueGraph lived = new ValueGraph(Catalogue.library());
    for (int i = 0; i < texts.size(); i++) {
      lived.update(
          new Clause.Working(
              "c" + i % 2, Integer.toString(i % 2), String.join("\n", texts.get(i))));
    }
    assertEquals(state(ValueGraph.of(lived.source())), state(lived));
  }

  @Property(tries = 400)
  void aPreviewLeavesNoTrace(@ForAll("edits") List<List<String>> texts) {
    ValueGraph lived = new ValueGraph(Catalogue.library());
    lived.update(new Clause.Working("c0", "0", String.join("\n", texts.get(0))));
    lived.update(new Clause.Working("c1", "1", String.join("\n", texts.get(1))));
    List<Object> before = state(lived);
    for (List<String> text : texts) {
      lived.preview("c1", String.join("\n", text));
    }
    assertEquals(before, state(lived));
  }

  /** Moving clauses about changes no figure but for where it says it stands. */
  @Property(tries = 400)
  void theOrderOfClausesChangesNoValue(@ForAll("edits") List<List<String>> texts) {
    List<Clause> clauses = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      clauses.add(new Clause.Working("c" + i, "", String.join("\n", texts.get(i))));
    }
    List<Clause> backwards = new ArrayList<>(clauses);
    java.util.Collections.reverse(backwards);
    ValueGraph forth = ValueGraph.of(source(clauses));
    ValueGraph back = ValueGraph.of(source(backwards));
    for (Map.Entry<String, Figure> figure : forth.figures().entrySet()) {
      Figure other = back.figure(figure.getKey()).orElseThrow();
      assertEquals(figure.getValue().value(), other.value());
      assertEquals(figure.getValue().state(), other.state());
    }
  }

  private static GraphSource source(List<Clause> clauses) {
    return new GraphSource(clauses, List.of(), GraphSettings.STANDARD);
  }

  static List<Object> state(ValueGraph graph) {
    List<Object> all = new ArrayList<>(graph.figures().values());
    for (Clause clause : graph.source().clauses()) {
      all.addAll(graph.problems(clause.id()));
    }
    return all;
  }
}
