package endfloat.engine;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the head of a java clause promises under one name.
 *
 * @param java its name in the source
 * @param unit it is shown in; empty for a pure number and for anything but numbers
 * @param columns of a table that are figures
 */
public record Give(String name, String java, Form form, Optional<Unit> unit, List<Column> columns) {
  /** What it is made of. */
  public enum Form {
    QUANTITY,
    SERIES,
    TEXT,
    TRUTH,
    CHART,
    TABLE;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A column of numbers. */
  public record Column(String name, Optional<Unit> unit) {
    Kind kind() {
      return of(unit);
    }
  }

  /** Whether lines can read it: a chart, and a table without columns in its head, is only shown. */
  boolean isFigure() {
    return form != Form.CHART && (form != Form.TABLE || !columns.isEmpty());
  }

  Kind kind() {
    return switch (form) {
      case QUANTITY -> of(unit);
      case SERIES -> new Kind.Series(of(unit), List.of(), List.of());
      case TEXT, CHART -> new Kind.Words();
      case TRUTH -> new Kind.Truth();
      case TABLE -> {
        Map<String, Kind> fields = new LinkedHashMap<>();
        columns.forEach(c -> fields.put(c.name(), new Kind.Series(c.kind(), List.of(), List.of())));
        yield new Kind.Fields(fields);
      }
    };
  }

  private static Kind of(Optional<Unit> unit) {
    return unit.isPresent() && unit.get().isTemperaturePoint()
        ? new Kind.Temperature()
        : new Kind.Quantity(unit.map(Unit::dimension).orElse(Dimension.NONE));
  }
}
