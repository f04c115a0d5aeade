package endfloat.table;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Set;

/** What the fields of a column are. */
public enum FieldKind {
  NUMBER("a number"),
  DATE("a date such as 2026-03-02"),
  TRUTH("yes or no"),
  TEXT("a text");

  private static final int DATE_LENGTH = 10;
  private static final Set<String> TRUTHS = Set.of("yes", "no", "true", "false");

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
    int length = to - from;
    if (length == DATE_LENGTH && letters[from + 4] == '-' && letters[from + 7] == '-') {
      return isDate(new String(letters, from, length)) ? DATE : TEXT;
    }
    boolean truth =
        length >= 2
            && length <= 5
            && TRUTHS.contains(new String(letters, from, length).toLowerCase(Locale.ROOT));
    return truth ? TRUTH : TEXT;
  }

  private static boolean isDate(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
