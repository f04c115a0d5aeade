package endfloat.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The one rule for numbers in files: a sign, digits, a decimal mark between digits, a power of ten;
 * and nothing else. No thousands are parted, and a comma is refused unless it was chosen, so that
 * 0,0123 can never become 123.
 */
public final class StrictNumber {
  private static final Pattern POINT =
      Pattern.compile("([+-]?)(\\d{1,40})(?:\\.(\\d{1,40}))?(?:[eE]([+-]?\\d{1,3}))?");
  private static final Pattern COMMA =
      Pattern.compile("([+-]?)(\\d{1,40})(?:,(\\d{1,40}))?(?:[eE]([+-]?\\d{1,3}))?");

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

  private static String why(String text, DecimalMark decimal) {
    if (decimal == DecimalMark.POINT && COMMA.matcher(text).matches()) {
      return "has a comma: write " + text.replace(',', '.') + ", or choose the decimal comma";
    }
    if (decimal == DecimalMark.COMMA && POINT.matcher(text).matches()) {
      return "has a point where the decimal comma was chosen: write " + text.replace('.', ',');
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
