package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table: columns with heads, rows of texts as typed. A column with a formula, and every column of
 * a table that is made of another, has no texts of its own.
 *
 * @param name by which the working language knows it; empty while not yet named
 * @param from where the rows come from
 * @param view how the page last showed it; no part of any figure
 * @param columns in the order in which they stand
 * @param limits lines of the working language, each a limit on a column
 * @param rows of the file, one text for each column that has texts; not to be altered
 */
public record TableClause(
    String name,
    TableSource from,
    TableOrder view,
    List<TableColumn> columns,
    List<String> limits,
    JsonNode rows) {
  private static final ArrayNode NO_ROWS = JsonNodeFactory.instance.arrayNode();

  static TableClause of(JsonNode clause) {
    List<TableColumn> columns = new ArrayList<>();
    clause.path("columns").forEach(column -> columns.add(TableColumn.of(column)));
    JsonNode rows = clause.get("rows");
    return new TableClause(
        Texts.text(clause, "name"),
        TableSource.of(clause.path("from")),
        TableOrder.of(clause.path("view")),
        List.copyOf(columns),
        Texts.list(clause, "limits"),
        rows instanceof ArrayNode ? rows : NO_ROWS);
  }

  /** How many rows it has. */
  public int size() {
    return rows.size();
  }

  /** What was typed in a row, by the place of the text in it; empty where nothing was. */
  public String text(int row, int place) {
    JsonNode text = rows.path(row).path(place);
    return text.isTextual() ? text.textValue() : "";
  }

  /** Place of the texts of a column in a row; -1 for a column that has none. */
  public int place(int column) {
    if (!columns.get(column).isTyped()) {
      return -1;
    }
    int place = 0;
    for (TableColumn before : columns.subList(0, column)) {
      place += before.isTyped() ? 1 : 0;
    }
    return place;
  }

  /** The column whose values name the rows; empty where they are numbered. */
  public Optional<TableColumn> key() {
    return columns.stream().filter(c -> c.key() && c.isTyped()).findFirst();
  }
}
