package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;

/** A java clause: its source, what it was run with, and what it showed. */
final class JavaPart {
  private final Markup out;

  JavaPart(Markup out) {
    this.out = out;
  }

  void write(JsonNode view) {
    JsonNode board = view.path("board");
    out.element("p", "under", "Gives " + view.path("source").path("gives").asText());
    out.start("div", "class", "working")
        .element("pre", "source", view.path("source").path("text").asText());
    out.end();
    board.path("shown").forEach(this::shown);
    String note = board.path("note").asText();
    String state =
        board.path("run").asText().equals("done")
            ? "Run with " + board.path("library").asText() + "."
            : "Not run: " + board.path("run").asText() + ".";
    out.element("p", "under", (note + " " + state).strip());
  }

  private void shown(JsonNode one) {
    switch (one.path("sort").asText()) {
      case "svg" -> out.start("div", "class", "figure").made(one.path("text").asText()).end();
      case "table" -> table(one);
      default -> out.element("pre", "printed", one.path("text").asText());
    }
  }

  private void table(JsonNode one) {
    out.start("table", "class", "readings").start("tr");
    one.path("heads").forEach(head -> out.element("th", "", head.asText()));
    out.end();
    for (JsonNode row : one.path("rows")) {
      out.start("tr");
      row.forEach(cell -> out.element("td", "", cell.asText()));
      out.end();
    }
    out.end();
  }
}
