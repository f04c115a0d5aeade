package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A column of a table.
 *
 * @param head a name of the working language: with the table's, {@code wear.lash}
 * @param kind {@code number}, {@code text}, {@code date} or {@code truth}
 * @param unit of numbers; empty for plain ones
 * @param instrument id of that with which its numbers were taken; empty for none
 * @param formula expression from which its values are worked out; empty for typed ones
 * @param key whether its values name the rows
 * @param note what it is, in words
 * @param u standard uncertainty of one value, with its unit; empty for exact values
 */
public record TableColumn(
    String head,
    String kind,
    String unit,
    String instrument,
    String formula,
    boolean key,
    String note,
    String u) {

  static TableColumn of(JsonNode column) {
    return new TableColumn(
        Texts.text(column, "head"),
        Texts.text(column, "kind"),
        Texts.text(column, "unit"),
        Texts.text(column, "instrument"),
        Texts.text(column, "formula"),
        column.path("key").asBoolean(false),
        Texts.text(column, "note"),
        Texts.text(column, "u"));
  }

  /** Whether its values are typed, not worked out. */
  public boolean isTyped() {
    return formula.isBlank();
  }

  public boolean isNumber() {
    return kind.equals("number") || kind.isEmpty();
  }

  /** Head and unit as a file has them: {@code lash [thou]}. */
  public String withUnit() {
    return unit.isBlank() ? head : head + " [" + unit.strip() + "]";
  }
}
