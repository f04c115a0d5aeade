package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.definition.TypesetAs;

/** Backlash that published tables recommend; a reference to look at, not a limit. */
public final class RecommendedBacklash {
  private static final String ADVICE =
      "Advice for general gearing, not a limit: the engine's own schedule goes before it. It is normal"
          + " to the flanks: bring a circumferential reading to the normal first, by backlash_normal.";
  private static final double INCH = 0.0254;

  /** Upper ends of centre distance [in] and of diametral pitch; NaN where the table has no cell. */
  private static final double[] CENTRES = {5, 10, 20, 30, 40, 50, 80, 100, 120};

  private static final double[] PITCHES = {0.5, 2, 3.5, 6, 10, 20};
  private static final double NO = Double.NaN;

  /** Thousandths of an inch: least and greatest by columns of pitch, a row a centre distance. */
  private static final double[][] COARSE = {
    {NO, NO, NO, NO, NO, NO, NO, NO, 5, 15},
    {NO, NO, NO, NO, NO, NO, 10, 20, 10, 20},
    {NO, NO, NO, NO, 20, 30, 15, 25, 10, 20},
    {NO, NO, 30, 40, 25, 30, 20, 30, NO, NO},
    {40, 60, 35, 45, 30, 40, 25, 35, NO, NO},
    {50, 70, 40, 55, 35, 50, 30, 40, NO, NO},
    {60, 80, 45, 65, 40, 60, NO, NO, NO, NO},
    {70, 95, 50, 80, NO, NO, NO, NO, NO, NO},
    {80, 110, NO, NO, NO, NO, NO, NO, NO, NO}
  };

  private static final double[] BEVEL_PITCHES = {
    1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 16, 20
  };

  /** Thousandths of an inch: fine quality (7 to 13), then coarse (3 to 6), least and greatest. */
  private static final double[][] BEVEL = {
    {20, 30, 45, 65},
    {18, 26, 35, 55},
    {16, 22, 25, 45},
    {14, 18, 20, 40},
    {12, 16, 20, 30},
    {10, 13, 15, 25},
    {8, 11, 12, 22},
    {7, 9, 10, 20},
    {6, 8, 8, 16},
    {5, 7, 6, 13},
    {4, 6, 5, 10},
    {3, 5, 4, 8},
    {2, 4, 3, 5},
    {1, 3, 2, 4}
  };

  private RecommendedBacklash() {}

  /**
   * Least normal backlash recommended for cylindrical gears: {@code j_bn = 2/3 (0.06 + 0.0005 a +
   * 0.03 m_n)} in millimetres.
   *
   * @param module m_n, normal
   * @param centreDistance a
   * @return least normal backlash
   */
  @Calculates(
      source = "ISO/TR 10064-2:1996, Annex A (from memory)",
      cautions = {
        ADVICE,
        "The standard tabulates it for modules of 1.5 to 18 mm and centres of 50 to 1600 mm.",
        "For ferrous gears in ferrous housings, pitch line below 15 m/s, trade tolerances."
      },
      terms = {"lash", "ISO 10064", "minimum backlash"},
      partials = "recommendedBacklashPartials")
  @TypesetAs("2 / 3 * (0.06 mm + 0.0005 * centre_distance + 0.03 * module)")
  @In("mm")
  public static double recommendedBacklash(
      @In("mm") @Range("0.5 mm .. 20 mm") double module,
      @In("mm") @Range("1 mm .. 1600 mm") double centreDistance) {
    return 2.0 / 3 * (0.06e-3 + 0.0005 * centreDistance + 0.03 * module);
  }

  /** Of {@link #recommendedBacklash}. */
  public static double[][] recommendedBacklashPartials(double module, double centreDistance) {
    return new double[][] {{0.02, 0.001 / 3}};
  }

  /**
   * A recommended range of normal backlash.
   *
   * @param least of the range
   * @param greatest of the range
   */
  public record Recommended(@In("in") double least, @In("in") double greatest) {}

  /**
   * Range of normal backlash recommended for coarse-pitch spur, helical and herringbone gears.
   *
   * @param diametralPitch normal diametral pitch, of spur gears teeth to an inch of pitch diameter
   * @param centreDistance between the shafts
   * @throws RefusedException where the table has no cell
   */
  @Calculates(
      source =
          "Machinery's Handbook (26th to 31st ed.), AGMA recommended backlash range for coarse-pitch"
              + " spur, helical and herringbone gearing, normal plane; from memory and a public copy,"
              + " which agree",
      cautions = ADVICE,
      terms = {"lash", "AGMA", "spur", "helical", "herringbone"})
  public static Recommended recommendedBacklashCoarse(
      @In("1/in") @Range("> 0 1/in") double diametralPitch,
      @In("in") @Range("> 0 in") double centreDistance) {
    int column = step(PITCHES, diametralPitch * INCH);
    double inches = centreDistance / INCH;
    int row = 0;
    while (row < CENTRES.length && inches > CENTRES[row] * (1 + 1e-12)) {
      row++;
    }
    if (column < 0 || row == CENTRES.length || Double.isNaN(COARSE[row][2 * column])) {
      throw new RefusedException(
          "the table has no backlash for this diametral pitch at this centre distance");
    }
    return range(COARSE[row][2 * column], COARSE[row][2 * column + 1]);
  }

  /** Quality of the gears, AGMA numbers. */
  public enum Quality {
    FINE,
    COARSE
  }

  /**
   * Range of normal backlash recommended for bevel and hypoid gears, at the tightest point of mesh.
   *
   * @param diametralPitch teeth to an inch of pitch diameter, from 1 to below 20
   * @param quality fine: AGMA 7 to 13; coarse: AGMA 3 to 6
   * @throws RefusedException where the table has no row
   */
  @Calculates(
      source =
          "Machinery's Handbook (26th to 31st ed.), AGMA recommended normal backlash for bevel and"
              + " hypoid gears; from memory and a public copy, which agree",
      cautions = ADVICE,
      terms = {"lash", "AGMA", "bevel", "hypoid"})
  public static Recommended recommendedBacklashBevel(
      @In("1/in") @Range("> 0 1/in") double diametralPitch, Quality quality) {
    int row = step(BEVEL_PITCHES, diametralPitch * INCH);
    if (row < 0) {
      throw new RefusedException("the table runs from diametral pitch 1 to just below 20");
    }
    int column = quality == Quality.FINE ? 0 : 2;
    return range(BEVEL[row][column], BEVEL[row][column + 1]);
  }

  private static Recommended range(double least, double greatest) {
    return new Recommended(least * INCH / 1000, greatest * INCH / 1000);
  }

  /** The step whose lower end is at most the value and whose upper end is above it, or -1. */
  private static int step(double[] ends, double value) {
    double nudged = value * (1 + 1e-12);
    for (int i = 0; i + 1 < ends.length; i++) {
      if (nudged >= ends[i] && nudged < ends[i + 1]) {
        return i;
      }
    }
    return -1;
  }
}
