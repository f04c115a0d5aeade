package endfloat.child;

import endfloat.clause.TableText;
import endfloat.quantities.Measured;
import endfloat.quantities.MeasuredSeries;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;

/** What a clause gives, as JSON values. */
final class GivenValues {
  private GivenValues() {}

  /** What was given is not what the head of the clause says. */
  static final class NotGivenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotGivenException(String message) {
      super(message);
    }
  }

  static Map<String, Object> of(Program.Give give, Object value) {
    if (value == null) {
      throw new NotGivenException("The source ends without giving " + give.java() + ".");
    }
    Map<String, Object> json = new LinkedHashMap<>();
    switch (give.form()) {
      case "quantity" -> json.put("si", number(give, (Measured<?>) value));
      case "series" -> series(give, (MeasuredSeries<?>) value, json);
      case "text" -> json.put("text", value);
      case "truth" -> json.put("truth", value);
      case "chart" -> json.put("svg", value);
      case "table" -> table(give, (Table) value, json);
      default -> throw new IllegalArgumentException("no form " + give.form());
    }
    return json;
  }

  /** The numbers in what was given, in order. */
  static void numbers(Program.Give give, Object value, List<Double> into) {
    Map<String, Object> json = of(give, value);
    if (json.get("si") instanceof Double si) {
      into.add(si);
    }
    for (Object one : Program.list(json.get("values"))) {
      into.add((Double) one);
    }
    for (Object column : Program.list(json.get("columns"))) {
      for (Object one : Program.list(column)) {
        into.add((Double) one);
      }
    }
  }

  private static double number(Program.Give give, Measured<?> value) {
    boolean temperature = give.type().equals("Temperature");
    if (!UnitTable.find(give.unit()).dimension().same(value.dimension())
        || temperature != value.isTemperature()) {
      throw new NotGivenException(
          give.java() + " is a " + value.dimension().words() + ", which its head does not say.");
    }
    return finite(give.java(), value.si());
  }

  private static double finite(String name, double si) {
    if (!Double.isFinite(si)) {
      throw new NotGivenException(name + " is no finite number.");
    }
    return si;
  }

  private static void series(
      Program.Give give, MeasuredSeries<?> series, Map<String, Object> json) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < series.size(); i++) {
      values.add(number(give, series.get(i)));
    }
    json.put("values", values);
    json.put("axes", series.axes());
    json.put("labels", series.axes().isEmpty() ? List.of() : series.labels());
  }

  private static void table(Program.Give give, Table table, Map<String, Object> json) {
    List<List<Double>> columns = new ArrayList<>();
    for (String name : give.columns()) {
      if (!table.containsColumn(name)) {
        throw new NotGivenException(
            "The table " + give.java() + " has no column " + name + ", which its head promises.");
      }
      if (!(table.column(name) instanceof NumericColumn<?> numbers)) {
        throw new NotGivenException(
            "The column " + name + " of " + give.java() + " does not hold numbers.");
      }
      List<Double> column = new ArrayList<>();
      Arrays.stream(numbers.asDoubleArray())
          .forEach(x -> column.add(finite(give.java() + "." + name, x)));
      columns.add(column);
    }
    json.put("columns", columns);
    json.put("heads", table.columnNames());
    json.put("rows", TableText.rows(table));
  }
}
