package endfloat.fits;

import java.util.Set;

/**
 * The formulas from which the tables of ISO 286 were once computed (ISO 286-1:1988, annex A; from
 * memory, those up to 500 mm also read in Narayana, Machine Drawing, Table 15.4). The tables were
 * smoothed by hand, above all for small sizes, so a formula is a second opinion on a cell, never
 * its value. D is the geometric mean of the range [mm]; values in um, NaN where there is none.
 */
final class IsoFormulas {
  /** Letters whose value is given for the halves of a main range. */
  private static final Set<String> BY_HALF_RANGES =
      Set.of("a", "b", "c", "cd", "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");

  private IsoFormulas() {}

  /**
   * Standard tolerance, rounded.
   *
   * @param grade -1 for IT01, 0 for IT0, else the grade
   * @param column of {@link IsoTables#GRADE_SIZES}
   */
  static double tolerance(int grade, int column) {
    double d = mean(IsoTables.GRADE_SIZES, column);
    boolean large = IsoTables.GRADE_SIZES[column] > 500;
    if (grade < (large ? 1 : 5)) {
      return Double.NaN;
    }
    double unit = large ? 0.004 * d + 2.1 : 0.45 * StrictMath.cbrt(d) + 0.001 * d;
    double[] multiples = {2, 2.7, 3.7, 5, 7, 10, 16, 25, 40, 64, 100};
    double scale = grade > 11 ? 10 : 1;
    int basic = grade > 11 ? grade - 5 : grade;
    if (basic > 11) {
      scale = 100;
      basic -= 5;
    }
    return scale * rounded(multiples[basic - 1] * unit, IsoFormulas::stepOfTolerance);
  }

  /**
   * Fundamental deviation of a shaft with its sign, rounded.
   *
   * @param row letter as in the readings
   * @param column of {@link IsoTables#SIZES}
   * @param tables for the standard tolerances and neighbours that a formula builds on
   */
  static double deviation(String row, int column, IsoTables tables) {
    double upper = IsoTables.SIZES[column];
    double d =
        BY_HALF_RANGES.contains(row)
            ? mean(IsoTables.SIZES, column)
            : mean(IsoTables.GRADE_SIZES, IsoTables.gradeColumn(upper));
    double it7 = tables.grade(7, upper);
    boolean large = upper > 500;
    return switch (row) {
      case "a" -> -wide(d <= 120 ? 265 + 1.3 * d : 3.5 * d);
      case "b" -> -wide(d <= 160 ? 140 + 0.85 * d : 1.8 * d);
      case "c" -> -wide(d <= 40 ? 52 * StrictMath.pow(d, 0.2) : 95 + 0.8 * d);
      case "cd" -> -wide(between("c", "d", column, tables));
      case "d" -> -wide(16 * StrictMath.pow(d, 0.44));
      case "e" -> -wide(11 * StrictMath.pow(d, 0.41));
      case "ef" -> -wide(between("e", "f", column, tables));
      case "f" -> -wide(5.5 * StrictMath.pow(d, 0.41));
      case "fg" -> -wide(between("f", "g", column, tables));
      case "g" -> -wide(2.5 * StrictMath.pow(d, 0.34));
      case "k" -> large ? 0 : narrow(0.6 * StrictMath.cbrt(d));
      case "m" -> large ? narrow(0.024 * d + 12.6) : it7 - tables.grade(6, upper);
      case "n" -> narrow(large ? 0.04 * d + 21 : 5 * StrictMath.pow(d, 0.34));
      case "p" -> large ? narrow(0.072 * d + 37.8) : Double.NaN;
      case "r" -> narrow(between("p", "s", column, tables));
      case "s" -> upper > 50 ? narrow(it7 + 0.4 * d) : Double.NaN;
      case "t" -> narrow(it7 + 0.63 * d);
      case "u" -> narrow(it7 + d);
      case "v" -> narrow(it7 + 1.25 * d);
      case "x" -> narrow(it7 + 1.6 * d);
      case "y" -> narrow(it7 + 2 * d);
      case "z" -> narrow(it7 + 2.5 * d);
      case "za" -> narrow(tables.grade(8, upper) + 3.15 * d);
      case "zb" -> narrow(tables.grade(9, upper) + 4 * d);
      case "zc" -> narrow(tables.grade(10, upper) + 5 * d);
      default -> Double.NaN;
    };
  }

  private static double mean(double[] sizes, int column) {
    double lower = column == 0 ? 1 : sizes[column - 1];
    return StrictMath.sqrt(lower * sizes[column]);
  }

  /** Geometric mean of two neighbouring letters as read. */
  private static double between(String one, String other, int column, IsoTables tables) {
    return StrictMath.sqrt(
        Math.abs(tables.read(one, column)) * Math.abs(tables.read(other, column)));
  }

  private static double wide(double value) {
    return rounded(value, IsoFormulas::stepOfClearance);
  }

  private static double narrow(double value) {
    return rounded(value, IsoFormulas::stepOfInterference);
  }

  private static double rounded(double value, java.util.function.DoubleUnaryOperator step) {
    double multiple = step.applyAsDouble(value);
    return StrictMath.rint(value / multiple) * multiple;
  }

  /** Rounding of standard tolerances. */
  private static double stepOfTolerance(double value) {
    return step(value, new double[] {100, 200, 500, 1000}, new double[] {1, 5, 10, 20, 50});
  }

  /** Rounding of a to g. */
  private static double stepOfClearance(double value) {
    return step(
        value,
        new double[] {45, 60, 200, 560, 1000, 2000},
        new double[] {1, 2, 5, 10, 20, 50, 100});
  }

  /** Rounding of k to zc. */
  private static double stepOfInterference(double value) {
    return step(
        value,
        new double[] {100, 300, 600, 800, 1000, 2000},
        new double[] {1, 2, 5, 10, 20, 50, 100});
  }

  private static double step(double value, double[] ends, double[] steps) {
    int i = 0;
    while (i < ends.length && value > ends[i]) {
      i++;
    }
    return steps[i];
  }
}
