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
import java.util.stream.IntStream;

/**
 * A table as CSV: typed texts as they were typed, what was worked out in the unit of its column
 * with all its digits.
 */
public final class TableOut {
  private final TableClause table;
  private final List<Optional<Figure>> figures;

  private TableOut(TableClause table, List<Optional<Figure>> figures) {
    this.table = table;
    this.figures = figures;
  }

  /** The whole table, its rows in the order of the record. */
  public static String csv(ValueGraph graph, TableClause table) {
    List<Optional<Figure>> figures = new ArrayList<>();
    int rows = table.size();
    for (TableColumn column : table.columns()) {
      Optional<Figure> figure = graph.figure(table.name() + "." + column.head());
      figures.add(figure);
      rows =
          Math.max(
              rows,
              column.isTyped() && !table.from().isGrouped()
                  ? 0
                  : figure.map(f -> f.elements().size()).orElse(0));
    }
    return csv(table, figures, IntStream.range(0, rows).toArray());
  }

  /**
   * Some rows of a table.
   *
   * @param figures of its columns, in their order
   * @param rows counted from 0, in the order in which they are given out
   */
  public static String csv(TableClause table, List<Optional<Figure>> figures, int[] rows) {
    TableOut out = new TableOut(table, figures);
    return TableWriter.csv(
        table.columns().stream().map(TableColumn::withUnit).toList(),
        rows.length,
        at -> out.row(rows[at]));
  }

  private List<String> row(int row) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      boolean typed = table.columns().get(i).isTyped() && !table.from().isGrouped();
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
