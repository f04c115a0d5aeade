package endfloat.review;

import endfloat.engine.Figure;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.table.TableWriter;
import endfloat.units.ShortestDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table as CSV: typed texts as they were typed, what was worked out in the unit of its column
 * with all its digits.
 */
public final class TableOut {
  private final ValueGraph graph;
  private final TableClause table;

  private TableOut(ValueGraph graph, TableClause table) {
    this.graph = graph;
    this.table = table;
  }

  /** The whole table, its rows in the order of the record. */
  public static String csv(ValueGraph graph, TableClause table) {
    return new TableOut(graph, table).csv();
  }

  private String csv() {
    List<TableColumn> columns = table.columns();
    List<Optional<Figure>> figures = new ArrayList<>();
    int rows = table.size();
    for (TableColumn column : columns) {
      Optional<Figure> figure = graph.figure(table.name() + "." + column.head());
      figures.add(figure);
      rows = Math.max(rows, column.isTyped() ? 0 : figure.map(f -> f.elements().size()).orElse(0));
    }
    return TableWriter.csv(
        columns.stream().map(TableColumn::withUnit).toList(), rows, row -> row(row, figures));
  }

  private List<String> row(int row, List<Optional<Figure>> figures) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      boolean typed = table.columns().get(i).isTyped();
      texts.add(typed ? table.text(row, table.place(i)) : worked(row, figures.get(i)));
    }
    return texts;
  }

  private static String worked(int row, Optional<Figure> figure) {
    if (figure.isEmpty()
        || !(figure.get().value().orElse(null) instanceof Value.Series series)
        || row >= series.size()) {
      return "";
    }
    Value value = series.elements().get(row);
    if (value instanceof Value.Scalar scalar) {
      double number = figure.get().unit().map(u -> u.fromSi(scalar.si())).orElse(scalar.si());
      return ShortestDecimal.of(number).toPlainString();
    }
    return value instanceof Value.Words words
        ? words.text()
        : value instanceof Value.Truth truth ? truth.holds() ? "yes" : "no" : "";
  }
}
