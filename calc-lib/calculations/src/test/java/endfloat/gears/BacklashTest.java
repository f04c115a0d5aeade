package endfloat.gears;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BacklashTest {
  private static final double DEG = Math.PI / 180;

  /**
   * Derived from the back-cone equivalent gears: about +- pi cos(d)/(2 z tan a) of the change, 12.7
   * % for 24 teeth at 45 degrees and 7.6 % for 40.
   */
  @Test
  void aMovedBevelWheelsOwnErrorIsASeventhToATwelfthOfTheChange() {
    double change = AxialShift.backlashFromAxialShift(1e-4, 20 * DEG, 45 * DEG, 0, 24);
    double error = AxialShift.backlashFromAxialShiftError(1e-4, 20 * DEG, 45 * DEG, 0, 24);
    assertEquals(0.127, error / change, 0.0005);
    error = AxialShift.backlashFromAxialShiftError(-1e-4, 20 * DEG, 45 * DEG, 0, 40);
    assertEquals(0.076, error / change, 0.0005);
    assertTrue(
        Double.isNaN(
            AxialShift.backlashFromAxialShiftError(1e-4, 20 * DEG, 45 * DEG, 0, Double.NaN)));
  }

  /** Second method: the whole involute relation at the corners of the range. */
  @Test
  void theFirstTermStaysWithinOnePerCentForAThousandthOfTheCentres() {
    for (double angle : new double[] {14.5 * DEG, 30 * DEG}) {
      for (double share : new double[] {-0.001, 0.001}) {
        double change = share * 0.090;
        double whole =
            CentreDistance.backlashAtCentreDistance(20, 40, 0.003, change, angle, 0).backlash();
        double first = CentreDistance.backlashFromCentreDistance(change, angle, 0);
        assertEquals(whole, first, 0.01 * Math.abs(whole));
      }
    }
  }

  @Property
  void bothShimsPutBackGiveTheBacklashAndKeepThePattern(
      @ForAll @IntRange(min = 12, max = 40) int pinion,
      @ForAll @IntRange(min = 41, max = 80) int wheel,
      @ForAll @DoubleRange(min = 60, max = 110) double shaftAngle,
      @ForAll @DoubleRange(min = -30, max = 30) double spiral,
      @ForAll @DoubleRange(min = -0.05, max = 0.05) double profile) {
    double cone = BevelPair.cone((double) wheel / pinion, shaftAngle * DEG);
    double mate = shaftAngle * DEG - cone;
    if (Math.cos(mate) < 0.01) {
      return;
    }
    var shims =
        BevelShims.bevelShims(
            1e-4,
            3e-4,
            pinion,
            wheel,
            BevelShims.Thicker.AWAY_FROM_APEX,
            BevelShims.Thicker.TOWARDS_APEX,
            20 * DEG,
            shaftAngle * DEG,
            spiral * DEG,
            profile * 1e-3);
    double change =
        AxialShift.backlashFromAxialShift(
                shims.shiftPinion(), 20 * DEG, cone, spiral * DEG, Double.NaN)
            + AxialShift.backlashFromAxialShift(
                shims.shiftWheel(), 20 * DEG, mate, spiral * DEG, Double.NaN);
    assertEquals(2e-4, change, 1e-12);
    assertEquals(
        profile * 1e-3,
        shims.shiftPinion() * Math.cos(cone) - shims.shiftWheel() * Math.cos(mate),
        1e-12);
    assertEquals(-shims.shiftWheel(), shims.shimWheel());
  }

  @Property
  void normalAndCircumferentialBacklashUndoEachOther(
      @ForAll @DoubleRange(min = -1, max = 1) double lash,
      @ForAll @DoubleRange(min = -45, max = 45) double helix) {
    double normal = Backlash.backlashNormal(lash, 20 * DEG, helix * DEG);
    assertEquals(lash, Backlash.backlashCircular(normal, 20 * DEG, helix * DEG), 1e-15);
  }

  /**
   * JCGM 100:2008, annex H.3, Table H.6 (from memory): slope 0.00218, its standard uncertainty
   * 0.00067, standard deviation of the residuals 0.0035. Half of the last digit printed.
   */
  @Test
  void theSpreadOfAMeasuredRateIsThatOfJcgm100AnnexH3() {
    double[] t = {
      21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    double[] b = {
      -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };
    List<ShimTrial> trials = new ArrayList<>();
    for (int i = 0; i < t.length; i++) {
      trials.add(new ShimTrial(t[i], b[i]));
    }
    var rate = MeasuredRate.backlashRateMeasured(trials, -0.16);
    assertEquals(0.00218, rate.slope(), 0.000005);
    assertEquals(0.0035, rate.residual(), 0.00005);
    var scatter = MeasuredRate.backlashRateMeasuredScatter(trials, -0.16);
    assertEquals(9, scatter.degreesOfFreedom());
    assertEquals(0.00067, u(scatter.parts()[0]), 0.000005);
    // what is read off the line: s/b sqrt(1/n + (x - mean)^2/sum of squares)
    double mean = Arrays.stream(t).average().orElseThrow();
    double squares = Arrays.stream(t).map(x -> (x - mean) * (x - mean)).sum();
    double away = rate.nextShim() - mean;
    assertEquals(
        rate.residual() / rate.slope() * Math.sqrt(1.0 / t.length + away * away / squares),
        u(scatter.parts()[1]),
        1e-12);
    assertArrayEquals(scatter.parts()[1], scatter.parts()[2]);
  }

  private static double u(double[] parts) {
    return Math.hypot(parts[0], parts[1]);
  }

  /**
   * Second method: shims changed by what the reading asks for, in a mesh whose true backlash,
   * angles and so rate are others; the backlash that results differs as the partial derivatives
   * say.
   */
  @Property
  void whatTheReadingWasWrongByIsInTheMeshAfterTheShimsAreChanged(
      @ForAll @DoubleRange(min = 60, max = 110) double shaftAngle,
      @ForAll @DoubleRange(min = -30, max = 30) double spiral,
      @ForAll @DoubleRange(min = -0.05, max = 0.05) double profile) {
    double[] found = {0.30e-3, 20 * DEG, shaftAngle * DEG, spiral * DEG};
    int[] columns = {0, 4, 5, 6};
    double[][] partials =
        BevelShims.bevelShimsPartials(
            found[0], 1.5e-4, 20, 40, AWAY, AWAY, found[1], found[2], found[3], profile * 1e-3);
    var shims = shims(found, profile);
    double there = after(shims, found);
    assertEquals(1.5e-4, there, 1e-15);
    for (int i = 0; i < found.length; i++) {
      double[] true1 = found.clone();
      double[] true2 = found.clone();
      double step = 1e-4 * Math.max(Math.abs(found[i]), 1e-3);
      true1[i] += step;
      true2[i] -= step;
      double slope = (after(shims, true1) - after(shims, true2)) / (2 * step);
      assertEquals(slope, partials[4][columns[i]], 1e-6 * Math.abs(slope) + 1e-11);
    }
  }

  private static final BevelShims.Thicker AWAY = BevelShims.Thicker.AWAY_FROM_APEX;

  private static BevelShims.Shims shims(double[] mesh, double profile) {
    return BevelShims.bevelShims(
        mesh[0], 1.5e-4, 20, 40, AWAY, AWAY, mesh[1], mesh[2], mesh[3], profile * 1e-3);
  }

  /** Backlash of a mesh after its gears have been moved. */
  private static double after(BevelShims.Shims shims, double[] mesh) {
    double cone = Math.atan2(Math.sin(mesh[2]), 2 + Math.cos(mesh[2]));
    return mesh[0]
        + AxialShift.backlashFromAxialShift(shims.shiftPinion(), mesh[1], cone, mesh[3], Double.NaN)
        + AxialShift.backlashFromAxialShift(
            shims.shiftWheel(), mesh[1], mesh[2] - cone, mesh[3], Double.NaN);
  }

  /** Moved as their teeth they still match; moved otherwise they err as one moved alone would. */
  @Test
  void onlyAMovementOfOneProfileOverTheOtherMakesBevelGearsMismatch() {
    assertEquals(
        0, BevelShims.bevelShimsError(3e-4, 1e-4, 20, 40, AWAY, AWAY, 0.35, Math.PI / 2, 0, 0)[4]);
    double profile = 1e-4;
    var moved = shims(new double[] {1.5e-4, 20 * DEG, 90 * DEG, 0}, 0.1);
    double cone = Math.atan(0.5);
    double pinion = Math.PI * moved.shiftPinion() * Math.sin(cone) * Math.cos(cone) / 20;
    double wheel = Math.PI * moved.shiftWheel() * Math.sin(cone) * Math.cos(cone) / 40;
    assertEquals(
        Math.abs(pinion - wheel),
        BevelShims.bevelShimsError(
            1.5e-4, 1.5e-4, 20, 40, AWAY, AWAY, 20 * DEG, 90 * DEG, 0, profile)[4],
        1e-15);
  }

  @Test
  void refusesARateFromOneShim() {
    assertThrows(
        RefusedException.class,
        () ->
            MeasuredRate.backlashRateMeasured(
                List.of(new ShimTrial(1e-3, 1e-4), new ShimTrial(1e-3, 2e-4)), 1e-4));
  }

  @Test
  void aTrainTakenFromItsOtherEndIsTheSameTrain() {
    var forwards =
        Train.backlashThroughTrain(
            List.of(
                new TrainMesh(1e-4, 0.030, 0.060, 2e-5, Double.NaN, Double.NaN),
                new TrainMesh(1.5e-4, 0.025, 0.050, 0, Double.NaN, Double.NaN)));
    var backwards =
        Train.backlashThroughTrain(
            List.of(
                new TrainMesh(1.5e-4, 0.050, 0.025, 0, Double.NaN, Double.NaN),
                new TrainMesh(1e-4, 0.060, 0.030, 2e-5, Double.NaN, Double.NaN)));
    assertEquals(forwards.atFirst(), backwards.atLast(), 1e-15);
    assertEquals(forwards.atLast(), backwards.atFirst(), 1e-15);
    assertEquals(forwards.shares()[0], backwards.shares()[1], 1e-15);
  }

  /**
   * Practice of the trade: ± π cos δ/(2 z tan α) of the change, 12.7 % for 24 teeth at 45 degrees.
   */
  @Test
  void aMovedBevelGearErrsByAnEighthAndShimsInProportionDoNot() {
    double quarter = StrictMath.PI / 4;
    double angle = StrictMath.toRadians(20);
    var out = new MeshLink(0.1, MeshLink.Side.HOUSING, 1, 20e-6, 293.15 + 50);
    double change =
        HotBacklash.backlashHot(0, List.of(out), angle, quarter, quarter, 0, 0, 0, 24, 24).change();
    double[] one =
        HotBacklash.backlashHotError(0, List.of(out), angle, quarter, quarter, 0, 0, 0, 24, 24);
    assertEquals(0.127, Math.abs(one[3]) / change, 0.0005);
    var both = List.of(out, new MeshLink(0.1, MeshLink.Side.HOUSING, 2, 20e-6, 293.15 + 50));
    double[] two = HotBacklash.backlashHotError(0, both, angle, quarter, quarter, 0, 0, 0, 24, 24);
    assertEquals(0, two[3], 1e-18);
  }
}
