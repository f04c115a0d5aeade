package endfloat.review;

import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.record.Cell;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.review.Comparison.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A table of one record, as a comparison reads it. */
final class ComparedTable {
  private final Cell cell;
  private final TableClause table;
  private final GraphSettings settings;
  private final List<Optional<Figure>> figures = new ArrayList<>();

  private ComparedTable(Cell cell, Side side) {
    this.cell = cell;
    this.table = cell.table();
    this.settings = side.settings();
    for (TableColumn column : table.columns()) {
      figures.add(side.graph().figure(nameOf(column)));
    }
  }

  static List<ComparedTable> of(Side side) {
    return side.record().cells().stream()
        .filter(cell -> cell.kind().equals("table"))
        .map(cell -> new ComparedTable(cell, side))
        .toList();
  }

  /** The names of all columns of the tables of a record. */
  static Set<String> columnsOf(Side side) {
    Set<String> names = new LinkedHashSet<>();
    for (ComparedTable one : of(side)) {
      one.table.columns().forEach(column -> names.add(one.nameOf(column)));
    }
    return names;
  }

  private String nameOf(TableColumn column) {
    return table.name() + "." + column.head();
  }

  String clause() {
    return cell.number();
  }

  /** Its name, else its title. */
  String name() {
    return table.name().isBlank() ? cell.title() : table.name();
  }

  /** The same table of the other record: of the same name, else of the same clause. */
  Optional<ComparedTable> in(List<ComparedTable> others) {
    return others.stream()
        .filter(one -> !table.name().isBlank() && one.table.name().equals(table.name()))
        .findFirst()
        .or(
            () ->
                others.stream()
                    .filter(one -> one.cell.id().equals(cell.id()))
                    .filter(one -> table.name().isBlank() || one.table.name().isBlank())
                    .findFirst());
  }

  TableColumn column(int at) {
    return table.columns().get(at);
  }

  List<String> heads() {
    return table.columns().stream().map(TableColumn::head).toList();
  }

  Optional<Figure> figure(int column) {
    return figures.get(column);
  }

  /** The values of a column; empty where as a whole it has none. */
  Optional<Value.Series> series(int column) {
    return figures
        .get(column)
        .filter(figure -> figure.state() == Figure.State.FRESH)
        .flatMap(Figure::value)
        .filter(Value.Series.class::isInstance)
        .map(Value.Series.class::cast);
  }

  boolean isTyped(int column) {
    return table.columns().get(column).isTyped() && !table.from().isGrouped();
  }

  int rows() {
    return table.from().isGrouped()
        ? figures.stream()
            .mapToInt(f -> f.map(one -> one.elements().size()).orElse(0))
            .max()
            .orElse(0)
        : table.size();
  }

  /** As typed; empty for a column that is worked out. */
  String typed(int row, int column) {
    return isTyped(column) ? table.text(row, table.place(column)).strip() : "";
  }

  /** The heads of the columns that name its rows; empty where they are numbered. */
  List<String> keyHeads() {
    return table.from().isGrouped()
        ? table.from().group()
        : table.key().map(column -> List.of(column.head())).orElse(List.of());
  }

  /** Row by key, in their order; empty where a key is missing or stands twice. */
  Optional<Map<String, Integer>> byKey(List<String> heads) {
    Map<String, Integer> rows = new HashMap<>();
    List<Integer> at = heads.stream().map(heads()::indexOf).toList();
    for (int row = 0; row < rows(); row++) {
      int one = row;
      String key = at.stream().map(column -> key(one, column)).collect(Collectors.joining(", "));
      if (key.isEmpty() || rows.putIfAbsent(key, row) != null) {
        return Optional.empty();
      }
    }
    return Optional.of(rows);
  }

  private String key(int row, int column) {
    if (column < 0) {
      return "";
    }
    return isTyped(column)
        ? typed(row, column)
        : series(column).map(all -> key(all.elements().get(row), column, row)).orElse("");
  }

  private String key(Value value, int column, int row) {
    if (value instanceof Value.Words words) {
      return words.text();
    }
    if (value instanceof Value.Truth truth) {
      return truth.holds() ? "yes" : "no";
    }
    Figure figure = figures.get(column).orElseThrow();
    return Shown.of(figure, figure.elements().get(row), settings).map(Shown::value).orElse("");
  }
}
