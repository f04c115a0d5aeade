package endfloat.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size as it is said at the bench: {@code 2.1235 in}, {@code 1 15/16 in}, {@code 12 thou}, {@code
 * 5 ft 2 1/2 in}, {@code 2.1235 in less two thou}, {@code one and a half thou}, or a bare number in
 * the unit of its field. A bare fraction is refused in a metric field: it is inches to whoever
 * types it and would be millimetres to whoever reads it, 25 times apart.
 *
 * @param si the value [SI], rounded once
 * @param unit the unit written, or that of the field
 */
public record Size(double si, Unit unit) {
  private static final String NUMBER =
      "[+\u2212-]?(?:\\d+[ \u00a0]+\\d+/\\d+|\\d+/\\d+|[\\d.,]+(?:[eE][+-]?\\d+)?)";
  private static final Pattern ONE = Pattern.compile("(" + NUMBER + ")\\s*(.*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("([+\u2212-]?)(\\d{1,9})\\s*(?:ft|')\\s*(" + NUMBER + ")\\s*(?:in|\"|'')");

  /**
   * Reads a field.
   *
   * @param typed what stands in the field
   * @param field the unit of the field, for a bare number
   * @throws UnitException if it is no size; says what to write
   */
  public static Size read(String typed, Unit field) {
    String text = typed.strip();
    return SizeSum.read(text, field).orElseGet(() -> single(SizeSum.figures(text), field));
  }

  /** One number and its unit. */
  static Size single(String typed, Unit field) {
    String text = typed.strip();
    Matcher both = FEET_AND_INCHES.matcher(text);
    if (both.matches()) {
      return feetAndInches(both);
    }
    Matcher one = ONE.matcher(text);
    if (!one.matches()) {
      throw new UnitException(
          "\"" + typed + "\" is not a size", "write a number and its unit, such as 2.1235 in");
    }
    String unit = one.group(2);
    if (unit.isEmpty() && text.indexOf('/') >= 0 && isMetric(field) && isLength(field)) {
      throw new UnitException(
          "\"" + text + "\" is a fraction without a unit, and the field is in " + field.print(),
          "write " + text + " in, or " + text + " " + field.print());
    }
    Unit written =
        switch (unit) {
          case "" -> field;
          case "\"", "''" -> UnitTable.find("in");
          case "'" -> UnitTable.find("ft");
          default -> UnitTable.find(unit);
        };
    return new Size(written.toSi(one.group(1)), written);
  }

  /** Whether a unit is of the metric system; one of no system is. */
  static boolean isMetric(Unit unit) {
    return ((ExactUnit) unit)
        .items().stream()
            .map(item -> item.atom().system())
            .allMatch(system -> system == null || system == UnitSystem.METRIC);
  }

  private static boolean isLength(Unit unit) {
    return unit.dimension().equals(UnitTable.find("mm").dimension());
  }

  private static Size feetAndInches(Matcher typed) {
    NumberText inches = NumberText.read(typed.group(3));
    BigDecimal below = new BigDecimal(inches.denominator());
    if (inches.numerator().signum() < 0
        || inches.numerator().compareTo(below.multiply(BigDecimal.valueOf(12))) >= 0) {
      throw new UnitException(
          typed.group(3) + " in after feet is not below 12 in", "write the size in inches");
    }
    BigDecimal feet =
        new BigDecimal(new BigInteger(typed.group(2)).multiply(BigInteger.valueOf(12)));
    BigDecimal sum = feet.multiply(below).add(inches.numerator());
    BigDecimal signed = typed.group(1).isEmpty() || typed.group(1).equals("+") ? sum : sum.negate();
    ExactUnit inch = (ExactUnit) UnitTable.find("in");
    return new Size(inch.toSi(new NumberText(signed, inches.denominator())), inch);
  }
}
