package endfloat.fits;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The cells of ISO 286-1 that are certain here: two of first reading, second reading, and a third
 * opinion (the standard's formula, or a third reading of that cell) agree. Every other cell refuses
 * by name.
 */
final class IsoTables {
  /** Upper ends of the ranges of fundamental deviations [mm]. */
  static final double[] SIZES;

  /** Upper ends of the ranges of standard tolerances [mm]. */
  static final double[] GRADE_SIZES;

  static final IsoTables LIBRARY;

  static {
    IsoReading first = IsoReading.of("iso-286-deviations-first.txt");
    IsoReading firstGrades = IsoReading.of("iso-286-grades-first.txt");
    SIZES = first.sizes();
    GRADE_SIZES = firstGrades.sizes();
    LIBRARY = new IsoTables(first, firstGrades);
  }

  private final IsoReading first;
  private final IsoReading second = IsoReading.of("iso-286-deviations-second.txt");
  private final IsoReading firstGrades;
  private final IsoReading secondGrades = IsoReading.of("iso-286-grades-second.txt");
  private final Map<String, Double> third = new LinkedHashMap<>();

  private IsoTables(IsoReading first, IsoReading firstGrades) {
    this.first = first;
    this.firstGrades = firstGrades;
    for (String line : IsoReading.lines("iso-286-deviations-third.txt")) {
      String[] words = line.split(" ", -1);
      third.put(words[0] + " " + words[1], Double.parseDouble(words[2]));
    }
  }

  /** Standard tolerance [um]; refuses where the cell is not certain or does not exist. */
  double grade(int grade, double size) {
    int column = gradeColumn(size);
    String name = gradeName(grade);
    double a = firstGrades.value(name, column);
    double b = secondGrades.value(name, column);
    double formula = IsoFormulas.tolerance(grade, column);
    return agreed(name, column, GRADE_SIZES, new double[] {a, b, formula});
  }

  /** Fundamental deviation [um] of a row of the readings; refuses likewise. */
  double deviation(String row, double size) {
    int column = column(size);
    return agreed(row, column, SIZES, opinions(row, column));
  }

  private double[] opinions(String row, int column) {
    double a = first.value(row, column);
    double b = second.value(row, column);
    Double other = third.get(row + " " + Math.round(SIZES[column]));
    double opinion =
        other != null
            ? other
            : Double.isNaN(a) ? Double.NaN : IsoFormulas.deviation(row, column, this);
    return new double[] {a, b, opinion};
  }

  /** As the readings have it, without the test whether it is certain: what a formula builds on. */
  double read(String row, int column) {
    double a = first.value(row, column);
    return Double.isNaN(a) ? second.value(row, column) : a;
  }

  private static double agreed(String name, int column, double[] sizes, double[] opinions) {
    double value = certain(opinions);
    if (!Double.isNaN(value)) {
      return value;
    }
    boolean none = Double.isNaN(opinions[0]) && Double.isNaN(opinions[1]);
    throw new RefusedException(
        none
            ? "ISO 286-1 gives no " + name + " for " + range(sizes, column)
            : "ISO 286-1 "
                + name
                + " for "
                + range(sizes, column)
                + " is not certain here: the published copies differ; take it from the standard");
  }

  private static double certain(double[] opinions) {
    for (int i = 0; i < opinions.length; i++) {
      for (int j = i + 1; j < opinions.length; j++) {
        if (Math.abs(opinions[i] - opinions[j]) < 1e-9) {
          return opinions[i];
        }
      }
    }
    return Double.NaN;
  }

  /** "over 18 to 24 mm". */
  static String range(double[] sizes, int column) {
    return String.format(
        Locale.ROOT,
        column == 0 ? "sizes up to %2$.0f mm" : "sizes over %1$.0f to %2$.0f mm",
        column == 0 ? 0 : sizes[column - 1],
        sizes[column]);
  }

  static String gradeName(int grade) {
    return grade < 0 ? "IT01" : "IT" + grade;
  }

  static int column(double size) {
    return column(SIZES, size);
  }

  static int gradeColumn(double size) {
    return column(GRADE_SIZES, size);
  }

  /** Ranges are over .. up to and including; a part in 10^9 absorbs the rounding of units. */
  private static int column(double[] sizes, double size) {
    int i = 0;
    while (size > sizes[i] * (1 + 1e-9)) {
      i++;
    }
    return i;
  }

  /** Cells that some reading has and that are refused, one a line. */
  List<String> leftOut() {
    List<String> lines = new ArrayList<>();
    eachCell(
        (name, range, opinions) -> {
          boolean given = !Double.isNaN(opinions[0]) || !Double.isNaN(opinions[1]);
          if (given && Double.isNaN(certain(opinions))) {
            lines.add(line(name, range, opinions));
          }
        });
    return lines;
  }

  /** Shipped cells on which a reading or the formula differs, one a line. */
  List<String> differences() {
    List<String> lines = new ArrayList<>();
    eachCell(
        (name, range, opinions) -> {
          double value = certain(opinions);
          boolean differs = false;
          for (double opinion : opinions) {
            differs |= !Double.isNaN(opinion) && Math.abs(opinion - value) > 1e-9;
          }
          if (!Double.isNaN(value) && differs) {
            lines.add(line(name, range, opinions) + ", shipped " + text(value));
          }
        });
    return lines;
  }

  private interface Cell {
    void with(String name, String range, double[] opinions);
  }

  private void eachCell(Cell cell) {
    for (int grade = -1; grade <= 18; grade++) {
      for (int i = 0; i < GRADE_SIZES.length; i++) {
        String name = gradeName(grade);
        cell.with(
            name,
            range(GRADE_SIZES, i),
            new double[] {
              firstGrades.value(name, i),
              secondGrades.value(name, i),
              IsoFormulas.tolerance(grade, i)
            });
      }
    }
    for (String row : first.rows().keySet()) {
      for (int i = 0; i < SIZES.length; i++) {
        cell.with(row, range(SIZES, i), opinions(row, i));
      }
    }
  }

  private static String line(String name, String range, double[] opinions) {
    return name
        + ", "
        + range
        + ": first "
        + text(opinions[0])
        + ", second "
        + text(opinions[1])
        + ", third opinion "
        + text(opinions[2]);
  }

  private static String text(double value) {
    return Double.isNaN(value)
        ? "none"
        : value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
