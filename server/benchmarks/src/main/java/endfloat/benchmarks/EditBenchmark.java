package endfloat.benchmarks;

import endfloat.engine.Clause;
import endfloat.engine.GraphSettings;
import endfloat.engine.GraphSource;
import endfloat.engine.ValueGraph;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One edit of one input in a record of many formulas; its ten dependents follow, nothing else. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class EditBenchmark {
  private static final String[] NAMES = {"i", "a", "b", "c", "d", "e", "f", "g", "h", "j", "l"};

  /** Prime to every number of families, so that edits come scattered. */
  private static final int STRIDE = 37;

  @Param({"1000", "10000"})
  public int formulas;

  @Param({"", " ± 0.01"})
  public String spread;

  private int families;
  private int next;
  private boolean back;
  private double[] cells;
  private ValueGraph graph;
  private final List<Clause> edits = new ArrayList<>();
  private final List<Clause> undone = new ArrayList<>();
  private final List<Expression> evaluators = new ArrayList<>();
  private final double[] family = new double[NAMES.length];

  @Setup
  public void setUp() {
    families = formulas / 10;
    cells = new double[11 * families];
    List<Clause.Working> clauses = Families.clauses(families, spread);
    graph = new ValueGraph(endfloat.catalogue.Catalogue.library());
    graph.update(new GraphSource(List.copyOf(clauses), List.of(), GraphSettings.STANDARD));
    for (int k = 0; k < families; k++) {
      edits.add(Families.edited(clauses, k, "1.9", spread));
      undone.add(Families.edited(clauses, k, Families.start(k), spread));
    }
    for (String formula : Families.plain()) {
      evaluators.add(new ExpressionBuilder(formula).variables(NAMES).build());
    }
  }

  /** Each input is typed anew, then put back. */
  private int scattered() {
    back = !back;
    if (back) {
      next = (next + STRIDE) % families;
    }
    return next;
  }

  double byHand(double input) {
    return Families.byHand(cells, families, next, input);
  }

  double byHandFromStart() {
    return byHand(Double.parseDouble(Families.start(next)));
  }

  /** The limit: values only, an array, no text. */
  @Benchmark
  public double editByHand() {
    int k = scattered();
    return Families.byHand(cells, families, k, back ? 1.9 : 1.1);
  }

  /** The peer: the ten expressions evaluated, values only, nothing kept up to date. */
  @Benchmark
  public double editExpressionEvaluator() {
    family[0] = back ? 1.9 : 1.1;
    back = !back;
    for (int i = 0; i < evaluators.size(); i++) {
      Expression one = evaluators.get(i);
      for (String name : one.getVariableNames()) {
        one.setVariable(name, family[List.of(NAMES).indexOf(name)]);
      }
      family[i + 1] = one.evaluate();
    }
    return family[evaluators.size()];
  }

  /** Ours: a clause of twenty lines comes with one line typed anew, to changed figures. */
  @Benchmark
  public double editEndfloat() {
    int k = scattered();
    graph.update((back ? edits : undone).get(k));
    return graph.figure(Families.last(k)).orElseThrow().si();
  }
}
