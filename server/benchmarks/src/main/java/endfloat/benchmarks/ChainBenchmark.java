package endfloat.benchmarks;

import endfloat.catalogue.Catalogue;
import endfloat.engine.Clause;
import endfloat.engine.ValueGraph;
import endfloat.working.Checked;
import endfloat.working.KindChecker;
import endfloat.working.Line;
import endfloat.working.Parser;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The hot backlash chain: from its text to something that runs, and run once. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ChainBenchmark {
  private final double[] in = HotBacklash.SI.clone();
  private final double[] out = new double[HotBacklash.RESULTS.size()];
  private final List<Expression> evaluators = evaluators();
  private static final Clause WARMER =
      new Clause.Working(
          HotBacklash.INPUT_CLAUSE.id(),
          "",
          HotBacklash.INPUTS.replace("t_case [degC] = 92", "t_case [degC] = 93"));
  private final ValueGraph known = ValueGraph.of(HotBacklash.SOURCE);
  private final ValueGraph edited = ValueGraph.of(HotBacklash.SOURCE);
  private final KindChecker checker = new KindChecker(Catalogue.library());
  private boolean warmer;

  /** The limit of a run: no text, no units, no uncertainty. */
  @Benchmark
  public double runByHand() {
    HotBacklash.byHand(in, out);
    return out[11];
  }

  /** The peer of a run: values only, no units. */
  @Benchmark
  public double runExpressionEvaluator() {
    return run(evaluators, out);
  }

  /** The peer of reading: twelve expressions, no units, no checks of kind. */
  @Benchmark
  public List<Expression> readExpressionEvaluator() {
    return evaluators();
  }

  /** Ours: text to checked trees, kinds and units of all twelve formulas found. */
  @Benchmark
  public List<Checked> readEndfloat() {
    List<Checked> checked = new ArrayList<>(HotBacklash.RESULTS.size());
    for (Line line : Parser.parse(HotBacklash.CHAIN).lines()) {
      checked.add(checker.check(line, known.scope()));
    }
    return checked;
  }

  /** Ours, from nothing: 26 lines read, checked, put in order, run with all uncertainties. */
  @Benchmark
  public double readAndRunEndfloat() {
    return ValueGraph.of(HotBacklash.SOURCE).figure("lash_reduced").orElseThrow().si();
  }

  /** Ours: one temperature typed anew; eight of the twelve follow, with their uncertainties. */
  @Benchmark
  public double retypeEndfloat() {
    warmer = !warmer;
    edited.update(warmer ? WARMER : HotBacklash.INPUT_CLAUSE);
    return edited.figure("lash_reduced").orElseThrow().si();
  }

  static List<Expression> evaluators() {
    List<String> names = HotBacklash.NAMES;
    return HotBacklash.PLAIN.stream()
        .map(
            text ->
                new ExpressionBuilder(text)
                    .variables(names.toArray(new String[0]))
                    .variables(HotBacklash.RESULTS.toArray(new String[0]))
                    .build())
        .toList();
  }

  /** Runs the twelve one after another, each seeing the results before it. */
  static double run(List<Expression> evaluators, double[] out) {
    for (int i = 0; i < out.length; i++) {
      Expression one = evaluators.get(i);
      for (String name : one.getVariableNames()) {
        int input = HotBacklash.NAMES.indexOf(name);
        one.setVariable(
            name, input >= 0 ? HotBacklash.SI[input] : out[HotBacklash.RESULTS.indexOf(name)]);
      }
      out[i] = one.evaluate();
    }
    return out[out.length - 1];
  }
}
