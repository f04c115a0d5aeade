package endfloat.engine;

import endfloat.engine.FieldLine.Entered;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a table of the record gives to the graph. */
final class TableParts {
  private final TableClause table;
  private final List<TablePart> parts = new ArrayList<>();

  private TableParts(TableClause table) {
    this.table = table;
  }

  static List<TablePart> of(TableClause table) {
    TableParts made = new TableParts(table);
    made.columns();
    made.limits();
    return List.copyOf(made.parts);
  }

  private void columns() {
    List<TableColumn> columns = table.columns();
    Set<String> heads = new LinkedHashSet<>();
    RowAxis rows = rows();
    boolean worked = columns.stream().noneMatch(TableColumn::isTyped);
    String first = "";
    for (int at = 0; at < columns.size(); at++) {
      TableColumn column = columns.get(at);
      String name = name(column);
      if (!name.isEmpty() && !heads.add(column.head())) {
        parts.add(
            new TablePart.Wrong(
                "/columns/" + at + "/head",
                "Two columns have the head " + column.head() + ".",
                "Give one of them another."));
        continue;
      }
      if (column.isTyped()) {
        int place = table.place(at);
        parts.add(new TablePart.Typed(name, at, column, rows, new ColumnTexts(table, place)));
      } else if (!name.isEmpty()) {
        parts.add(
            new TablePart.Derived(
                new FieldLine.Stated(
                    name,
                    column.note(),
                    new Entered("/columns/" + at + "/unit", column.unit()),
                    new Entered("/columns/" + at + "/formula", column.formula())),
                worked ? Optional.empty() : Optional.of(rows),
                first));
        first = worked && first.isEmpty() ? column.head() : first;
      }
    }
    if (!table.name().isEmpty() && !heads.isEmpty()) {
      parts.add(new TablePart.Whole(table.name(), List.copyOf(heads)));
    }
  }

  private String name(TableColumn column) {
    return table.name().isEmpty() || column.head().isEmpty()
        ? ""
        : table.name() + "." + column.head();
  }

  private RowAxis rows() {
    for (int at = 0; at < table.columns().size(); at++) {
      TableColumn column = table.columns().get(at);
      if (column.key() && column.isTyped() && !column.head().isEmpty()) {
        return RowAxis.keyed(column.head(), new ColumnTexts(table, table.place(at)));
      }
    }
    return RowAxis.numbered(table.name(), table.size());
  }

  private void limits() {
    for (int at = 0; at < table.limits().size(); at++) {
      if (!table.limits().get(at).isBlank()) {
        parts.add(new TablePart.Limit(at, table.limits().get(at)));
      }
    }
  }
}
