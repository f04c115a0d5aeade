package endfloat.materials;

import endfloat.units.Uncertain;
import endfloat.units.Unit;
import endfloat.units.UnitTable;

/**
 * One line of the table of values.
 *
 * @param value with its spread, in SI
 * @param minimum whether it is a guaranteed least value
 * @param interval of temperature that it holds for, as printed
 * @param source where it was found
 * @param knowledge verified or memory
 */
record StoredValue(
    Uncertain value, boolean minimum, String interval, Source source, String knowledge) {

  /**
   * A book or data sheet and the place in it.
   *
   * @param place a table; empty where the whole is meant
   */
  record Source(String title, String place) {}

  private static final double EVEN = StrictMath.sqrt(3);

  /**
   * @param cell the cells of the line: material, property, value, unit, spread, interval, source,
   *     knowledge
   * @param source that the key of the line stands for
   */
  static StoredValue of(String[] cell, Source source) {
    Unit unit = UnitTable.find(cell[3]);
    String[] ends = cell[2].split(" \\.\\. ", -1);
    double low = unit.toSi(ends[0]);
    double high = unit.toSi(ends[ends.length - 1]);
    double middle = ends.length == 1 ? low : (low + high) / 2;
    double halfWidth =
        switch (cell[4]) {
          case "range" -> (high - low) / 2;
          case "minimum" -> 0;
          default -> halfWidth(cell[4], middle, unit);
        };
    return new StoredValue(
        new Uncertain(middle, halfWidth / EVEN),
        cell[4].equals("minimum"),
        cell[5],
        source,
        cell[7]);
  }

  private static double halfWidth(String spread, double value, Unit unit) {
    return spread.endsWith(" %")
        ? value * UnitTable.find("%").toSi(spread.substring(0, spread.length() - 2))
        : unit.toSi(spread);
  }

  /** Place, temperature and knowledge, for the sheet: {@code Table B.6, 20 degC, verified}. */
  String place() {
    return (source.place().isEmpty() ? "" : source.place() + ", ")
        + interval
        + (minimum ? ", minimum" : "")
        + ", "
        + knowledge;
  }
}
