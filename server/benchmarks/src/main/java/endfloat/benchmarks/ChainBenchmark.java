package endfloat.benchmarks;

import endfloat.working.Parser;
import endfloat.working.Working;
import java.util.List;
import java.util.concurrent.TimeUnit;
import net.objecthunter.exp4j.Expression;
import net.objecthunter.exp4j.ExpressionBuilder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** The hot backlash chain: from its text to something that runs, and run once. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ChainBenchmark {
  private final double[] in = HotBacklash.SI.clone();
  private final double[] out = new double[HotBacklash.RESULTS.size()];
  private final List<Expression> evaluators = evaluators();

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

  /** Lines to trees, before kinds are checked. */
  @Benchmark
  public Working parse() {
    return Parser.parse(HotBacklash.CHAIN);
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
