package endfloat.processor;

import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A {@code @Range} read at compile time, in SI.
 *
 * @param least negative infinity where there is none
 * @param greatest infinity where there is none
 */
record RangeText(
    String text, double least, double greatest, boolean leastIncluded, boolean greatestIncluded) {
  private static final Pattern SIDE = Pattern.compile("(>=|<=|>|<)?\\s*(.+)");
  private static final Pattern SIZE = Pattern.compile("([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\\s*(.*)");

  /**
   * @param text such as {@code 14.5 deg .. 30 deg}, {@code > 0 mm} or {@code > 0 deg .. < 90 deg}
   * @param unit the parameter's own, for a bare number
   * @throws IllegalArgumentException if it cannot be read, or is not in the parameter's dimension
   */
  static RangeText of(String text, String unit) {
    String[] ends = text.split("\\.\\.", -1);
    Matcher low = side(ends[0], text);
    String sign = low.group(1) == null ? "" : low.group(1);
    if (ends.length == 1 && !sign.isEmpty()) {
      double end = si(low.group(2), unit);
      boolean included = sign.endsWith("=");
      return sign.startsWith(">")
          ? new RangeText(text, end, Double.POSITIVE_INFINITY, included, true)
          : new RangeText(text, Double.NEGATIVE_INFINITY, end, true, included);
    }
    if (ends.length != 2 || sign.startsWith("<")) {
      throw unreadable(text);
    }
    Matcher high = side(ends[1], text);
    String highSign = high.group(1) == null ? "" : high.group(1);
    if (highSign.startsWith(">")) {
      throw unreadable(text);
    }
    String lowUnit = SIZE.matcher(high.group(2).strip()).replaceFirst("$2");
    double least = si(low.group(2), lowUnit.isEmpty() ? unit : lowUnit);
    double greatest = si(high.group(2), unit);
    if (!(least < greatest)) {
      throw new IllegalArgumentException("the range " + text + " is empty");
    }
    return new RangeText(text, least, greatest, !sign.equals(">"), !highSign.equals("<"));
  }

  private static Matcher side(String end, String whole) {
    Matcher side = SIDE.matcher(end.strip());
    if (!side.matches()) {
      throw unreadable(whole);
    }
    return side;
  }

  private static IllegalArgumentException unreadable(String text) {
    return new IllegalArgumentException(
        "a range is written low .. high, > low, >= low, < high or <= high, not " + text);
  }

  boolean holds(double value) {
    return (leastIncluded ? value >= least : value > least)
        && (greatestIncluded ? value <= greatest : value < greatest);
  }

  /**
   * A size in SI.
   *
   * @param unit of the parameter, in whose dimension the size must be; for a bare number its unit
   */
  static double si(String size, String unit) {
    Matcher parts = SIZE.matcher(size.strip());
    if (!parts.matches()) {
      throw new IllegalArgumentException("no size in " + size);
    }
    String written = parts.group(2).strip();
    Unit own = UnitTable.find(written.isEmpty() ? unit : written);
    if (unit.startsWith("<")) {
      return own.toSi(parts.group(1));
    }
    Unit wanted = UnitTable.find(unit);
    if (!own.dimension().same(wanted.dimension())
        || own.isTemperaturePoint() != wanted.isTemperaturePoint()) {
      throw new IllegalArgumentException(size.strip() + " is no size in " + unit);
    }
    return own.toSi(parts.group(1));
  }
}
