package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.catalogue.Catalogue;
import endfloat.definition.Progress;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever is typed in whatever order beside and into java clauses: figures and problems are those
 * of a graph that was given the last text alone, bit for bit. What runs is no process here: it adds
 * up what is read in the order in which it comes, and refuses what it is told to.
 */
class JavaHistoryTest {
  private static final List<String> NAMES = List.of("a", "b_c", "d", "e", "f", "g");

  private static final CellRunner ADDING =
      new CellRunner() {
        @Override
        public Optional<Refusal> refusal(String source) {
          return source.contains("unread")
              ? Optional.of(new Refusal("Not approved", ""))
              : Optional.empty();
        }

        @Override
        public Outcome run(Job job, Progress progress) {
          double[] none = {};
          double[] sums = sums(job, -1, 0, 0);
          List<Given> given =
              java.util.Arrays.stream(sums)
                  .mapToObj(
                      sum ->
                          new Given(new double[] {sum}, List.of(), List.of(), "", false, List.of()))
                  .toList();
          List<double[]> trials = new java.util.ArrayList<>(List.of(sums));
          job.trials().forEach(t -> trials.add(sums(job, t.read(), t.element(), t.si())));
          return new Outcome(given, job.trials().isEmpty() ? List.of(none) : trials, List.of(), 1);
        }
      };

  private static double[] sums(CellRunner.Job job, int read, int element, double si) {
    double[] sums = new double[job.gives().size()];
    for (int i = 0; i < job.reads().size(); i++) {
      List<Value> numbers =
          job.reads().get(i).value() instanceof Value.Fields fields
              ? fields.values().stream().filter(Value.Scalar.class::isInstance).toList()
              : List.of(job.reads().get(i).value());
      for (int j = 0; j < numbers.size(); j++) {
        double number = ((Value.Scalar) numbers.get(j)).si();
        number = i == read && j == element ? si : number;
        for (int k = 0; k < sums.length; k++) {
          sums[k] = sums[k] * 1.1 + (k + 1) * number;
        }
      }
    }
    return sums;
  }

  /** A clause as typed: lines, or with a bar in it the head and the source of a java clause. */
  private static Clause clause(int place, String text) {
    String id = "c" + place;
    int bar = text.indexOf('|');
    return bar < 0
        ? new Clause.Working(id, Integer.toString(place), text)
        : new Clause.Java(
            id, Integer.toString(place), text.substring(0, bar), text.substring(bar + 1));
  }

  @Provide
  Arbitrary<List<String>> edits() {
    Arbitrary<String> name = Arbitraries.of(NAMES);
    Arbitrary<Integer> number = Arbitraries.integers().between(1, 9);
    Arbitrary<String> line =
        Arbitraries.oneOf(
            Combinators.combine(name, number).as((n, v) -> n + " = " + v),
            Combinators.combine(name, number).as((n, v) -> n + " = " + v + " \u00b1 0.25"),
            Combinators.combine(name, name, name).as((n, x, y) -> n + " = " + x + " + 2 * " + y),
            Combinators.combine(name, name).as((n, x) -> n + " = " + x + ".high"),
            name.map(n -> n + " = chain_worst_case([link(10 mm, tolerance: 0.1 mm)])"),
            name.map(n -> n + " = 3 +"));
    Arbitrary<String> lines = line.list().ofMaxSize(5).map(all -> String.join("\n", all));
    Arbitrary<String> words =
        Arbitraries.of("a", "bC", "d", "e", "f", "g", "a.high", "\"d\"", "// e\n", "unread")
            .list()
            .ofMaxSize(4)
            .map(all -> String.join(" ", all));
    Arbitrary<String> java =
        Combinators.combine(name, name, words)
            .as((x, y, source) -> (x.equals(y) ? x : x + ", " + y) + "|" + source);
    return Arbitraries.oneOf(lines, java).list().ofMinSize(4).ofMaxSize(10);
  }

  @Property(tries = 500)
  void theOrderOfEditsLeavesNoTrace(@ForAll("edits") List<String> texts) {
    ValueGraph lived = new ValueGraph(Catalogue.library(), ADDING);
    for (int i = 0; i < texts.size(); i++) {
      lived.update(clause(i % 3, texts.get(i)));
    }
    ValueGraph anew = ValueGraph.of(lived.source(), ADDING);
    assertEquals(GraphPropertyTest.state(anew), GraphPropertyTest.state(lived));
    for (int i = 0; i < 3; i++) {
      assertEquals(anew.javaRun("c" + i), lived.javaRun("c" + i));
    }
  }
}
