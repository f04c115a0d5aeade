package endfloat.working;

import endfloat.units.Dimension;

/** What the trade calls a kind of value, for messages. */
final class KindWords {
  private KindWords() {}

  /** {@code a length}, {@code an angle}, {@code a temperature}. */
  static String a(Kind kind) {
    String words = words(kind);
    return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  static String a(Dimension dimension) {
    return a(new Kind.Quantity(dimension));
  }

  static String words(Kind kind) {
    if (kind instanceof Kind.Quantity quantity) {
      return quantity.dimension().words();
    }
    if (kind instanceof Kind.Temperature) {
      return "temperature";
    }
    if (kind instanceof Kind.Truth) {
      return "yes or no";
    }
    if (kind instanceof Kind.Date) {
      return "date";
    }
    if (kind instanceof Kind.Words) {
      return "text";
    }
    if (kind instanceof Kind.Series series) {
      return series.element() instanceof Kind.Fields
          ? "series of results"
          : "series, each " + a(series.element());
    }
    if (kind instanceof Kind.Parts parts) {
      return parts.list() ? "list of " + parts.part() + " parts" : parts.part();
    }
    if (isTable(kind)) {
      return "table (" + String.join(", ", ((Kind.Fields) kind).fields().keySet()) + ")";
    }
    return "set of results (" + String.join(", ", ((Kind.Fields) kind).fields().keySet()) + ")";
  }

  /** Whether it is a table under its own name: nothing but columns over the same rows. */
  static boolean isTable(Kind kind) {
    return kind instanceof Kind.Fields fields
        && !fields.fields().isEmpty()
        && fields.fields().values().stream()
            .allMatch(column -> column instanceof Kind.Series series && series.axes().size() == 1);
  }
}
