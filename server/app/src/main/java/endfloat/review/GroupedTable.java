package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.working.Renaming;
import java.util.List;

/**
 * A table of the groups of another: how many rows each group has, and of columns of numbers the
 * mean, the least, the greatest and the deviation. Every column is a formula, so it follows the
 * other table, and its own columns are series like any.
 */
public final class GroupedTable {
  private GroupedTable() {}

  /**
   * The fields of a clause: {@code from}, {@code columns} and no rows.
   *
   * @param groups heads of the columns that tell the groups, in the order in which they do
   * @param of heads of the columns of numbers that are summed up
   * @param filter condition on the rows that count, in which a head alone is the column; empty for
   *     all
   */
  public static ObjectNode clause(
      TableClause table, List<String> groups, List<String> of, String filter) {
    ObjectNode fields = JsonNodeFactory.instance.objectNode();
    ObjectNode from = fields.putObject("from");
    groups.forEach(from.putArray("group")::add);
    of.forEach(from.putArray("of")::add);
    from.put("table", table.name());
    String condition = inColumns(table, filter.strip());
    if (!condition.isEmpty()) {
      from.put("filter", condition);
    }
    List<String> by = groups.stream().map(head -> chosen(table, head, condition)).toList();
    String together = by.size() == 1 ? by.get(0) : "[" + String.join(", ", by) + "]";
    ArrayNode columns = fields.putArray("columns");
    for (int i = 0; i < by.size(); i++) {
      column(columns, groups.get(i), "text", "", "first(" + by.get(i) + ", by: " + together + ")");
    }
    String first = by.get(0);
    column(columns, "rows", "number", "", "count(" + first + ", by: " + together + ")");
    for (String head : of) {
      String unit =
          table.columns().stream()
              .filter(column -> column.head().equals(head))
              .map(TableColumn::unit)
              .findFirst()
              .orElse("");
      for (String function : List.of("mean", "min", "max", "sd")) {
        column(
            columns,
            head + "_" + function,
            "number",
            unit,
            function + "(" + chosen(table, head, condition) + ", by: " + together + ")");
      }
    }
    fields.putArray("rows");
    return fields;
  }

  /** A condition on rows as a line of the language: a head alone becomes the column. */
  public static String inColumns(TableClause table, String condition) {
    String asked = condition;
    for (TableColumn column : table.columns()) {
      if (!column.head().isBlank() && !column.head().equals(table.name())) {
        asked = Renaming.inFormula(asked, column.head(), table.name() + "." + column.head());
      }
    }
    return asked;
  }

  private static String chosen(TableClause table, String head, String condition) {
    String column = table.name() + "." + head;
    return condition.isEmpty() ? column : "only(" + column + ", where: " + condition + ")";
  }

  private static void column(
      ArrayNode columns, String head, String kind, String unit, String formula) {
    ObjectNode column = columns.addObject().put("head", head).put("kind", kind);
    if (!unit.isBlank()) {
      column.put("unit", unit);
    }
    column.put("formula", formula);
  }
}
