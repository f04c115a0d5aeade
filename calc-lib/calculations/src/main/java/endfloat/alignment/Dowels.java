package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/**
 * Dowels of a cover or bearing panel that has moved: stepped (offset) dowels, reaming oversize, and
 * what two dowels allow. Plane geometry; x and y lie in the joint face, angles count from x towards
 * y.
 */
public final class Dowels {
  private static final String GEOMETRY = "derived: plane geometry";

  private Dowels() {}

  /**
   * A stepped dowel for one hole.
   *
   * @param offset step between the two shanks: the true shift of the centres
   * @param direction of the step, from x towards y; the high side of the cover's shank
   * @param indicatorReading total reading when an indicator is swung round: twice the step
   * @param neck metal common to both shanks across the step
   */
  public record OffsetDowel(
      @In("mm") double offset,
      @In("deg") double direction,
      @In("mm") double indicatorReading,
      @In("mm") double neck) {}

  /**
   * Step and direction of an offset dowel that brings a cover back: {@code e = sqrt(x² + y²)}.
   *
   * @param shiftX how far the cover's hole must move along x
   * @param shiftY how far it must move along y
   * @param hole diameter of the dowel hole
   * @return the dowel
   * @throws RefusedException if there is no shift, or it leaves no neck
   */
  @Calculates(
      source = GEOMETRY + "; indicator reading = 2 x step (run-out is twice the eccentricity)",
      cautions = {
        "Two dowels also turn the cover: see cover_shift before fitting one offset dowel.",
        "A bearing panel carries its shaft: support both before the last dowel is drawn.",
        "Mark the direction on both parts; a dowel turned out of its mark leaves"
            + " offset_dowel_error."
      },
      terms = {"stepped dowel", "eccentric dowel", "redowel", "cover", "panel"},
      partials = "offsetDowelPartials")
  public static OffsetDowel offsetDowel(
      @In("mm") double shiftX, @In("mm") double shiftY, @In("mm") @Range("> 0 mm") double hole) {
    double offset = StrictMath.hypot(shiftX, shiftY);
    if (offset == 0) {
      throw new RefusedException("no shift: a plain dowel will do");
    }
    if (offset >= hole) {
      throw new RefusedException(
          "the step would be as large as the hole and leave no neck; plug and bore the hole anew");
    }
    return new OffsetDowel(
        offset, direction(StrictMath.atan2(shiftY, shiftX)), 2 * offset, hole - offset);
  }

  /** Of {@link #offsetDowel}. */
  public static double[][] offsetDowelPartials(double shiftX, double shiftY, double hole) {
    double offset = StrictMath.hypot(shiftX, shiftY);
    double x = shiftX / offset;
    double y = shiftY / offset;
    return new double[][] {{x, y, 0}, {-y / offset, x / offset, 0}, {2 * x, 2 * y, 0}, {-x, -y, 1}};
  }

  /**
   * The shift that an offset dowel gives.
   *
   * @param x shift along x
   * @param y shift along y
   */
  public record Shift(@In("mm") double x, @In("mm") double y) {}

  /**
   * Shift of the cover's hole by an offset dowel turned to an angle: {@code x = e cos φ, y = e sin
   * φ}.
   *
   * @param offset e, step of the dowel
   * @param angle φ, to which its high side is turned, from x towards y
   * @return the shift
   */
  @Calculates(
      source = GEOMETRY,
      terms = {"stepped dowel", "eccentric dowel"},
      partials = "offsetDowelShiftPartials")
  public static Shift offsetDowelShift(
      @In("mm") @Range(">= 0 mm") double offset, @In("deg") double angle) {
    return new Shift(offset * StrictMath.cos(angle), offset * StrictMath.sin(angle));
  }

  /** Of {@link #offsetDowelShift}. */
  public static double[][] offsetDowelShiftPartials(double offset, double angle) {
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return new double[][] {{cos, -offset * sin}, {sin, offset * cos}};
  }

  /**
   * What is left of the shift when an offset dowel is fitted out of its direction: the chord {@code
   * 2 e sin(φ/2)}.
   *
   * @param offset e, step of the dowel
   * @param angleError φ, how far it is turned out of its direction
   * @return distance of the hole from where it should be
   */
  @Calculates(
      source = GEOMETRY + ", chord 2 e sin(phi/2)",
      terms = {"stepped dowel", "eccentric dowel"})
  @In("mm")
  public static double offsetDowelError(
      @In("mm") @Range(">= 0 mm") double offset,
      @In("deg") @Range("-180 deg .. 180 deg") double angleError) {
    return 2 * offset * Math.abs(StrictMath.sin(angleError / 2));
  }

  /** Where the reamer runs when two holes out of line are cleaned up together. */
  public enum Centre {
    /** Free to find the smallest common circle, between the centres. */
    BETWEEN,
    /** Piloted in the first hole. */
    PILOTED
  }

  /**
   * Least diameter that cleans up two dowel holes out of line by {@code m}: {@code (d₁ + d₂)/2 + m
   * + 2c} with the reamer between the centres, {@code d₂ + 2m + 2c} when it is piloted in the first
   * hole.
   *
   * @param shift m, distance of the centres of the two holes
   * @param hole d₁, diameter of the first hole
   * @param otherHole d₂, diameter of the second; as the first if not given
   * @param cleaning c, cut wanted all round, on the radius
   * @param centre where the reamer runs: between the centres, or piloted in the first hole
   * @return least new diameter; never below the larger hole with its cut
   */
  @Calculates(
      source = GEOMETRY + ", smallest circle around two circles",
      cautions =
          "A hand reamer follows the harder or fuller side: jig it, or take the piloted diameter.",
      terms = {"oversize dowel", "ream", "redowel", "clean up"})
  @In("mm")
  public static double oversizeDowel(
      @In("mm") @Range(">= 0 mm") double shift,
      @In("mm") @Range("> 0 mm") double hole,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double otherHole,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double cleaning,
      @Default("\"between\"") Centre centre) {
    double other = Double.isNaN(otherHole) ? hole : otherHole;
    double larger = Math.max(hole, other);
    double around = centre == Centre.PILOTED ? other + 2 * shift : (hole + other) / 2 + shift;
    return Math.max(larger, around) + 2 * cleaning;
  }

  /**
   * How a cover on two dowels has moved.
   *
   * @param rotation from x towards y
   * @param x shift of the middle between the dowels along the line of the dowels
   * @param y shift of the middle across that line
   * @param pitchError difference of the distances of the holes; no movement of the cover removes it
   */
  public record CoverShift(
      @In("deg") double rotation,
      @In("mm") double x,
      @In("mm") double y,
      @In("mm") double pitchError) {}

  /**
   * Turn and shift of a cover from the misalignments at its two dowels, which lie along x: {@code
   * rotation = (y₂ − y₁)/L}, pitch error {@code x₂ − x₁}.
   *
   * @param distance L, between the dowels, from the first to the second along x
   * @param x1 misalignment at the first dowel along x
   * @param y1 across, at the first
   * @param x2 misalignment at the second dowel along x
   * @param y2 across, at the second
   * @return turn, shift of the middle, pitch error
   * @throws RefusedException if a misalignment is past a twentieth of the distance: no small angle
   */
  @Calculates(
      source = GEOMETRY + ", small angles",
      terms = {"dowel", "cover", "panel", "rotation"},
      partials = "coverShiftPartials")
  public static CoverShift coverShift(
      @In("mm") @Range("> 0 mm") double distance,
      @In("mm") double x1,
      @In("mm") double y1,
      @In("mm") double x2,
      @In("mm") double y2) {
    for (double shift : new double[] {x1, y1, x2, y2}) {
      holdSmall(shift, distance);
    }
    return new CoverShift((y2 - y1) / distance, (x1 + x2) / 2, (y1 + y2) / 2, x2 - x1);
  }

  /** Of {@link #coverShift}. */
  public static double[][] coverShiftPartials(
      double distance, double x1, double y1, double x2, double y2) {
    return new double[][] {
      {-(y2 - y1) / (distance * distance), 0, -1 / distance, 0, 1 / distance},
      {0, 0.5, 0, 0.5, 0},
      {0, 0, 0.5, 0, 0.5},
      {0, -1, 0, 1, 0}
    };
  }

  /**
   * Greatest swing of a cover on two dowels with clearance, from one stop to the other: {@code 2
   * c/L}.
   *
   * @param distance L, between the dowels
   * @param clearance c, diametral clearance of each dowel in its hole
   * @return total angle; the cover turns half of it either way
   * @throws RefusedException if the clearance is past a twentieth of the distance: no small angle
   */
  @Calculates(
      source = GEOMETRY + ", each dowel moves half the clearance either way",
      terms = {"dowel", "play", "cover"},
      partials = "dowelPlayPartials")
  @In("deg")
  public static double dowelPlay(
      @In("mm") @Range("> 0 mm") double distance, @In("mm") @Range(">= 0 mm") double clearance) {
    holdSmall(clearance, distance);
    return 2 * clearance / distance;
  }

  /** Of {@link #dowelPlay}. */
  public static double[][] dowelPlayPartials(double distance, double clearance) {
    return new double[][] {{-2 * clearance / (distance * distance), 2 / distance}};
  }

  private static void holdSmall(double shift, double distance) {
    if (Math.abs(shift) > distance / 20) {
      throw new RefusedException(
          "this holds for small angles: shifts up to a twentieth of the distance between the"
              + " dowels. Is one of them a position or a diameter?");
    }
  }

  /**
   * Direction of a vector, absent where the vector is no longer than its rounding.
   *
   * @param largest of what the vector was worked out from
   */
  static Uncertain directionOf(double x, double y, double largest, String whyNone) {
    return StrictMath.hypot(x, y) <= 1e-12 * largest
        ? Uncertain.absent(whyNone)
        : new Uncertain(direction(StrictMath.atan2(y, x)), 0);
  }

  /** An angle from 0 to a full turn. */
  static double direction(double angle) {
    // a hair below nought is nought, not a whole turn
    return angle < -1e-12 ? angle + 2 * StrictMath.PI : Math.max(0, angle);
  }
}
