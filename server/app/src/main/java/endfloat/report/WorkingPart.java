package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;

/** The lines of a working: name, formula with its numbers put in, value, verdict against limits. */
final class WorkingPart {
  private final Markup out;
  private final SheetOnPaper sheet;

  WorkingPart(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  void write(JsonNode clause) {
    if (clause.path("lines").isEmpty()) {
      return;
    }
    out.table("lines", "unseen", "Lines of " + clause.path("number").asText());
    out.start("thead").start("tr");
    out.start("th", "scope", "col", "class", "name").text("Name").end();
    out.start("th", "scope", "col").text("Working").end();
    new Answers(out).heads("Limits");
    out.end().end();
    for (JsonNode line : clause.get("lines")) {
      // a line and what stands beneath it go to one sheet
      out.start("tbody", "class", "one");
      line(line);
      out.end();
    }
    out.end();
  }

  private void line(JsonNode line) {
    String name = line.path("name").asText();
    String kind = line.path("kind").asText();
    JsonNode figure = sheet.figure(line.path("figure").asText());
    boolean own = !line.path("figure").asText().isEmpty();
    out.start("tr", "id", own ? "figure-" + name : null);
    out.start("th", "scope", "row", "class", "name");
    out.start("span", "class", "nm");
    (name.isEmpty() ? out.text("correlated") : out.name(name)).end();
    out.some("span", "un", kind.equals("limit") ? "limit" : line.path("unit").asText());
    out.end();
    out.start("td", "class", "work");
    String given = line.path("given").asText();
    boolean input = kind.equals("input");
    if (!input || given.isEmpty()) {
      formula("formula", line.path("formula").asText());
    }
    formula("numbers", input ? "" : figure.path("numbers").asText());
    out.some("div", "given", given.isEmpty() || !input ? given : "given: " + given);
    out.some("div", "wrong", figure.path("error").path("message").asText());
    out.end();
    new Answers(out).cells(figure);
    out.end();
    new Answers(out).beneath(figure, 4, !input);
  }

  private void formula(String className, String math) {
    if (!math.isEmpty()) {
      out.start("div", "class", className).made(Formulas.inXml(math)).end();
    }
  }
}
