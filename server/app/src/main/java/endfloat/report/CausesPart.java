package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * Candidate causes: a table of marks that is read at a glance, then cause by cause why. There are
 * no totals: evidence is weighed, not counted.
 */
final class CausesPart {
  private final Markup out;
  private final SheetOnPaper sheet;
  private final JsonNode source;
  private final JsonNode board;

  CausesPart(Markup out, SheetOnPaper sheet, JsonNode clause) {
    this.out = out;
    this.sheet = sheet;
    this.source = clause.path("source");
    this.board = clause.path("board");
  }

  private interface CellOf {
    void write(int column);
  }

  void write() {
    marks();
    effects();
    reasons();
  }

  private JsonNode causes() {
    return source.path("causes");
  }

  private void marks() {
    out.table("causes", "unseen", "Candidate causes across, evidence down");
    out.start("thead").start("tr").start("th", "scope", "col", "class", "evidence");
    out.text("Evidence").end();
    for (JsonNode cause : causes()) {
      out.start("th", "scope", "col").text(or(cause.path("name").asText(), "not named")).end();
    }
    out.end().end().start("tbody");
    for (JsonNode one : source.path("evidence")) {
      out.start("tr").start("th", "scope", "row").text(one.path("text").asText());
      String number = sheet.number(one.path("clause").asText());
      if (!number.isEmpty()) {
        out.text(" ").start("a", "href", "#clause-" + one.get("clause").asText());
        out.text(number).end();
      }
      out.end();
      for (JsonNode cause : causes()) {
        String word = one.path("marks").path(cause.path("id").asText()).path("mark").asText();
        out.start("td", "class", "mark" + (word.equals("not measured") ? " open" : ""));
        out.some("span", "sign", sign(word));
        out.text(word.isEmpty() ? "–" : word).end();
      }
      out.end();
    }
    String effect = source.path("effect").asText();
    row(effect.isBlank() ? "Adds" : "Adds to the " + effect, i -> quantity(cause(i, "figure")));
    row("Big enough for the damage", i -> out.text(or(cause(i, "enough"), "–")));
    row("Standing", i -> out.text(or(cause(i, "standing"), "open")));
    out.end().end();
  }

  private String cause(int at, String field) {
    return board.path("causes").path(at).path(field).asText();
  }

  private void row(String head, CellOf cell) {
    out.start("tr", "class", "sums").start("th", "scope", "row").text(head).end();
    for (int i = 0; i < causes().size(); i++) {
      out.start("td", "class", "mark");
      cell.write(i);
      out.end();
    }
    out.end();
  }

  private void effects() {
    out.table("effect", "unseen", "Effect, needed and left");
    out.start("tbody");
    effect("Effect observed", board.path("observed").asText());
    effect("Size needed for the damage", board.path("needed").asText());
    effect("Remainder unexplained", board.path("unexplained").asText());
    out.end().end();
  }

  private void effect(String caption, String name) {
    out.start("tr", "id", name.isEmpty() ? null : "figure-" + name);
    out.start("th", "scope", "row").text(caption).end().start("td");
    quantity(name);
    out.end().end();
  }

  private void quantity(String name) {
    JsonNode figure = sheet.figure(name);
    if (!figure.has("value")) {
      out.element("span", "quiet", name.isEmpty() ? "no size" : "not measured");
      return;
    }
    String unit = figure.path("unit").asText();
    out.start("span", "class", "val", "data-figure", name, "data-unit", unit);
    out.text(figure.get("value").asText()).end();
    out.text(unit.isEmpty() ? "" : " " + unit);
    String u = figure.path("u").asText();
    out.some("span", "under", u.isEmpty() ? "" : "± " + u);
  }

  private void reasons() {
    out.table("reasons", "unseen", "Why, cause by cause");
    out.start("thead").start("tr");
    out.start("th", "scope", "col", "class", "cause").text("Cause").end();
    out.start("th", "scope", "col", "class", "mark").text("Mark").end();
    out.start("th", "scope", "col").text("Why").end();
    out.end().end();
    for (int i = 0; i < causes().size(); i++) {
      reasons(i);
    }
    out.end();
  }

  private void reasons(int at) {
    JsonNode cause = causes().get(at);
    boolean ruledOut = cause(at, "standing").equals("ruled out");
    out.start("tbody", "class", "one");
    out.start("tr").start("th", "scope", "row", "class", "cause");
    out.text(or(cause.path("name").asText(), "not named")).end();
    out.element("td", "mark", "mechanism");
    out.element("td", "", or(cause.path("mechanism").asText(), "not said")).end();
    for (JsonNode one : source.path("evidence")) {
      JsonNode mark = one.path("marks").path(cause.path("id").asText());
      if (mark.path("reason").asText().isBlank()) {
        continue;
      }
      reason(mark.path("mark").asText(), one.path("text").asText(), mark.get("reason").asText());
    }
    if (ruledOut) {
      reason("ruled out", "", cause.path("fact").asText());
    }
    out.end();
  }

  private void reason(String mark, String evidence, String reason) {
    out.start("tr").start("td").end();
    out.start("td", "class", "mark" + (mark.equals("not measured") ? " open" : ""));
    out.some("span", "sign", sign(mark)).text(mark).end();
    out.start("td").some("span", "what", evidence.isEmpty() ? "" : evidence + ": ");
    out.text(reason).end().end();
  }

  private static String or(String text, String other) {
    return text.isBlank() ? other : text;
  }

  private static String sign(String mark) {
    return switch (mark) {
      case "for" -> "+ ";
      case "against" -> "− ";
      default -> "";
    };
  }
}
