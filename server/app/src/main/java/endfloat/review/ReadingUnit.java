package endfloat.review;

import endfloat.record.Reading;
import endfloat.table.Column;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import java.util.Optional;

/** Whether the unit in a head can be that of a reading. */
final class ReadingUnit {
  private ReadingUnit() {}

  /** Whether the head says the very unit of the reading, so that figures stand without one. */
  static boolean isDeclared(Column column, Reading reading) {
    return column.unit().equals(reading.unit().strip());
  }

  /** Why the column cannot be of the reading; empty where it can. */
  static Optional<String> problem(Column column, Reading reading) {
    if (isDeclared(column, reading)) {
      return Optional.empty();
    }
    if (column.unit().isEmpty()) {
      return Optional.of(
          "the head says no unit; write " + column.head().strip() + " [" + reading.unit() + "]");
    }
    if (reading.unit().isEmpty()) {
      return Optional.of("the reading is a plain number; leave [" + column.unit() + "] out");
    }
    try {
      Unit given = UnitTable.find(column.unit());
      Unit declared = UnitTable.find(reading.unit());
      boolean same =
          given.dimension().same(declared.dimension())
              && given.isTemperaturePoint() == declared.isTemperaturePoint();
      return same
          ? Optional.empty()
          : Optional.of(
              column.unit()
                  + " cannot be put into "
                  + reading.unit()
                  + ", the unit of the reading");
    } catch (UnitException e) {
      return Optional.of(e.getMessage() + "; " + e.wayOut());
    }
  }

  /** Why a column of part temperatures cannot be one; empty where it can. */
  static Optional<String> temperature(Column column) {
    try {
      if (!column.unit().isEmpty() && UnitTable.find(column.unit()).isTemperaturePoint()) {
        return Optional.empty();
      }
    } catch (UnitException e) {
      return Optional.of(column.place() + ": " + e.getMessage() + "; " + e.wayOut());
    }
    return Optional.of(column.place() + ": a temperature is in degC or degF");
  }
}
