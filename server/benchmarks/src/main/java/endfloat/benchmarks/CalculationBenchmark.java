package endfloat.benchmarks;

import endfloat.bench.ShimPack;
import endfloat.definition.Progress;
import endfloat.fits.ChainTrials;
import endfloat.fits.Link;
import endfloat.shafts.Bearing;
import endfloat.shafts.Segment;
import endfloat.shafts.ShaftLoad;
import endfloat.shafts.SpreadLoad;
import endfloat.shafts.SteppedShaft;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** The heavy calculations of the library, called as the engine calls them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class CalculationBenchmark {
  private static final double NOT_GIVEN = Double.NaN;

  private final List<Segment> crank = segments(30);
  private final List<Bearing> seven = bearings(7);
  private final List<ShaftLoad> loads = loads(12);
  private final List<Link> links = links(8);
  private final double[] stock = stock(40, 1e-6);
  private final double[] fineStock = stock(40, 1e-7);

  /** Five segments, two bearings, two loads in two planes. */
  @Benchmark
  public SteppedShaft.Bending shaftOfFiveSegments() {
    return bent(crank.subList(0, 5), List.of(bearing(0.01), bearing(0.14)), loads.subList(0, 2));
  }

  /** Thirty segments, seven bearings with stiffness, twelve loads, shear counted. */
  @Benchmark
  public SteppedShaft.Bending shaftOfThirtySegments() {
    return bent(crank, seven, loads);
  }

  /** Eight links, 100,000 trials. */
  @Benchmark
  public ChainTrials.TriedGap chainOfEightLinks() {
    return ChainTrials.chainMonteCarlo(
        links, NOT_GIVEN, NOT_GIVEN, 3, 100_000, 1, Progress.IGNORED);
  }

  /** 40 shims measured to a micrometre, up to six in a pack, two meshes. */
  @Benchmark
  public ShimPack.Packs twoPacksOfMicrometres() {
    return ShimPack.shimPack(new double[] {2.126e-3, 1.983e-3}, stock, 6);
  }

  /** The same measured to a tenth of a micrometre, where hardly a pack fits. */
  @Benchmark
  public ShimPack.Packs twoPacksOfTenths() {
    return ShimPack.shimPack(new double[] {2.12634e-3, 1.98327e-3}, fineStock, 6);
  }

  /** Packs nearly as thick as six shims can be. */
  @Benchmark
  public ShimPack.Packs twoThickPacks() {
    return ShimPack.shimPack(new double[] {4.9e-3, 4.8e-3}, fineStock, 6);
  }

  private static SteppedShaft.Bending bent(
      List<Segment> segments, List<Bearing> bearings, List<ShaftLoad> loads) {
    return SteppedShaft.steppedShaft(
        segments,
        bearings,
        loads,
        206e9,
        0.3,
        SteppedShaft.Shear.COUNTED,
        new double[0],
        List.of(new SpreadLoad(100, 0.01, 0.1, NOT_GIVEN, 0)));
  }

  private static List<Segment> segments(int count) {
    List<Segment> segments = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      segments.add(new Segment(0.03, 0.04 + 0.005 * (i % 4), 0.01));
    }
    return segments;
  }

  private static Bearing bearing(double at) {
    return new Bearing(at, 2e8, 0, 0, 0);
  }

  private static List<Bearing> bearings(int count) {
    List<Bearing> bearings = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      bearings.add(bearing(0.015 + 0.87 * i / (count - 1)));
    }
    return bearings;
  }

  private static List<ShaftLoad> loads(int count) {
    List<ShaftLoad> loads = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      loads.add(new ShaftLoad(0.02 + 0.07 * i, 1000, 5, 400, 0, 0.3 * i));
    }
    return loads;
  }

  private static List<Link> links(int count) {
    List<Link> links = new ArrayList<>();
    Link.Distribution[] forms = Link.Distribution.values();
    for (int i = 0; i < count; i++) {
      links.add(
          new Link(
              0.05, 1e-4, NOT_GIVEN, NOT_GIVEN, i % 2 == 0 ? 1 : -1, forms[i % forms.length], 0));
    }
    return links;
  }

  private static double[] stock(int count, double step) {
    Random random = new Random(5);
    double[] stock = new double[count];
    for (int i = 0; i < count; i++) {
      stock[i] = step * Math.round((50e-6 + 900e-6 * random.nextDouble()) / step);
    }
    return stock;
  }
}
