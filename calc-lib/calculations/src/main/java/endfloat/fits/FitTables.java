package endfloat.fits;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The tables behind the limits and fits, to be looked into; cells that are refused are empty. */
public final class FitTables {
  /** Where the grades of ISO 286-1 are from. */
  public static final String ISO_SOURCE =
      "ISO 286-1, from two published program tables and the standard's formula; a cell stands here"
          + " where two of the three agree. The standard itself was not read.";

  /** Where the inch fits are from. */
  public static final String INCH_SOURCE =
      "ANSI B4.1-1967 (R1999, R2004, 2009), from page copies of Machinery's Handbook, 27th and 31st"
          + " ed.; a row stands here where its limits and its clearances give each other.";

  private FitTables() {}

  /**
   * A standard tolerance.
   *
   * @param grade IT01, IT0, IT1 to IT18
   * @param range of nominal sizes in words
   * @param micrometres empty where the cell is not certain or the standard has none
   */
  public record Grade(String grade, String range, OptionalDouble micrometres) {}

  /** Every grade for every range, range by range. */
  public static List<Grade> grades() {
    List<Grade> cells = new ArrayList<>();
    for (int column = 0; column < IsoTables.GRADE_SIZES.length; column++) {
      String range = IsoTables.range(IsoTables.GRADE_SIZES, column).replace("sizes ", "");
      for (int grade = -1; grade <= 18; grade++) {
        cells.add(
            new Grade(
                IsoTables.gradeName(grade), range, grade(grade, IsoTables.GRADE_SIZES[column])));
      }
    }
    return cells;
  }

  private static OptionalDouble grade(int grade, double size) {
    try {
      return OptionalDouble.of(IsoTables.LIBRARY.grade(grade, size));
    } catch (RefusedException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * A line of the inch fits: sizes in inches, the rest in thousandths, interference negative.
   *
   * @param knowledge how the line is known
   */
  public record InchLine(
      String fitClass,
      double over,
      double to,
      double hole,
      double shaftUpper,
      double shaftLower,
      double least,
      double greatest,
      String knowledge) {}

  /** Every line of the inch fits, class by class. */
  public static List<InchLine> inchFits() {
    return IsoReading.lines("ansi-b4-1.txt").stream()
        .map(
            line -> {
              InchFit.Row row = InchFit.Row.parse(line);
              return new InchLine(
                  row.fitClass(),
                  row.over(),
                  row.to(),
                  row.hole(),
                  row.shaftUpper(),
                  row.shaftLower(),
                  row.least(),
                  row.greatest(),
                  line.substring(line.lastIndexOf(' ') + 1));
            })
        .toList();
  }
}
