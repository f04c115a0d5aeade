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
 * @param source in full
 * @param knowledge verified or memory
 */
record StoredValue(
    Uncertain value, boolean minimum, String interval, String source, String knowledge) {
  private static final double EVEN = StrictMath.sqrt(3);

  /**
   * @param cell the cells of the line: material, property, value, unit, spread, interval, source,
   *     knowledge
   * @param source in full
   */
  static StoredValue of(String[] cell, String source) {
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

  /** Where it comes from, for the sheet. */
  String origin() {
    return source + ", " + interval + (minimum ? ", minimum" : "") + " (" + knowledge + ")";
  }
}
