package endfloat.benchmarks;

import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A number in a unit to SI and back, exactly; the limit is one multiplication, not exact. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class UnitsBenchmark {
  private final Unit thou = UnitTable.find("thou");
  private final Unit millimetre = UnitTable.find("mm");
  private final Unit degree = UnitTable.find("deg");
  private String typed = "12.5";
  private double si = 0.00031749;
  private double factor = 25.4e-6;

  @Benchmark
  public double multiplicationByHand() {
    return Double.parseDouble(typed) * factor;
  }

  @Benchmark
  public Unit findKnown() {
    return UnitTable.find("lbf.ft");
  }

  @Benchmark
  public double readThou() {
    return thou.toSi(typed);
  }

  @Benchmark
  public double printMillimetres() {
    return millimetre.fromSi(si);
  }

  @Benchmark
  public double printDegrees() {
    return degree.fromSi(si);
  }
}
