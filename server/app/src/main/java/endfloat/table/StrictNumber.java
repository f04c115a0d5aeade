package endfloat.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one rule for numbers in files: a sign, digits, a decimal mark between digits, a power of ten;
 * and nothing else. No thousands are parted, and a comma is refused unless it was chosen, so that
 * 0,0123 can never become 123.
 */
public final class StrictNumber {
  private static final int MOST_DIGITS = 40;
  private static final int EXACT_DIGITS = 15;
  private static final double[] POWERS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };
  private static final Pattern POINT =
      Pattern.compile("([+-]?)(\\d{1,40})(?:\\.(\\d{1,40}))?(?:[eE]([+-]?\\d{1,3}))?");
  private static final Pattern COMMA =
      Pattern.compile("([+-]?)(\\d{1,40})(?:,(\\d{1,40}))?(?:[eE]([+-]?\\d{1,3}))?");

  private static final Pattern UNITED =
      Pattern.compile("([+-]?\\d+(?:[.,]\\d+)?)\\s*[\\p{L}\u00b0\u00b5%\"][\\p{L}\\p{Nd}./^-]*");

  private StrictNumber() {}

  /**
   * The number as decimal text with a point, its digits as they were typed.
   *
   * @throws NotANumberException if it is none by the rule; says why and what to do
   */
  public static String read(String text, DecimalMark decimal) {
    String trimmed = text.strip().replace('\u2212', '-');
    Pattern pattern = decimal == DecimalMark.POINT ? POINT : COMMA;
    Matcher number = pattern.matcher(trimmed);
    if (number.matches()) {
      String sign = number.group(1).equals("-") ? "-" : "";
      String fraction = number.group(3) == null ? "" : "." + number.group(3);
      String power = number.group(4) == null ? "" : "e" + number.group(4);
      return sign + number.group(2) + fraction + power;
    }
    throw new NotANumberException("'" + trimmed + "' " + why(trimmed, decimal));
  }

  /** Whether a part of a text is a number by the rule; the same answer as {@link #read}. */
  static boolean isOne(char[] text, int from, int to, DecimalMark decimal) {
    int at = from;
    if (at < to && isSign(text[at])) {
      at++;
    }
    int whole = digits(text, at, to);
    at += whole;
    if (whole < 1 || whole > MOST_DIGITS) {
      return false;
    }
    if (at < to && text[at] == decimal.mark()) {
      int fraction = digits(text, at + 1, to);
      at += 1 + fraction;
      if (fraction < 1 || fraction > MOST_DIGITS) {
        return false;
      }
    }
    if (at < to && (text[at] == 'e' || text[at] == 'E')) {
      at++;
      at += at < to && isSign(text[at]) ? 1 : 0;
      int power = digits(text, at, to);
      at += power;
      if (power < 1 || power > 3) {
        return false;
      }
    }
    return at == to;
  }

  private static boolean isSign(char c) {
    return c == '-' || c == '+' || c == '\u2212';
  }

  private static int digits(char[] text, int from, int to) {
    int at = from;
    while (at < to && text[at] >= '0' && text[at] <= '9') {
      at++;
    }
    return at - from;
  }

  /**
   * The number that a part of a text is by the rule, rounded once; NaN where it is none. Up to 15
   * digits and small powers of ten take no text: both are whole in a double, so their quotient is
   * rounded right.
   */
  static double value(char[] text, int from, int to, DecimalMark decimal) {
    int at = from;
    boolean minus = at < to && text[at] != '+' && isSign(text[at]);
    at += at < to && isSign(text[at]) ? 1 : 0;
    long digits = 0;
    int count = 0;
    int places = 0;
    boolean fraction = false;
    char point = decimal.mark();
    for (; at < to && count <= EXACT_DIGITS; at++) {
      char c = text[at];
      if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
        count++;
        places += fraction ? 1 : 0;
      } else if (c == point && !fraction && count > 0 && at + 1 < to) {
        fraction = true;
      } else {
        break;
      }
    }
    if (at == to && count > 0 && count <= EXACT_DIGITS && (!fraction || places > 0)) {
      double size = places == 0 ? digits : digits / POWERS[places];
      return minus ? -size : size;
    }
    if (!isOne(text, from, to, decimal)) {
      return Double.NaN;
    }
    return Double.parseDouble(read(new String(text, from, to - from), decimal));
  }

  private static String why(String text, DecimalMark decimal) {
    if (decimal == DecimalMark.POINT && COMMA.matcher(text).matches()) {
      return "has a comma: write " + text.replace(',', '.') + ", or choose the decimal comma";
    }
    if (decimal == DecimalMark.COMMA && POINT.matcher(text).matches()) {
      return "has a point where the decimal comma was chosen: write " + text.replace('.', ',');
    }
    if (text.matches("[+-]?\\.\\d+")) {
      return "has no digit before its point: write " + text.replace(".", "0.");
    }
    if (text.matches("[+-]?(\\d+[ -])?\\d+/\\d+")) {
      return "is a fraction: write it in a column of inches, [in], or as a decimal";
    }
    if (UNITED.matcher(text).matches()) {
      return "has a unit with it: the unit stands in the head, another unit in a column of its own";
    }
    if (text.matches("[+-]?[\\d., '\u00a0]+") && text.chars().anyMatch(Character::isDigit)) {
      return "is no plain number: digits, one decimal "
          + (decimal == DecimalMark.POINT ? "point" : "comma")
          + " between digits, no parted thousands";
    }
    return "is not a number; leave the field empty where nothing was taken";
  }

  /** A text is not a number by the rule. */
  public static final class NotANumberException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotANumberException(String message) {
      super(message);
    }
  }
}
