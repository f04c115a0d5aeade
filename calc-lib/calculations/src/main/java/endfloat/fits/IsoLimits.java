package endfloat.fits;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/**
 * Limits and fits of ISO 286-1:2010, at 20 degC. The cells come from two public copies of the
 * standard's tables and its formulas; a cell ships where two of them agree.
 */
public final class IsoLimits {
  private static final String SOURCE =
      "ISO 286-1:2010, Tables 1 to 5, from two public copies compared cell by cell with each other"
          + " and with the formulas of ISO 286-1:1988, annex A";
  private static final String AT_20_DEGC =
      "The limits hold at 20 degC (ISO 1); sizes of warm parts go back to 20 degC first.";
  private static final String NOMINAL =
      "The size is the nominal one of the drawing: with a measured size in its place the limits"
          + " would follow the part, and every part would be within them.";

  private IsoLimits() {}

  /**
   * What a tolerance class allows.
   *
   * @param lowerDeviation EI or ei, lower limit deviation
   * @param upperDeviation ES or es, upper limit deviation
   * @param leastSize lower limit of size
   * @param greatestSize upper limit of size
   */
  public record LimitsOfSize(
      @In("mm") double lowerDeviation,
      @In("mm") double upperDeviation,
      @In("mm") double leastSize,
      @In("mm") double greatestSize) {}

  /**
   * What a fit allows; a negative clearance is an interference.
   *
   * @param leastClearance smallest hole less largest shaft, diametral
   * @param greatestClearance largest hole less smallest shaft, diametral
   * @param kind of fit: never interference, never clearance, or either
   */
  public record Fit(
      @In("mm") double leastClearance, @In("mm") double greatestClearance, Kind kind) {}

  /** The three kinds of fit of ISO 286-1, clause 3.3. */
  public enum Kind {
    CLEARANCE,
    TRANSITION,
    INTERFERENCE
  }

  /**
   * Limits of size of a tolerance class: {@code iso_limits(25 mm, "H7")}.
   *
   * <p>Ranges of size are over .. up to and including. Holes take capital letters, shafts small
   * ones.
   *
   * @param size nominal size, over 0 to 3150 mm
   * @param designation letter and grade, such as H7, js6 or ZA9
   * @throws RefusedException where ISO 286-1 has no such class at that size, or the cell is not
   *     certain here
   */
  @Calculates(
      source = SOURCE,
      cautions = {AT_20_DEGC, NOMINAL},
      terms = {"tolerance", "limits and fits", "deviation", "H7", "hole", "shaft", "IT grade"},
      partials = "isoLimitsPartials")
  public static LimitsOfSize isoLimits(@In("mm") @Range("> 0 mm") double size, String designation) {
    ToleranceClass.Deviations deviations =
        ToleranceClass.parse(designation).deviations(size * 1000);
    double lower = deviations.lower() / 1e6;
    double upper = deviations.upper() / 1e6;
    return new LimitsOfSize(lower, upper, size + lower, size + upper);
  }

  /** The deviations do not move with the size inside a range; the limits follow it. */
  public static double[][] isoLimitsPartials(double size, String designation) {
    return new double[][] {{0}, {0}, {1}, {1}};
  }

  /**
   * Limits of size as the drawing writes them: {@code iso_limits("25 H7")}.
   *
   * <p>A call of iso_limits with a text first is this calculation.
   *
   * @param designation size in mm (or in, said so), letter and grade
   * @throws RefusedException as for {@link #isoLimits(double, String)}
   */
  @Calculates(
      source = SOURCE,
      cautions = AT_20_DEGC,
      terms = {"tolerance", "limits and fits", "25 H7"})
  public static LimitsOfSize isoLimitsText(String designation) {
    SizedClass sized = SizedClass.parse(designation);
    return isoLimits(sized.size(), sized.designation());
  }

  /**
   * Extreme clearances and kind of a fit: {@code iso_fit(25 mm, "H7/g6")}.
   *
   * <p>A fit whose least clearance is just zero is still a clearance fit, one whose greatest
   * clearance is just zero an interference fit.
   *
   * @param size nominal size common to both parts, over 0 to 3150 mm
   * @param designation class of the hole, a stroke, class of the shaft
   * @throws RefusedException where a class is refused, or the order is not hole/shaft
   */
  @Calculates(
      source = SOURCE + "; clearance = size of the hole less size of the shaft",
      cautions = {AT_20_DEGC, NOMINAL},
      terms = {"limits and fits", "clearance", "interference", "H7/g6"},
      partials = "isoFitPartials")
  public static Fit isoFit(@In("mm") @Range("> 0 mm") double size, String designation) {
    String[] classes = designation.split("/", -1);
    if (classes.length != 2) {
      throw new RefusedException(
          "\"" + designation + "\" is no fit; write hole/shaft, such as \"H7/g6\"");
    }
    ToleranceClass hole = ToleranceClass.parse(classes[0]);
    ToleranceClass shaft = ToleranceClass.parse(classes[1]);
    if (!hole.hole() || shaft.hole()) {
      throw new RefusedException(
          "\""
              + designation
              + "\" must name the hole first, in capitals, then the shaft, such as \"H7/g6\"");
    }
    ToleranceClass.Deviations inside = hole.deviations(size * 1000);
    ToleranceClass.Deviations outside = shaft.deviations(size * 1000);
    double least = inside.lower() - outside.upper();
    double greatest = inside.upper() - outside.lower();
    Kind kind = least >= 0 ? Kind.CLEARANCE : greatest <= 0 ? Kind.INTERFERENCE : Kind.TRANSITION;
    return new Fit(least / 1e6, greatest / 1e6, kind);
  }

  /** The clearances do not move with the size inside a range. */
  public static double[][] isoFitPartials(double size, String designation) {
    return new double[][] {{0}, {0}};
  }

  /**
   * Extreme clearances as the drawing writes the fit: {@code iso_fit("25 H7/g6")}.
   *
   * <p>A call of iso_fit with a text first is this calculation.
   *
   * @param designation size in mm (or in, said so), then hole/shaft
   * @throws RefusedException as for {@link #isoFit(double, String)}
   */
  @Calculates(
      source = SOURCE + "; clearance = size of the hole less size of the shaft",
      cautions = AT_20_DEGC,
      terms = {"limits and fits", "clearance", "interference", "25 H7/g6"})
  public static Fit isoFitText(String designation) {
    SizedClass sized = SizedClass.parse(designation);
    return isoFit(sized.size(), sized.designation());
  }
}
