package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Result;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.BuiltIn;
import endfloat.working.Typed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * In which units a calculation itself gives the fields of its result; where it leaves the unit to
 * its arguments, in theirs.
 */
final class FieldUnits {
  private final Function<String, Unit> names;
  private final Map<String, Unit> variables = new LinkedHashMap<>();

  private FieldUnits(Function<String, Unit> names) {
    this.names = names;
  }

  /**
   * @param names unit of a name, null where none is known
   */
  static Map<String, Unit> of(Typed value, Function<String, Unit> names) {
    Map<String, Unit> units = new LinkedHashMap<>();
    if (value instanceof Typed.Calculate calculate && calculate.calculation().givesRecord()) {
      FieldUnits found = new FieldUnits(names);
      found.variables(calculate);
      for (Result result : calculate.calculation().results()) {
        if (!result.unit().isEmpty()) {
          found.unit(result.unit()).ifPresent(unit -> units.put(result.name(), unit));
        }
      }
    }
    return units;
  }

  private void variables(Typed.Calculate call) {
    Calculation calculation = call.calculation();
    for (int i = 0; i < call.arguments().size(); i++) {
      String unit = calculation.parameters().get(i).unit();
      Unit given = unit.startsWith("<") ? given(call.arguments().get(i)) : null;
      if (given != null) {
        variables.putIfAbsent(unit, given);
      }
    }
  }

  /** The unit of the first name that is of the same kind; null for none. */
  private Unit given(Typed argument) {
    if (argument instanceof Typed.Name name) {
      return names.apply(name.name());
    }
    if (argument instanceof Typed.Only only) {
      return given(only.series());
    }
    if (argument instanceof Typed.Pick pick) {
      return given(pick.series());
    }
    if (argument instanceof Typed.Apply apply
        && (apply.function() == BuiltIn.ADD || apply.function() == BuiltIn.SUBTRACT)) {
      return given(apply.arguments().get(0));
    }
    return null;
  }

  private Optional<Unit> unit(String declared) {
    if (!declared.startsWith("<")) {
      return Optional.of(UnitTable.find(declared));
    }
    int sign = Math.max(declared.indexOf("/<"), declared.indexOf("-<"));
    Unit first = variables.get(sign < 0 ? declared : declared.substring(0, sign));
    if (first == null || sign < 0) {
      return Optional.ofNullable(first);
    }
    if (declared.charAt(sign) == '-') {
      return Optional.of(first.interval());
    }
    Unit second = variables.get(declared.substring(sign + 1));
    return second == null ? Optional.empty() : quotient(first.interval(), second.interval());
  }

  private static Optional<Unit> quotient(Unit first, Unit second) {
    try {
      return Optional.of(
          second.dimension().isNone()
              ? first
              : UnitTable.find(first.symbol() + "/" + second.symbol()));
    } catch (UnitException e) {
      return Optional.empty();
    }
  }
}
