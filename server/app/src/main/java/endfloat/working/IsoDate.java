package endfloat.working;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A day as ISO 8601 writes it in ten letters, {@code 2026-03-02}. In this form the order of the
 * texts is the order of the days.
 */
public final class IsoDate {
  private static final Pattern FORM = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private IsoDate() {}

  /** The day; empty for what is none, or is a day that the calendar does not have. */
  public static Optional<LocalDate> of(String text) {
    if (!FORM.matcher(text).matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
