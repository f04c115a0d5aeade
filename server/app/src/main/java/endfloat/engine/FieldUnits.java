package endfloat.engine;

import endfloat.catalogue.Result;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import endfloat.working.Typed;
import java.util.LinkedHashMap;
import java.util.Map;

/** In which units a calculation itself gives the fields of its result. */
final class FieldUnits {
  private FieldUnits() {}

  static Map<String, Unit> of(Typed value) {
    Map<String, Unit> units = new LinkedHashMap<>();
    if (value instanceof Typed.Calculate calculate && calculate.calculation().givesRecord()) {
      for (Result result : calculate.calculation().results()) {
        if (!result.unit().isEmpty() && !result.unit().startsWith("<")) {
          units.put(result.name(), UnitTable.find(result.unit()));
        }
      }
    }
    return units;
  }
}
