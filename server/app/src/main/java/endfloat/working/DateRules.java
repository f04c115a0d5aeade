package endfloat.working;

import endfloat.units.Dimension;
import java.util.Set;

/**
 * What may be done with dates: put in order, taken from one another, chosen. The language has no
 * date of its own to write: beside a date, a quoted text has to be one.
 */
final class DateRules {
  private static final Set<BuiltIn> OF_DATES =
      Set.of(BuiltIn.MIN, BuiltIn.MAX, BuiltIn.RANGE, BuiltIn.COUNT, BuiltIn.FIRST, BuiltIn.LAST);

  private DateRules() {}

  static boolean isDate(Operand operand) {
    return operand.element() instanceof Kind.Date;
  }

  /** Whether both are dates, one of them perhaps a quoted one; refused where that is none. */
  static boolean areDates(Operand left, Operand right) {
    return (isDate(left) && isDateToo(right)) || (isDate(right) && isDateToo(left));
  }

  private static boolean isDateToo(Operand operand) {
    if (!(operand.written() instanceof Expression.Text text)) {
      return isDate(operand);
    }
    if (IsoDate.of(text.text()).isEmpty()) {
      throw new KindException(
          operand.span(),
          "\"" + text.text() + "\" stands beside a date and is none",
          "Write a day of the calendar as \"2026-03-02\"");
    }
    return true;
  }

  /** Kind of a difference of two dates; a sum is refused. */
  static Kind sum(Operand left, Operand right, boolean plus) {
    if (plus || !areDates(left, right)) {
      throw new KindException(
          right.span(),
          plus
              ? "A date has no sum with anything"
              : "This takes "
                  + KindWords.a(right.element())
                  + " from "
                  + KindWords.a(left.element()),
          "Take a date from a date, which gives the time between, and compare that");
    }
    return new Kind.Quantity(Dimension.TIME);
  }

  /** What a reduction of dates gives. */
  static Kind reduced(BuiltIn function, Operand operand) {
    if (!OF_DATES.contains(function)) {
      throw new KindException(
          operand.span(),
          function.functionName() + " of dates says nothing",
          "Take min, max, range, count, first or last, or go by a difference of dates");
    }
    return switch (function) {
      case COUNT -> Kinds.NUMBER;
      case RANGE -> new Kind.Quantity(Dimension.TIME);
      default -> operand.element();
    };
  }
}
