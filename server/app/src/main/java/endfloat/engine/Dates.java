package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Words;
import endfloat.working.BuiltIn;
import endfloat.working.Expression.Comparator;
import endfloat.working.IsoDate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Dates, which are texts in the one form whose order is that of the days. */
final class Dates {
  private static final double DAY = 86_400;

  private Dates() {}

  /** Whole days from one to another [s]; a date is exact. */
  static Scalar between(Value from, Value to) {
    return Scalar.exact(DAY * ChronoUnit.DAYS.between(day(from), day(to)));
  }

  private static LocalDate day(Value date) {
    String text = ((Words) date).text();
    return IsoDate.of(text)
        .orElseThrow(() -> new IllegalStateException("\"" + text + "\" passed as a date"));
  }

  /** How two texts of one form, or any two for equality, stand to one another. */
  static boolean compare(Words a, Comparator operator, Words b) {
    int order = a.text().compareTo(b.text());
    return switch (operator) {
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case GREATER -> order > 0;
      case AT_LEAST -> order >= 0;
      case EQUAL -> order == 0;
      case UNEQUAL -> order != 0;
    };
  }

  /** The least, the greatest, or the time between these. */
  static Value of(BuiltIn function, List<Value> dates) {
    Words least = (Words) dates.get(0);
    Words greatest = least;
    for (Value date : dates) {
      Words one = (Words) date;
      least = one.text().compareTo(least.text()) < 0 ? one : least;
      greatest = one.text().compareTo(greatest.text()) > 0 ? one : greatest;
    }
    return switch (function) {
      case MIN -> least;
      case MAX -> greatest;
      default -> between(least, greatest);
    };
  }
}
