package endfloat.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Names of the record and the results inside them. */
final class Places {
  private final Checking checking;

  Places(Checking checking) {
    this.checking = checking;
  }

  Typed typed(Expression.Place place) {
    if (place.name().equals("pi")) {
      return fields(
          new Typed.Constant(place.span(), Kinds.ANGLE, Math.PI),
          "pi",
          place.fields(),
          place.span());
    }
    if (!place.fields().isEmpty()) {
      String head = place.fields().get(0);
      Optional<Kind> column = checking.scope.columnOf(place.name(), head);
      if (column.isPresent()) {
        String said = place.name() + "." + head;
        Typed name = new Typed.Name(place.span(), column.get(), said);
        List<String> rest = place.fields().subList(1, place.fields().size());
        return fields(name, said, rest, place.span());
      }
    }
    Kind kind =
        checking.scope.kindOf(place.name()).orElseThrow(() -> unknown(place.name(), place.span()));
    Typed name = new Typed.Name(place.span(), kind, place.name());
    return fields(name, place.name(), place.fields(), place.span());
  }

  KindException unknown(String name, Span span) {
    String message = "\"" + name + "\" is not a name of this record";
    if (BuiltIn.named(name).isPresent() || checking.catalogue.find(name).isPresent()) {
      return new KindException(
          span,
          message + "; it is a function",
          "Write its arguments in brackets: " + name + "(...)");
    }
    List<String> nearest = Nearest.of(name, checking.scope.names());
    if (UnitReader.isUnit(name)) {
      return new KindException(
          span,
          message,
          "For the unit write it straight after a number: 5 "
              + name
              + ", 5 N/"
              + name
              + " or 5 1/"
              + name
              + (nearest.isEmpty() ? "" : ". Nearest names: " + String.join(", ", nearest)));
    }
    return new KindException(
        span,
        message,
        nearest.isEmpty()
            ? "Define it on a line of its own: " + name + " = ..."
            : "Nearest: " + String.join(", ", nearest));
  }

  /** Results taken out of a record of results one after another. */
  static Typed fields(Typed value, String said, List<String> fields, Span span) {
    Typed of = value;
    String path = said;
    for (String field : fields) {
      of = field(of, path, field, span);
      path = path + "." + field;
    }
    return of;
  }

  private static Typed field(Typed of, String said, String field, Span span) {
    Kind element = Kinds.element(of.kind());
    if (!(element instanceof Kind.Fields record)) {
      throw new KindException(
          span,
          said + " is " + KindWords.a(of.kind()) + " and has no parts",
          "Take ." + field + " out");
    }
    Map<String, Kind> fields = record.fields();
    Kind kind = fields.get(field);
    if (kind == null) {
      throw new KindException(
          span,
          said
              + (KindWords.isTable(record) ? " has no column \"" : " has no result \"")
              + field
              + "\"",
          Nearest.wayOut(field, fields.keySet(), "It has " + String.join(", ", fields.keySet())));
    }
    if (of.kind() instanceof Kind.Series series) {
      if (kind instanceof Kind.Series) {
        throw new KindException(
            span,
            "\"" + field + "\" is a list for each element",
            "Take one station first, such as pick(x, cylinder: 3)");
      }
      kind = new Kind.Series(kind, new ArrayList<>(series.axes()), series.labels());
    }
    return new Typed.Field(span, kind, of, field);
  }
}
