package endfloat.engine;

import endfloat.catalogue.Catalogue;
import endfloat.working.Line;
import endfloat.working.Parser;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Task: recalculation, from the changed input on: it and its ten dependents get value, gradient and
 * uncertainty, nothing else is touched. In the engine's own package, so that the propagation can be
 * measured without the reading of text, which {@code EditBenchmark} has in it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class PropagationBenchmark {
  private static final int LINES_IN_A_CLAUSE = 11;
  private static final String[] FAMILY = {
    "a# = i# * 1.01 + 0.37",
    "b# = a# * a# - i#",
    "c# = sqrt(b# * b# + 1)",
    "d# = c# / (1 + a# * a#)",
    "e# = a# + d#",
    "f# = e# * 0.5 + b#",
    "g# = sqrt(f# * f# + e# * e#)",
    "h# = g# - c#",
    "j# = h# * e#",
    "l# = j# + g#"
  };

  @Param({"1000", "10000"})
  public int lines;

  private ValueGraph graph;
  private int families;
  private Node[][] inputs;
  private List<List<Slot>> cones;
  private int next;

  /** Builds the record and checks that an edit touches eleven figures. */
  @Setup
  public void build() {
    families = lines / LINES_IN_A_CLAUSE;
    graph = new ValueGraph(Catalogue.library());
    List<Clause> clauses = new ArrayList<>();
    for (int k = 0; k < families; k++) {
      clauses.add(clause(k, "1.5"));
    }
    graph.update(new GraphSource(clauses, List.of(), GraphSettings.STANDARD));
    inputs = new Node[families][];
    cones = new ArrayList<>();
    for (int k = 0; k < families; k++) {
      Node now = graph.slot("i" + k).giver();
      inputs[k] = new Node[] {now, input(now.clause(), k, "1.75")};
      List<Slot> cone = new ArrayList<>();
      for (String name : ("i a b c d e f g h j l").split(" ")) {
        cone.add(graph.slot(name + k));
      }
      cones.add(cone);
    }
    if (graph.exchange(inputs[0][0], inputs[0][1]).size() != LINES_IN_A_CLAUSE) {
      throw new IllegalStateException("an edit must change eleven figures");
    }
    graph.exchange(inputs[0][1], inputs[0][0]);
  }

  private static Clause.Working clause(int k, String value) {
    StringBuilder text = new StringBuilder("i" + k + " = " + value + " \u00b1 0.1");
    for (String line : FAMILY) {
      text.append('\n').append(line.replace("#", Integer.toString(k)));
    }
    return new Clause.Working("c" + k, Integer.toString(k), text.toString());
  }

  private static Node input(String clause, int k, String value) {
    Piece piece = new Piece(0, "i" + k + " = " + value + " \u00b1 0.1");
    Line line = Parser.parse(piece.text()).lines().get(0);
    return new DefinitionNode(clause, piece, (Line.Definition) line);
  }

  /** Value, gradient and uncertainty of eleven figures, scattered over the record. */
  @Benchmark
  public double propagate() {
    next = (next + 7919) % families;
    Node[] pair = inputs[next];
    Node swapped = pair[0];
    pair[0] = pair[1];
    pair[1] = swapped;
    graph.exchange(swapped, pair[0]);
    double sum = 0;
    for (Slot slot : cones.get(next)) {
      Value.Scalar value = (Value.Scalar) slot.value();
      sum += graph.correlations().standardUncertainty(value.gradient());
    }
    return sum;
  }
}
