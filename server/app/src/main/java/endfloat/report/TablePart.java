package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A table: its first rows in the order of the sheet, and how many more are in the record. */
final class TablePart {
  private final Markup out;
  private final JsonNode view;
  private final JsonNode table;

  private final Set<String> overdue;

  /**
   * @param overdue marks of instruments whose calibration was due
   */
  TablePart(Markup out, JsonNode view, Set<String> overdue) {
    this.out = out;
    this.view = view;
    this.overdue = overdue;
    this.table = view.path("table");
  }

  void write() {
    JsonNode columns = view.path("source").path("columns");
    JsonNode lines = table.path("lines").path("lines");
    boolean judged = false;
    for (JsonNode line : lines) {
      judged |= line.has("verdict");
    }
    out.element("p", "under", said());
    out.table("listed", "unseen", "Rows of the table");
    out.start("thead").start("tr").start("th", "scope", "col").text("Row").end();
    for (int i = 0; i < columns.size(); i++) {
      out.start("th", "scope", "col", "class", look(columns.get(i)));
      out.text(columns.get(i).path("head").asText());
      out.some("span", "under", table.path("columns").path(i).path("unit").asText()).end();
    }
    if (judged) {
      out.start("th", "scope", "col").text("Verdict").end();
    }
    out.end().end().start("tbody");
    for (JsonNode line : lines) {
      line(line, columns, judged);
    }
    out.end().end();
    int more = table.path("lines").path("total").asInt() - lines.size();
    if (more > 0) {
      out.element("p", "under", more + " further lines are in the record.");
    }
  }

  private void line(JsonNode line, JsonNode columns, boolean judged) {
    boolean group = line.has("group");
    out.start("tr", "class", group ? "group" : null);
    String number = group ? line.path("count").asText() + " rows" : line.path("row").asText();
    out.start("th", "scope", "row").text(number).end();
    for (int i = 0; i < columns.size(); i++) {
      String text = line.path("cells").path(i).asText();
      out.start("td", "class", look(columns.get(i)));
      if (text.isEmpty() && !group) {
        out.element("span", "quiet", "missing");
      } else {
        out.text(text);
      }
      out.end();
    }
    if (judged) {
      String verdict = line.path("verdict").asText();
      out.start("td");
      if (!verdict.isEmpty()) {
        out.element("span", "verdict " + verdict.replace(' ', '-'), verdict);
      }
      out.end();
    }
    out.end();
  }

  private static String look(JsonNode column) {
    String kind = column.path("kind").asText("number");
    return kind.isEmpty() || kind.equals("number") ? "num" : null;
  }

  /** Rows, what is missing, where they come from, in which order they stand. */
  private String said() {
    List<String> said = new ArrayList<>();
    int missing = table.path("missing").asInt();
    said.add(
        String.format(
            Locale.ROOT,
            "%d rows; %s.",
            table.path("rows").asInt(),
            missing == 0 ? "none missing" : missing + " values missing"));
    JsonNode from = view.path("source").path("from");
    if (from.has("file")) {
      said.add("From " + from.path("file").asText() + ", read " + from.path("date").asText() + ".");
    }
    for (JsonNode column : view.path("source").path("columns")) {
      String mark = column.path("instrument").asText();
      if (!mark.isBlank()) {
        String due = overdue.contains(mark) ? " (calibration overdue)" : "";
        said.add(column.path("head").asText() + " with " + mark + due + ".");
      }
    }
    JsonNode order = view.path("source").path("view");
    List<String> sorted = new ArrayList<>();
    order
        .path("sort")
        .forEach(
            key ->
                sorted.add(
                    key.asText().endsWith(" down")
                        ? key.asText().replaceFirst(" down$", " falling")
                        : key.asText() + " rising"));
    if (!sorted.isEmpty()) {
      said.add("Sorted by " + String.join(", then ", sorted) + ".");
    }
    if (!order.path("filter").asText().isBlank()) {
      String condition = order.path("filter").asText();
      said.add(table.path("lines").path("passing").asInt() + " rows where " + condition + ".");
    }
    return String.join(" ", said);
  }
}
