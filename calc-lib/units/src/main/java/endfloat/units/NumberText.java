package endfloat.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as it is typed: {@code 2.1235}, {@code .005}, {@code 23e-6}, {@code 1 15/16}. */
record NumberText(BigDecimal numerator, BigInteger denominator) {
  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?)(\\d{1,400}(?:\\.\\d{1,400})?|\\.\\d{1,400})([eE][+-]?\\d{1,3})?");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:(\\d{1,15})[ \\u00a0]+)?(\\d{1,15})/(\\d{1,15})");

  /**
   * @throws UnitException if it is no number; says why and what to write
   */
  static NumberText read(String typed) {
    String text = typed.strip().replace('\u2212', '-');
    if (DECIMAL.matcher(text).matches()) {
      return new NumberText(new BigDecimal(text), BigInteger.ONE);
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return fraction(fraction, typed);
    }
    throw refusal(typed, text);
  }

  private static NumberText fraction(Matcher typed, String text) {
    BigInteger below = new BigInteger(typed.group(4));
    if (below.signum() == 0) {
      throw new UnitException(text + " divides by zero", "write the lower number of the fraction");
    }
    BigInteger whole = typed.group(2) == null ? BigInteger.ZERO : new BigInteger(typed.group(2));
    BigInteger above = new BigInteger(typed.group(3)).add(whole.multiply(below));
    if (whole.signum() != 0 && above.subtract(whole.multiply(below)).compareTo(below) >= 0) {
      throw new UnitException(
          text + " adds a fraction that is not below 1", "write the sum as one number");
    }
    return new NumberText(
        new BigDecimal(typed.group(1).equals("-") ? above.negate() : above), below);
  }

  private static UnitException refusal(String typed, String text) {
    if (text.isEmpty()) {
      return new UnitException("there is no number", "write one, such as 2.1235 or 1 15/16");
    }
    if (text.indexOf(',') >= 0) {
      return new UnitException(
          "\"" + typed + "\" has a comma, which some read as a decimal point and some as thousands",
          "write a point for decimals and nothing between thousands");
    }
    if (text.matches("[+-]?\\d+\\.")) {
      return new UnitException(
          "\"" + typed + "\" ends in a point", "write " + text + "0 or leave the point out");
    }
    return new UnitException(
        "\"" + typed + "\" is not a number", "write it as 2.1235, 23e-6, 3/8 or 1 15/16");
  }

  /** The number, exact where it is a decimal. */
  BigDecimal value() {
    return denominator.equals(BigInteger.ONE)
        ? numerator
        : numerator.divide(new BigDecimal(denominator), Factor.WORKING);
  }
}
