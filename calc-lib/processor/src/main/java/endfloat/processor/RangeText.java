package endfloat.processor;

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
  private static final Pattern ONE_SIDED = Pattern.compile("(>=|<=|>|<)\\s*(.+)");
  private static final Pattern SIZE = Pattern.compile("(-?[0-9.]+(?:e[-+]?[0-9]+)?)\\s*(.*)");

  /**
   * @param text such as {@code 14.5 deg .. 30 deg} or {@code > 0 mm}
   * @param unit the parameter's own, for a bare number
   * @throws IllegalArgumentException if it cannot be read
   */
  static RangeText of(String text, String unit) {
    Matcher oneSided = ONE_SIDED.matcher(text.strip());
    if (oneSided.matches()) {
      double end = si(oneSided.group(2), unit);
      boolean included = oneSided.group(1).endsWith("=");
      return oneSided.group(1).startsWith(">")
          ? new RangeText(text, end, Double.POSITIVE_INFINITY, included, true)
          : new RangeText(text, Double.NEGATIVE_INFINITY, end, true, included);
    }
    String[] ends = text.split("\\.\\.", -1);
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "a range is written low .. high, > low, >= low, < high or <= high, not " + text);
    }
    String lowUnit = SIZE.matcher(ends[1].strip()).replaceFirst("$2");
    double least = si(ends[0], lowUnit.isEmpty() ? unit : lowUnit);
    double greatest = si(ends[1], unit);
    if (least > greatest) {
      throw new IllegalArgumentException("the range " + text + " is empty");
    }
    return new RangeText(text, least, greatest, true, true);
  }

  private static double si(String size, String unit) {
    Matcher parts = SIZE.matcher(size.strip());
    if (!parts.matches()) {
      throw new IllegalArgumentException("no size in " + size);
    }
    String own = parts.group(2).strip();
    return UnitTable.find(own.isEmpty() ? unit : own).toSi(parts.group(1));
  }
}
