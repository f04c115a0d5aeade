package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A java clause: its source, what it was run with, and what it showed. */
final class JavaPart {
  private final Markup out;
  private final SheetOnPaper sheet;

  JavaPart(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  void write(JsonNode view) {
    JsonNode board = view.path("board");
    out.element("p", "under", "Gives " + view.path("source").path("gives").asText());
    String source = view.path("source").path("text").asText();
    if (!source.isBlank()) {
      out.start("div", "class", "working").element("pre", "source", source).end();
    }
    board.path("shown").forEach(one -> shown(one, view.path("number").asText()));
    new WorkingPart(out, sheet).write(given(view, board.path("gives")));
    for (JsonNode one : board.path("gives")) {
      for (JsonNode hint : sheet.figure(one.path("name").asText()).path("hints")) {
        String of = one.path("name").asText() + ": ";
        out.element("p", "under", of + hint.path("message").asText());
      }
    }
    String note = board.path("note").asText();
    String state =
        board.path("run").asText().equals("done")
            ? "Run with " + board.path("library").asText() + "."
            : "Not run: " + board.path("run").asText() + ".";
    out.element("p", "under", (note + " " + state).strip());
  }

  /** What it gave, as the lines of a working. */
  private ObjectNode given(JsonNode view, JsonNode gives) {
    ObjectNode clause = JsonNodeFactory.instance.objectNode();
    clause.put("number", view.path("number").asText());
    ArrayNode lines = clause.putArray("lines");
    for (JsonNode one : gives) {
      String name = one.path("name").asText();
      JsonNode figure = sheet.figure(name);
      if (figure.path("cell").asText().equals(view.path("id").asText())) {
        lines
            .addObject()
            .put("name", name)
            .put("figure", name)
            .put("kind", "value")
            .put("unit", figure.path("unit").asText());
      }
    }
    return clause;
  }

  private void shown(JsonNode one, String number) {
    switch (one.path("sort").asText()) {
      case "svg" -> out.start("div", "class", "figure").made(one.path("text").asText()).end();
      case "table" -> table(one, number);
      default -> out.element("pre", "printed", one.path("text").asText());
    }
  }

  private void table(JsonNode one, String number) {
    out.table("readings", "unseen", "Table made by " + number);
    out.start("tr");
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
