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
    return switch (this) {
      case NUMBER -> StrictNumber.isOne(text, 0, text.length(), decimal);
      case DATE -> isDate(text);
      case TRUTH -> TRUTHS.contains(text.toLowerCase(Locale.ROOT));
      case TEXT -> true;
    };
  }

  private static boolean isDate(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return false;
    }
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException e) {
      return false;
    }
  }

  /** The kind that a text is of by its looks; a text where it looks like nothing else. */
  static FieldKind of(String text, DecimalMark decimal) {
    for (FieldKind kind : values()) {
      if (kind.accepts(text, decimal)) {
        return kind;
      }
    }
    return TEXT;
  }
}
