package endfloat.table;

import java.time.YearMonth;
import java.util.Locale;

/** What the fields of a column are. */
public enum FieldKind {
  NUMBER("a number"),
  DATE("a date such as 2026-03-02"),
  TRUTH("yes or no"),
  TEXT("a text");

  private static final int DATE_LENGTH = 10;
  private static final char[][] TRUTHS = {
    "yes".toCharArray(), "no".toCharArray(), "true".toCharArray(), "false".toCharArray()
  };

  private final String words;

  FieldKind(String words) {
    this.words = words;
  }

  /** What a field of it is, in words. */
  public String words() {
    return words;
  }

  /** As a record writes it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether a text that is not empty is of this kind. */
  boolean accepts(String text, DecimalMark decimal) {
    return this == TEXT || of(text.toCharArray(), 0, text.length(), decimal) == this;
  }

  /** The kind that letters are of by their looks; a text where they look like nothing else. */
  static FieldKind of(char[] letters, int from, int to, DecimalMark decimal) {
    if (StrictNumber.isOne(letters, from, to, decimal)) {
      return NUMBER;
    }
    if (isDate(letters, from, to)) {
      return DATE;
    }
    return isTruth(letters, from, to) ? TRUTH : TEXT;
  }

  /** ISO 8601, a day that the calendar has. */
  private static boolean isDate(char[] letters, int from, int to) {
    if (to - from != DATE_LENGTH || letters[from + 4] != '-' || letters[from + 7] != '-') {
      return false;
    }
    int year = number(letters, from, from + 4);
    int month = number(letters, from + 5, from + 7);
    int day = number(letters, from + 8, from + 10);
    return year >= 0
        && month >= 1
        && month <= 12
        && day >= 1
        && day <= YearMonth.of(year, month).lengthOfMonth();
  }

  /** The whole number that these are; -1 where they are none. */
  private static int number(char[] letters, int from, int to) {
    int number = 0;
    for (int at = from; at < to; at++) {
      int digit = letters[at] - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = 10 * number + digit;
    }
    return number;
  }

  private static boolean isTruth(char[] letters, int from, int to) {
    for (char[] word : TRUTHS) {
      boolean same = word.length == to - from;
      for (int i = 0; same && i < word.length; i++) {
        // letters of either case differ in one bit
        same = (letters[from + i] | 0x20) == word[i];
      }
      if (same) {
        return true;
      }
    }
    return false;
  }
}
