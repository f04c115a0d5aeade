package endfloat.shafts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What physics demands of any bent shaft. */
class SteppedShaftTest {
  private static final double NOT_GIVEN = Double.NaN;
  private static final double STEEL = 206e9;

  private static List<Segment> segments(Random random) {
    List<Segment> segments = new ArrayList<>();
    int count = 2 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      double outer = 0.02 + 0.04 * random.nextDouble();
      double inner = random.nextBoolean() ? 0 : outer * 0.6 * random.nextDouble();
      segments.add(new Segment(0.03 + 0.1 * random.nextDouble(), outer, inner));
    }
    return segments;
  }

  private static double length(List<Segment> segments) {
    return segments.stream().mapToDouble(Segment::length).sum();
  }

  private static Bearing rigid(double at) {
    return new Bearing(at, NOT_GIVEN, 0, 0, 0);
  }

  private static ShaftLoad force(double at, double force) {
    return new ShaftLoad(at, force, 0, 0, 0, 0);
  }

  private static SteppedShaft.Bending bent(
      List<Segment> segments,
      List<Bearing> bearings,
      List<ShaftLoad> loads,
      boolean shear,
      List<SpreadLoad> spread,
      double... at) {
    return SteppedShaft.steppedShaft(
        segments,
        bearings,
        loads,
        STEEL,
        0.3,
        shear ? SteppedShaft.Shear.COUNTED : SteppedShaft.Shear.LEFT_OUT,
        at,
        spread);
  }

  /** Sum of forces and of moments about the left end, with three bearings, two of them soft. */
  @Property(tries = 100)
  void bearingLoadsHoldForcesAndMomentsInBalance(@ForAll int seed) {
    Random random = new Random(seed);
    List<Segment> segments = segments(random);
    double length = length(segments);
    List<Bearing> bearings =
        List.of(
            rigid(0.1 * length),
            new Bearing(0.5 * length, 1e7 + 1e8 * random.nextDouble(), 500, 0, 0),
            new Bearing(0.9 * length, 1e8, 0, 1e-5, -2e-5));
    List<ShaftLoad> loads = new ArrayList<>();
    double sum = 0;
    double moment = 0;
    double sumSide = 0;
    for (int i = 0; i < 4; i++) {
      double at = length * random.nextDouble();
      double direction = 2 * Math.PI * random.nextDouble();
      var load =
          new ShaftLoad(
              at,
              1000 * random.nextGaussian(),
              50 * random.nextGaussian(),
              800 * random.nextGaussian(),
              0,
              direction);
      loads.add(load);
      sum += load.force(ShaftPlane.FORCE);
      sumSide += load.force(ShaftPlane.SIDE);
      moment += load.force(ShaftPlane.FORCE) * at + load.couple(ShaftPlane.FORCE);
    }
    double from = 0.2 * length;
    double to = 0.7 * length;
    sum += 3000 * (to - from) + 0.5 * 2000 * (to - from);
    moment +=
        3000 * (to - from) * (from + to) / 2
            + 0.5 * 2000 * (to - from) * (from + 2 * (to - from) / 3);
    var spread = List.of(new SpreadLoad(3000, from, to, 5000, 0));
    for (boolean shear : new boolean[] {false, true}) {
      var line = bent(segments, bearings, loads, shear, spread);
      double held = Arrays.stream(line.bearingLoads()).sum();
      double heldMoment = 0;
      for (int i = 0; i < 3; i++) {
        heldMoment += line.bearingLoads()[i] * bearings.get(i).at();
      }
      // the soft bearing also holds with a couple against its own turning
      heldMoment -= -500 * line.bearingSlopes()[1];
      double scale = 1e4 + Math.abs(sum);
      assertEquals(sum, held, 1e-8 * scale);
      assertEquals(moment, heldMoment, 1e-8 * scale);
      assertEquals(sumSide, Arrays.stream(line.bearingLoadsSide()).sum(), 1e-8 * scale);
    }
  }

  /** Maxwell and Betti: what b moves under a force at a, a moves under the same force at b. */
  @Property(tries = 100)
  void deflectionsAreReciprocal(
      @ForAll int seed,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double first,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) double second) {
    Random random = new Random(seed);
    List<Segment> segments = segments(random);
    double length = length(segments);
    List<Bearing> bearings = List.of(rigid(0.15 * length), new Bearing(0.8 * length, 5e7, 0, 0, 0));
    double a = first * length;
    double b = second * length;
    boolean shear = random.nextBoolean();
    double there =
        bent(segments, bearings, List.of(force(a, 1000)), shear, List.of(), b).deflectionsAt()[0];
    double here =
        bent(segments, bearings, List.of(force(b, 1000)), shear, List.of(), a).deflectionsAt()[0];
    assertEquals(there, here, 1e-9 * (Math.abs(there) + 1e-6));
  }

  /** A shaft looked at from its other end is the same shaft. */
  @Property(tries = 60)
  void theMirrorImageBendsAlike(@ForAll int seed) {
    Random random = new Random(seed);
    List<Segment> segments = segments(random);
    double length = length(segments);
    List<Segment> turned = new ArrayList<>(segments);
    java.util.Collections.reverse(turned);
    double at = (0.05 + 0.9 * random.nextDouble()) * length;
    var there =
        bent(
            segments,
            List.of(rigid(0.1 * length), rigid(0.85 * length)),
            List.of(force(at, 700)),
            true,
            List.of());
    var back =
        bent(
            turned,
            List.of(rigid(0.15 * length), rigid(0.9 * length)),
            List.of(force(length - at, 700)),
            true,
            List.of());
    assertEquals(
        there.deflections()[0],
        back.deflections()[0],
        1e-9 * Math.abs(there.deflections()[0]) + 1e-15);
    assertEquals(there.bearingLoads()[0], back.bearingLoads()[1], 1e-7);
    assertEquals(there.bearingSlopes()[0], -back.bearingSlopes()[1], 1e-12);
    assertEquals(there.greatestMoment(), back.greatestMoment(), 1e-7);
  }

  @Test
  void aVeryStiffBearingIsARigidOneAndALongShaftHardlyShears() {
    var segments = List.of(new Segment(2, 0.03, 0));
    var loads = List.of(force(0.7, 500));
    var rigid = bent(segments, List.of(rigid(0), rigid(2)), loads, false, List.of());
    var stiff =
        bent(
            segments,
            List.of(new Bearing(0, 1e15, 0, 0, 0), new Bearing(2, 1e15, 0, 0, 0)),
            loads,
            false,
            List.of());
    assertEquals(rigid.deflections()[0], stiff.deflections()[0], 1e-8 * rigid.deflections()[0]);
    var sheared = bent(segments, List.of(rigid(0), rigid(2)), loads, true, List.of());
    assertEquals(1, sheared.deflections()[0] / rigid.deflections()[0], 1e-3);
    assertTrue(sheared.deflections()[0] > rigid.deflections()[0]);
  }

  /** Turning every load round the shaft turns the answer and changes no resultant. */
  @Property(tries = 50)
  void resultantsDoNotKnowTheDirection(@ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
    var segments = List.of(new Segment(0.1, 0.03, 0), new Segment(0.2, 0.04, 0.01));
    var bearings = List.of(rigid(0.02), new Bearing(0.28, 2e8, 0, 0, 0));
    var straight =
        bent(
            segments,
            bearings,
            List.of(new ShaftLoad(0.15, 900, 20, 300, -10, 0)),
            true,
            List.of(new SpreadLoad(2000, 0.05, 0.2, 1000, 0)),
            0.15);
    var turned =
        bent(
            segments,
            bearings,
            List.of(new ShaftLoad(0.15, 900, 20, 300, -10, turn)),
            true,
            List.of(new SpreadLoad(2000, 0.05, 0.2, 1000, turn)),
            0.15);
    assertEquals(
        straight.bearingLoadsResultant()[0], turned.bearingLoadsResultant()[0], 1e-9 * 1000);
    assertEquals(straight.deflectionsAtResultant()[0], turned.deflectionsAtResultant()[0], 1e-15);
    assertEquals(
        straight.greatestStress(), turned.greatestStress(), 1e-6 * straight.greatestStress());
  }

  @Test
  void refusesWhatStandsBeyondTheEnd() {
    var segments = List.of(new Segment(0.5, 0.03, 0));
    var held = List.of(rigid(0), rigid(0.5));
    assertThrows(
        RefusedException.class,
        () -> bent(segments, held, List.of(force(0.6, 1)), false, List.of()));
    assertThrows(
        RefusedException.class,
        () -> bent(segments, List.of(rigid(0), rigid(0)), List.of(), false, List.of()));
    assertThrows(
        RefusedException.class,
        () ->
            bent(
                segments,
                held,
                List.of(),
                false,
                List.of(new SpreadLoad(1, 0.2, 0.2, NOT_GIVEN, 0))));
  }
}
