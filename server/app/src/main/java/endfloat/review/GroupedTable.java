package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
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
   * @param group head of the column that tells the groups
   * @param of heads of the columns of numbers that are summed up
   * @param filter condition on the rows that count, of the working language; empty for all
   */
  public static ObjectNode clause(TableClause table, String group, List<String> of, String filter) {
    ObjectNode fields = JsonNodeFactory.instance.objectNode();
    ObjectNode from = fields.putObject("from");
    from.putArray("group").add(group);
    ArrayNode heads = from.putArray("of");
    of.forEach(heads::add);
    from.put("table", table.name());
    if (!filter.isBlank()) {
      from.put("filter", filter.strip());
    }
    String by = chosen(table.name() + "." + group, filter);
    ArrayNode columns = fields.putArray("columns");
    column(columns, group, "text", "", "first(" + by + ", by: " + by + ")");
    column(columns, "rows", "number", "", "count(" + by + ", by: " + by + ")");
    for (String head : of) {
      String values = chosen(table.name() + "." + head, filter);
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
            function + "(" + values + ", by: " + by + ")");
      }
    }
    fields.putArray("rows");
    return fields;
  }

  private static String chosen(String column, String filter) {
    return filter.isBlank() ? column : "only(" + column + ", where: " + filter.strip() + ")";
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
