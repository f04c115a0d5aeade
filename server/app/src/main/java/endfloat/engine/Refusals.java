package endfloat.engine;

import endfloat.catalogue.Parameter;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.RefusedException;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import endfloat.working.Span;
import java.util.List;

/** A calculation's refusal, said at its place in the reader's unit. */
final class Refusals {
  private Refusals() {}

  static LineFailure refused(RefusedException e, Span span) {
    return new LineFailure(span, sentence(e.getMessage()), "");
  }

  static LineFailure outOfRange(OutOfRangeException e, CalculateTerm term, Frame frame) {
    List<Parameter> parameters = term.calculation().parameters();
    Span span = term.span();
    Unit unit = UnitTable.find(e.unit().isEmpty() || e.unit().startsWith("<") ? "1" : e.unit());
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).name().equals(e.quantity())) {
        Term argument = term.arguments()[i];
        span = argument.span();
        if (argument instanceof Term.Named name && name.slot().unit() != null) {
          unit = name.slot().unit();
        } else {
          unit = frame.shown(unit);
        }
      }
    }
    return new LineFailure(
        span,
        "The argument "
            + e.quantity()
            + " is "
            + Shown.withUnit(e.given(), unit)
            + ", outside "
            + limits(e, unit)
            + " where "
            + term.calculation().name()
            + " holds.",
        e.wayOut().isEmpty() ? "Check the value and its unit." : sentence(e.wayOut()));
  }

  private static String limits(OutOfRangeException e, Unit unit) {
    if (Double.isInfinite(e.greatest())) {
      return "the range from " + Shown.withUnit(e.least(), unit) + " up";
    }
    if (Double.isInfinite(e.least())) {
      return "the range up to " + Shown.withUnit(e.greatest(), unit);
    }
    return Shown.withUnit(e.least(), unit) + " to " + Shown.withUnit(e.greatest(), unit) + ",";
  }

  /** A capital in front, a full stop behind. */
  static String sentence(String text) {
    if (text == null || text.isBlank()) {
      return "The calculation refuses these arguments.";
    }
    String trimmed = text.strip();
    String first = trimmed.substring(0, 1);
    boolean word = trimmed.matches("\\p{L}\\p{Ll}*[ ,].*");
    return (word ? first.toUpperCase(java.util.Locale.ROOT) : first)
        + trimmed.substring(1)
        + (trimmed.endsWith(".") ? "" : ".");
  }
}
