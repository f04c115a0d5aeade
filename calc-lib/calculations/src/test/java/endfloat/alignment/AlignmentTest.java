package endfloat.alignment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import endfloat.definition.RefusedException;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The published cases are in the checks; here a second method: dials swung in space. */
class AlignmentTest {
  private static final double DISTANCE_FRONT = 0.15;
  private static final double DISTANCE_REAR = 0.5;
  private static final double SWING = 0.1;

  /**
   * A dial swung on one shaft against the other, in space. The moving axis passes through (0, up,
   * right) and rises by slope away from the coupling (x to the rear).
   */
  private static double[] rimReadings(double up, double right, boolean bracketOnMovable) {
    double[] readings = new double[4];
    double[][] ways = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    for (int i = 0; i < 4; i++) {
      // the surface stands off the turning axis by the radius less or more the offset
      double offset = up * ways[i][0] + right * ways[i][1];
      readings[i] = bracketOnMovable ? -offset : offset;
    }
    return readings;
  }

  private static double[] faceReadings(double slopeUp, double slopeRight) {
    double[] readings = new double[4];
    double[][] ways = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    for (int i = 0; i < 4; i++) {
      // the swing plane leans towards the fixed face on the side to which the shaft rises
      readings[i] = SWING / 2 * (slopeUp * ways[i][0] + slopeRight * ways[i][1]);
    }
    return readings;
  }

  @Property(tries = 200)
  void theCorrectionsBringTheFeetOntoTheOtherAxis(
      @ForAll @DoubleRange(min = -1, max = 1) double up,
      @ForAll @DoubleRange(min = -1, max = 1) double right,
      @ForAll @DoubleRange(min = -1, max = 1) double slopeUp,
      @ForAll @DoubleRange(min = -1, max = 1) double slopeRight,
      @ForAll boolean onMovable) {
    double scale = 1e-3;
    ShaftAlignment.Feet feet =
        ShaftAlignment.shaftAlignment(
            rimReadings(up * scale, right * scale, onMovable),
            faceReadings(slopeUp * scale, slopeRight * scale),
            SWING,
            DISTANCE_FRONT,
            DISTANCE_REAR,
            0,
            onMovable ? ShaftAlignment.Bracket.MOVABLE : ShaftAlignment.Bracket.FIXED,
            ShaftAlignment.FaceDial.FRONT,
            1e-9);
    assertEquals(0, (up + slopeUp * DISTANCE_FRONT) * scale + feet.shimFront(), 1e-12);
    assertEquals(0, (up + slopeUp * DISTANCE_REAR) * scale + feet.shimRear(), 1e-12);
    assertEquals(0, (right + slopeRight * DISTANCE_FRONT) * scale + feet.moveFront(), 1e-12);
    assertEquals(0, (right + slopeRight * DISTANCE_REAR) * scale + feet.moveRear(), 1e-12);
  }

  @Property(tries = 200)
  void rimAndFaceAgreesWithDoubleRim(
      @ForAll @DoubleRange(min = -1, max = 1) double up,
      @ForAll @DoubleRange(min = -1, max = 1) double slopeUp) {
    double scale = 1e-3;
    double span = 0.05;
    ShaftAlignment.Feet face =
        ShaftAlignment.shaftAlignment(
            rimReadings(up * scale, 0, true),
            faceReadings(slopeUp * scale, 0),
            SWING,
            DISTANCE_FRONT,
            DISTANCE_REAR,
            0,
            ShaftAlignment.Bracket.MOVABLE,
            ShaftAlignment.FaceDial.FRONT,
            1e-9);
    ShaftAlignment.Feet rims =
        ShaftAlignment.shaftAlignmentDoubleRim(
            rimReadings(up * scale, 0, true),
            rimReadings((up + slopeUp * span) * scale, 0, false),
            span,
            DISTANCE_FRONT,
            DISTANCE_REAR,
            0,
            0,
            1e-9);
    assertEquals(face.shimFront(), rims.shimFront(), 1e-12);
    assertEquals(face.shimRear(), rims.shimRear(), 1e-12);
    assertEquals(face.angleUp(), rims.angleUp(), 1e-12);
  }

  @Test
  void sagIsTakenOffTheRimBeforeAnythingElse() {
    double[] rim = {0, 0.15e-3, 0.3e-3, 0.15e-3};
    double[] face = {0, 0, 0, 0};
    ShaftAlignment.Feet feet =
        ShaftAlignment.shaftAlignment(
            rim,
            face,
            SWING,
            DISTANCE_FRONT,
            DISTANCE_REAR,
            -0.1e-3,
            ShaftAlignment.Bracket.MOVABLE,
            ShaftAlignment.FaceDial.FRONT,
            1e-3);
    assertEquals(0.2e-3, feet.offsetUp(), 1e-12);
  }

  @Test
  void refusesFewerThanFourReadings() {
    assertEquals(
        "rim must be four readings: top, right, bottom, left; 2 given",
        assertThrows(
                RefusedException.class,
                () ->
                    ShaftAlignment.shaftAlignment(
                        new double[2],
                        new double[4],
                        SWING,
                        DISTANCE_FRONT,
                        DISTANCE_REAR,
                        0,
                        ShaftAlignment.Bracket.MOVABLE,
                        ShaftAlignment.FaceDial.FRONT,
                        1e-3))
            .getMessage());
  }

  /** Residuals of a least-squares line are at right angles to 1 and to x. */
  @Property(tries = 100)
  void deviationsFromTheBoreLineAreAtRightAnglesToIt(@ForAll int seed) {
    Random random = new Random(seed);
    double[] x = new double[7];
    double[] y = new double[7];
    for (int i = 0; i < 7; i++) {
      x[i] = i * 0.1 + random.nextDouble() * 0.05;
      y[i] = random.nextDouble() * 1e-4;
    }
    BoreLine.Line line = BoreLine.boreLine(x, y);
    double sum = 0;
    double moment = 0;
    for (int i = 0; i < 7; i++) {
      sum += line.deviations()[i];
      moment += line.deviations()[i] * x[i];
    }
    assertEquals(0, sum, 1e-17);
    assertEquals(0, moment, 1e-17);
    assertEquals(0, line.endDeviations()[6], 1e-18);
  }

  @Property(tries = 100)
  void anEccentricityIsFoundAtAnyAngles(
      @ForAll @DoubleRange(min = 1, max = 100) double micrometres,
      @ForAll @DoubleRange(min = 0, max = 6.2) double direction,
      @ForAll @DoubleRange(min = 0, max = 1) double skew) {
    double[] angles = {skew, 1 + skew, 2.5, 4 + skew / 2, 5.5};
    double[] readings = new double[5];
    for (int i = 0; i < 5; i++) {
      readings[i] = 3e-4 + micrometres * 1e-6 * StrictMath.cos(angles[i] - direction);
    }
    DialReadings.Eccentricity found = DialReadings.eccentricityFromDial(readings, angles);
    assertEquals(micrometres * 1e-6, found.eccentricity(), 1e-12);
    assertEquals(0, StrictMath.sin((found.direction().value() - direction) / 2), 1e-6);
    assertEquals(0, found.unexplained(), 1e-12);
  }

  /** Second method: the circle found by hand covers both holes and nothing smaller does. */
  @Property(tries = 100)
  void theOversizeHoleJustCoversBothHoles(
      @ForAll @DoubleRange(min = 0, max = 2) double shift,
      @ForAll @DoubleRange(min = 6, max = 10) double first,
      @ForAll @DoubleRange(min = 6, max = 10) double second) {
    double size =
        Dowels.oversizeDowel(shift / 1e3, first / 1e3, second / 1e3, 0, Dowels.Centre.BETWEEN);
    double least = Double.POSITIVE_INFINITY;
    for (double centre = 0; centre <= shift; centre += shift / 2000 + 1e-12) {
      least = Math.min(least, 2 * Math.max(centre + first / 2, shift - centre + second / 2));
    }
    assertEquals(least / 1e3, size, 3e-6);
  }
}
