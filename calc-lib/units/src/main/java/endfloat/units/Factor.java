package endfloat.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.StringTokenizer;

/**
 * An exact positive factor, {@code numerator / denominator · π^piPower}: no unit of the trade needs
 * more, and none is rounded before the one rounding to a double.
 */
record Factor(BigInteger numerator, BigInteger denominator, int piPower) {
  static final Factor ONE = new Factor(BigInteger.ONE, BigInteger.ONE, 0);
  private static final Factor ONE_PI = new Factor(BigInteger.ONE, BigInteger.ONE, 1);

  /** Enough that a second rounding, to a double's 17 figures, is never seen. */
  static final MathContext WORKING = new MathContext(60);

  /** π to 80 figures (OEIS A000796). */
  static final BigDecimal PI =
      new BigDecimal(
          "3.1415926535897932384626433832795028841971693993751058209749445923078164062862090");

  Factor {
    BigInteger common = numerator.gcd(denominator);
    numerator = numerator.divide(common);
    denominator = denominator.divide(common);
  }

  /** A product of decimals and {@code pi} such as {@code 0.45359237*4184*5/9} or {@code pi/180}. */
  static Factor of(String text) {
    Factor product = ONE;
    boolean below = false;
    StringTokenizer parts = new StringTokenizer(text, "*/", true);
    while (parts.hasMoreTokens()) {
      String part = parts.nextToken();
      if (part.equals("*") || part.equals("/")) {
        below = part.equals("/");
      } else {
        Factor one = part.equals("pi") ? ONE_PI : of(new BigDecimal(part));
        product = below ? product.over(one) : product.times(one);
      }
    }
    return product;
  }

  static Factor of(BigDecimal decimal) {
    BigDecimal whole = decimal.scale() < 0 ? decimal.setScale(0) : decimal;
    return new Factor(whole.unscaledValue(), BigInteger.TEN.pow(whole.scale()), 0);
  }

  Factor times(Factor other) {
    if (this == ONE) {
      return other;
    }
    return new Factor(
        numerator.multiply(other.numerator),
        denominator.multiply(other.denominator),
        piPower + other.piPower);
  }

  Factor over(Factor other) {
    return new Factor(
        numerator.multiply(other.denominator),
        denominator.multiply(other.numerator),
        piPower - other.piPower);
  }

  /** Whole powers exactly; square roots to {@link #WORKING}. */
  Factor power(int exponent, int root) {
    if (exponent == 1 && root == 1) {
      return this;
    }
    Factor raised =
        new Factor(
            numerator.pow(Math.abs(exponent)),
            denominator.pow(Math.abs(exponent)),
            piPower * Math.abs(exponent));
    if (root == 2 && !raised.equals(ONE)) {
      raised = of(raised.times(BigDecimal.ONE).sqrt(WORKING));
    } else if (root != 1 && !raised.equals(ONE)) {
      throw new UnitException(
          "a unit cannot be raised to the power " + exponent + "/" + root,
          "only whole powers and square roots of units are written");
    }
    return exponent < 0 ? ONE.over(raised) : raised;
  }

  /** This factor as a short decimal; null where it is none. */
  PlainDecimal plain() {
    if (piPower != 0 || numerator.bitLength() > 63 || denominator.bitLength() > 63) {
      return null;
    }
    try {
      return PlainDecimal.of(new BigDecimal(numerator).divide(new BigDecimal(denominator)));
    } catch (ArithmeticException e) {
      // A third, for example, is no finite decimal.
      return null;
    }
  }

  /** The number times this factor; exact where the factor is a finite decimal without π. */
  BigDecimal times(BigDecimal number) {
    return scaled(number, numerator, denominator, piPower);
  }

  /** The number divided by this factor. */
  BigDecimal under(BigDecimal number) {
    return scaled(number, denominator, numerator, -piPower);
  }

  private static BigDecimal scaled(
      BigDecimal number, BigInteger above, BigInteger below, int piPower) {
    BigDecimal top = number.multiply(new BigDecimal(above));
    BigDecimal bottom = new BigDecimal(below);
    if (piPower > 0) {
      top = top.multiply(PI.pow(piPower));
    } else if (piPower < 0) {
      bottom = bottom.multiply(PI.pow(-piPower));
    }
    return bottom.compareTo(BigDecimal.ONE) == 0 ? top : top.divide(bottom, WORKING);
  }
}
