package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitPreference;
import endfloat.units.UnitSystem;
import endfloat.units.UnitTable;
import java.util.Optional;
import java.util.Set;

/** In which unit a line without a unit mark was meant, read from what it is made of. */
final class UnitsShown {
  /** Functions whose result is of the kind of their first argument. */
  private static final Set<String> LIKE_ARGUMENT =
      Set.of(
          "abs",
          "hypot",
          "round",
          "floor",
          "ceil",
          "min",
          "max",
          "mean",
          "median",
          "range",
          "sum",
          "sd",
          "first",
          "last",
          "pick",
          "only",
          "quantile",
          "normal",
          "rectangular",
          "triangular",
          "arcsine",
          "student_t",
          "sampled");

  private UnitsShown() {}

  /** A usual unit of a dimension to offer in a message; empty for a pure number. */
  static Optional<Unit> plain(Dimension dimension) {
    return dimension.isNone()
        ? Optional.empty()
        : Optional.of(UnitPreference.of(dimension, UnitSystem.METRIC));
  }

  /** The unit of the first number or name that shares the kind; empty where none does. */
  static Optional<Unit> of(Expression written, Typed typed, Scope scope) {
    return found(written, typed, scope).filter(u -> fits(u, typed.kind()));
  }

  private static boolean fits(Unit unit, Kind kind) {
    Kind element = Kinds.element(kind);
    return element instanceof Kind.Temperature
        ? unit.isTemperaturePoint()
        : element instanceof Kind.Quantity quantity
            && !unit.isTemperaturePoint()
            && shows(unit.dimension(), quantity.dimension());
  }

  /** Angle is soft, but neither in a number nor in a rate. */
  private static boolean shows(Dimension unit, Dimension value) {
    Dimension rest = unit.withoutAngle();
    return unit.equals(value)
        || (rest.equals(value.withoutAngle()) && !rest.isNone() && !rest.equals(Kinds.PER_TIME));
  }

  private static Optional<Unit> found(Expression written, Typed typed, Scope scope) {
    if (written instanceof Expression.Literal literal) {
      return literal.unit();
    }
    if (written instanceof Expression.Place place && place.fields().isEmpty()) {
      return scope.unitOf(place.name());
    }
    if (written instanceof Expression.Place column
        && column.fields().size() == 1
        && scope.columnOf(column.name(), column.fields().get(0)).isPresent()) {
      return scope.unitOf(column.name() + "." + column.fields().get(0));
    }
    if (written instanceof Expression.Unary unary) {
      return found(unary.operand(), typed, scope);
    }
    if (written instanceof Expression.Binary binary) {
      return binary(binary, typed, scope);
    }
    if (written instanceof Expression.Conditional conditional) {
      return first(conditional.then(), conditional.otherwise(), typed, scope);
    }
    if (written instanceof Expression.Listing listing) {
      return listing.elements().isEmpty()
          ? Optional.empty()
          : found(listing.elements().get(0), typed, scope);
    }
    return written instanceof Expression.Call call ? call(call, typed, scope) : Optional.empty();
  }

  private static Optional<Unit> first(Expression left, Expression right, Typed typed, Scope scope) {
    Optional<Unit> unit = suited(found(left, typed, scope), typed);
    return unit.isPresent() ? unit : suited(found(right, typed, scope), typed);
  }

  /** A difference of temperatures is shown in the interval of their scale. */
  private static Optional<Unit> suited(Optional<Unit> unit, Typed typed) {
    return unit.map(
            u -> u.isTemperaturePoint() && !Kinds.isTemperature(typed.kind()) ? u.interval() : u)
        .filter(u -> fits(u, typed.kind()));
  }

  private static Optional<Unit> binary(Expression.Binary binary, Typed typed, Scope scope) {
    return switch (binary.operator()) {
      case ADD, SUBTRACT, MULTIPLY -> first(binary.left(), binary.right(), typed, scope);
      case DIVIDE -> suited(found(binary.left(), typed, scope), typed);
      default -> Optional.empty();
    };
  }

  private static Optional<Unit> call(Expression.Call call, Typed typed, Scope scope) {
    Typed of = typed;
    String field = "";
    if (of instanceof Typed.Field named) {
      field = named.field();
      of = named.of();
    }
    if (of instanceof Typed.Calculate calculate) {
      String wanted = field;
      return calculate.calculation().results().stream()
          .filter(r -> r.name().equals(wanted) && !r.unit().isEmpty())
          .findFirst()
          .flatMap(r -> table(r.unit()));
    }
    if (call.arguments().isEmpty() || !LIKE_ARGUMENT.contains(call.function())) {
      return Optional.empty();
    }
    return suited(found(call.arguments().get(0).value(), typed, scope), typed);
  }

  private static Optional<Unit> table(String symbol) {
    try {
      return Optional.of(UnitTable.find(symbol));
    } catch (UnitException e) {
      return Optional.empty();
    }
  }
}
