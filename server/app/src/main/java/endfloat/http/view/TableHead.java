package endfloat.http.view;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What the sheet tells of a table: its heads, how many rows, what is missing. The rows themselves
 * are asked for as they come into view ({@link TableRows}).
 */
final class TableHead {
  private TableHead() {}

  /** The clause as the file has it, without its rows. */
  static ObjectNode source(Cell cell) {
    ObjectNode alone = JsonNodeFactory.instance.objectNode();
    cell.source()
        .properties()
        .forEach(
            field -> {
              if (!field.getKey().equals("rows")) {
                alone.set(field.getKey(), field.getValue());
              }
            });
    return alone;
  }

  /** {@code {rows, missing, columns: [{head, figure, missing, judged, unit}]}}. */
  static ObjectNode of(Cell cell, ValueGraph graph) {
    TableClause table = cell.table();
    ObjectNode head = JsonNodeFactory.instance.objectNode();
    int[] blank = blank(table);
    List<Optional<Figure>> figures =
        table.columns().stream()
            .map(column -> graph.figure(table.name() + "." + column.head()))
            .toList();
    ArrayNode columns = JsonNodeFactory.instance.arrayNode();
    int missing = 0;
    for (int i = 0; i < table.columns().size(); i++) {
      TableColumn column = table.columns().get(i);
      String name = table.name() + "." + column.head();
      Figure figure = figures.get(i).orElse(null);
      boolean typed = isTyped(table, column);
      int gaps = typed ? blank[table.place(i)] : absent(figure);
      missing += gaps;
      columns
          .addObject()
          .put("head", column.head())
          .put("figure", name)
          .put("missing", gaps)
          .put("judged", figure != null && !figure.judgements().isEmpty())
          .put("unit", typed || figure == null ? column.unit() : unit(figure, graph));
    }
    head.put("rows", rows(table, figures)).put("missing", missing).set("columns", columns);
    return head;
  }

  /** Whether the values of a column are typed: of a table of groups none are. */
  static boolean isTyped(TableClause table, TableColumn column) {
    return column.isTyped() && !table.from().isGrouped();
  }

  /** How many rows a table has: of one of groups, as many as its columns have values. */
  static int rows(TableClause table, List<Optional<Figure>> columns) {
    return table.from().isGrouped()
        ? columns.stream().mapToInt(c -> c.map(f -> f.elements().size()).orElse(0)).max().orElse(0)
        : table.size();
  }

  private static String unit(Figure figure, ValueGraph graph) {
    String unit = unit(figure, graph.source().settings()).print();
    return unit.equals("1") ? "" : unit;
  }

  /** In which the values of a column that is worked out stand: its own, else that of the sheet. */
  static Unit unit(Figure figure, GraphSettings settings) {
    return figure.unit().orElseGet(() -> FigureUnit.of(figure, settings));
  }

  /** Texts that are missing, by their place in a row. */
  private static int[] blank(TableClause table) {
    int typed = (int) table.columns().stream().filter(TableColumn::isTyped).count();
    int[] blank = new int[typed];
    for (JsonNode row : table.rows()) {
      for (int place = 0; place < typed; place++) {
        JsonNode text = row.get(place);
        if (text == null || text.textValue() == null || text.textValue().isBlank()) {
          blank[place]++;
        }
      }
    }
    return blank;
  }

  private static int absent(Figure figure) {
    return figure != null && figure.value().orElse(null) instanceof Value.Series series
        ? (int) series.elements().stream().filter(Value.Absent.class::isInstance).count()
        : 0;
  }
}
