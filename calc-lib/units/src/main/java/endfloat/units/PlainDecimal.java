package endfloat.units;

import java.math.BigDecimal;

/**
 * A decimal that fits a long, {@code unscaled / 10^scale}. With at most 53 bits and 22 places one
 * division of two exact doubles rounds it rightly, which is ten times faster than the general way;
 * the general way remains for all other numbers and gives the same.
 */
record PlainDecimal(long unscaled, int scale) {
  private static final long EXACT = 1L << 53;
  private static final int MOST_DIGITS = 18;
  private static final int FIGURES = 15;
  private static final long LEAST_TOO_LONG = 1_000_000_000_000_000L;
  private static final double LOG_2 = 0.30102999566;
  private static final PlainDecimal ONE = new PlainDecimal(1, 0);
  private static final double[] TEN = new double[23];

  static {
    TEN[0] = 1;
    for (int i = 1; i < TEN.length; i++) {
      // Exact: 10^22 is the last power of ten that a double holds.
      TEN[i] = TEN[i - 1] * 10;
    }
  }

  /** A plain decimal such as {@code 2.1235} or {@code 23e-6}; null for any other text. */
  static PlainDecimal read(String text) {
    int end = text.length();
    int at = end > 0 && text.charAt(0) == '-' ? 1 : 0;
    int first = at;
    long unscaled = 0;
    int point = -1;
    int digits = 0;
    for (; at < end; at++) {
      char c = text.charAt(at);
      if (c >= '0' && c <= '9') {
        unscaled = 10 * unscaled + (c - '0');
        if (++digits > MOST_DIGITS) {
          return null;
        }
      } else if (c == '.' && point < 0 && at > first) {
        point = at;
      } else {
        break;
      }
    }
    if (digits == 0 || at - 1 == point) {
      return null;
    }
    int scale = point < 0 ? 0 : at - 1 - point;
    if (at < end) {
      int exponent = exponent(text, at, end);
      if (exponent == Integer.MAX_VALUE) {
        return null;
      }
      scale -= exponent;
    }
    return new PlainDecimal(first == 1 ? -unscaled : unscaled, scale);
  }

  /** Two digits at most; the greatest integer where there is none to be read. */
  private static int exponent(String text, int e, int end) {
    int at = e + 1;
    boolean minus = at < end && text.charAt(at) == '-';
    if (minus) {
      at++;
    }
    if (text.charAt(e) != 'e' || at >= end || end - at > 2) {
      return Integer.MAX_VALUE;
    }
    int exponent = 0;
    for (; at < end; at++) {
      char c = text.charAt(at);
      if (c < '0' || c > '9') {
        return Integer.MAX_VALUE;
      }
      exponent = 10 * exponent + (c - '0');
    }
    return minus ? -exponent : exponent;
  }

  /** Null where it does not fit. */
  static PlainDecimal of(BigDecimal number) {
    BigDecimal few = number.stripTrailingZeros();
    return few.precision() > MOST_DIGITS
        ? null
        : new PlainDecimal(few.unscaledValue().longValueExact(), few.scale());
  }

  /**
   * A decimal of at most 15 figures near a double, within a few units of its last figure; null
   * where it is too great or too small. The caller checks whether it is the right one.
   */
  static PlainDecimal near(double number) {
    int power = (int) Math.floor(Math.getExponent(number) * LOG_2);
    int scale = FIGURES - 1 - power;
    if (number == 0 || Math.abs(scale) >= TEN.length) {
      return null;
    }
    long figures = Math.round(scale >= 0 ? number * TEN[scale] : number / TEN[-scale]);
    if (Math.abs(figures) >= LEAST_TOO_LONG) {
      figures = Math.round(scale > 0 ? number * TEN[scale - 1] : number / TEN[1 - scale]);
      scale--;
    }
    while (figures != 0 && figures % 10 == 0) {
      figures /= 10;
      scale--;
    }
    return new PlainDecimal(figures, scale);
  }

  /** The number itself, rounded once; NaN where this way cannot tell. */
  double value() {
    return times(ONE);
  }

  /** The product rounded once to a double; NaN where this way cannot tell. */
  double times(PlainDecimal other) {
    long product = unscaled * other.unscaled;
    if (Math.multiplyHigh(unscaled, other.unscaled) != product >> 63) {
      return Double.NaN;
    }
    int places = scale + other.scale;
    if (product > EXACT || product < -EXACT || Math.abs(places) >= TEN.length) {
      return Double.NaN;
    }
    return places >= 0 ? product / TEN[places] : product * TEN[-places];
  }
}
