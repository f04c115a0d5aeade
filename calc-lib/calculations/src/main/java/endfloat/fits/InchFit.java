package endfloat.fits;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Preferred fits of ANSI B4.1-1967 in inches: RC, LC, LT, LN and FN. */
public final class InchFit {
  private static final double INCH = 0.0254;

  /** The table, class by class, in the order of the ranges. */
  private static final Map<String, List<Row>> CLASSES =
      IsoReading.lines("ansi-b4-1.txt").stream()
          .map(Row::parse)
          .collect(Collectors.groupingBy(Row::fitClass, LinkedHashMap::new, Collectors.toList()));

  private InchFit() {}

  /**
   * One line of the table; sizes in inches, the rest in thousandths.
   *
   * @param least clearance as printed
   * @param greatest clearance as printed
   */
  record Row(
      String fitClass,
      double over,
      double to,
      double hole,
      double shaftUpper,
      double shaftLower,
      double least,
      double greatest) {

    static Row parse(String line) {
      String[] words = line.split(" ", -1);
      double[] numbers = new double[7];
      for (int i = 0; i < 7; i++) {
        numbers[i] = Double.parseDouble(words[i + 1]);
      }
      return new Row(
          words[0],
          numbers[0],
          numbers[1],
          numbers[2],
          numbers[3],
          numbers[4],
          numbers[5],
          numbers[6]);
    }
  }

  static List<Row> rows() {
    return CLASSES.values().stream().flatMap(List::stream).toList();
  }

  /**
   * What an inch fit allows; a negative clearance is an interference.
   *
   * @param holeLower lower deviation of the hole, always zero here
   * @param holeUpper upper deviation of the hole
   * @param shaftLower lower deviation of the shaft
   * @param shaftUpper upper deviation of the shaft
   * @param holeLeast least size of the hole
   * @param holeGreatest greatest size of the hole
   * @param shaftLeast least size of the shaft
   * @param shaftGreatest greatest size of the shaft
   * @param leastClearance smallest hole less largest shaft, diametral
   * @param greatestClearance largest hole less smallest shaft, diametral
   * @param kind of fit
   */
  public record Limits(
      @In("thou") double holeLower,
      @In("thou") double holeUpper,
      @In("thou") double shaftLower,
      @In("thou") double shaftUpper,
      @In("in") double holeLeast,
      @In("in") double holeGreatest,
      @In("in") double shaftLeast,
      @In("in") double shaftGreatest,
      @In("thou") double leastClearance,
      @In("thou") double greatestClearance,
      IsoLimits.Kind kind) {}

  /**
   * Limits of a preferred inch fit: {@code inch_fit(1.5 in, "RC4")}.
   *
   * <p>RC1 to RC9 run and slide, LC1 to LC11 locate with clearance, LT1 to LT6 either way, LN1 to
   * LN3 with interference, FN1 to FN5 are force and shrink fits. Ranges of size are over .. up to
   * and including.
   *
   * @param size nominal size common to both parts, over 0 to 19.69 in
   * @param fitClass such as RC4 or FN2
   * @return limits of hole and shaft
   * @throws RefusedException if there is no such class, or its row is not certain here
   */
  @Calculates(
      source =
          "ANSI B4.1-1967 (R1999, R2004, 2009), from page copies of Machinery's Handbook, 27th ed.,"
              + " Table 11, and 31st ed., Tables 8a, 8b and 10 to 12; limits and clearances"
              + " compared row by row",
      cautions = {
        "The limits hold at 68 degF (20 degC).",
        "The size is the nominal one of the drawing, not what was measured: the limits would follow"
            + " the part."
      },
      terms = {"limits and fits", "RC", "LC", "LT", "LN", "FN", "running fit", "force fit"},
      partials = "inchFitPartials")
  public static Limits inchFit(@In("in") @Range("> 0 in") double size, String fitClass) {
    Row row = row(size, fitClass.strip().replace(" ", "").toUpperCase(Locale.ROOT));
    double hole = thou(row.hole());
    double lower = thou(row.shaftLower());
    double upper = thou(row.shaftUpper());
    IsoLimits.Kind kind =
        row.least() >= 0
            ? IsoLimits.Kind.CLEARANCE
            : row.greatest() <= 0 ? IsoLimits.Kind.INTERFERENCE : IsoLimits.Kind.TRANSITION;
    return new Limits(
        0,
        hole,
        lower,
        upper,
        size,
        size + hole,
        size + lower,
        size + upper,
        thou(row.least()),
        thou(row.greatest()),
        kind);
  }

  /** Only the sizes follow the nominal size. */
  public static double[][] inchFitPartials(double size, String fitClass) {
    return new double[][] {{0}, {0}, {0}, {0}, {1}, {1}, {1}, {1}, {0}, {0}};
  }

  private static Row row(double size, String name) {
    List<Row> rows = CLASSES.get(name);
    if (rows == null) {
      throw new RefusedException(
          "\""
              + name
              + "\" is no fit of ANSI B4.1; there are RC1 to RC9, LC1 to LC11, LT1 to LT6,"
              + " LN1 to LN3 and FN1 to FN5");
    }
    double inches = size / INCH;
    if (!(inches <= 19.69 * (1 + 1e-9))) {
      throw new OutOfRangeException(
          "size", size, 0, 19.69 * INCH, "in", "the table here ends at 19.69 in");
    }
    for (Row row : rows) {
      if (inches > row.over() * (1 + 1e-9) && inches <= row.to() * (1 + 1e-9)) {
        return row;
      }
    }
    throw new RefusedException(
        inches < rows.get(0).to()
            ? "ANSI B4.1 gives no " + name + " up to " + rows.get(0).over() + " in"
            : "ANSI B4.1 "
                + name
                + " over "
                + rows.get(rows.size() - 1).to()
                + " in is not certain here: take it from the standard");
  }

  private static double thou(double value) {
    // decimal first: 0.35 thou is 8.89 um exactly
    return Math.rint(value * 254e4) / 1e11;
  }
}
