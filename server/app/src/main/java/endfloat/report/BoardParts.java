package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Clauses that are filled in by fields: schedule of fits, findings, causes, approval. */
final class BoardParts {
  private final Markup out;
  private final SheetOnPaper sheet;

  BoardParts(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  private void heads(String... heads) {
    out.start("thead").start("tr");
    for (String head : heads) {
      out.start("th", "scope", "col").text(head).end();
    }
  }

  private static String joined(String between, String... texts) {
    return Stream.of(texts).filter(t -> !t.isBlank()).collect(Collectors.joining(between));
  }

  void fits(JsonNode clause) {
    out.start("table", "class", "fits");
    out.element("caption", "unseen", "Schedule of fits and clearances");
    heads("Item", "Fit", "New", "Worn");
    new Answers(out).heads("Against limits");
    out.end().end();
    out.start("tbody");
    String group = "";
    JsonNode rows = clause.path("source").path("rows");
    for (int i = 0; i < rows.size(); i++) {
      JsonNode row = rows.get(i);
      if (!row.path("group").asText().equals(group)) {
        group = row.path("group").asText();
        out.start("tr", "class", "group").start("th", "colspan", "7", "scope", "colgroup");
        out.text(group).end().end();
      }
      fit(row, clause.path("board").path("rows").path(i), String.valueOf(i + 1));
    }
    out.end().end();
  }

  private void fit(JsonNode row, JsonNode board, String count) {
    String item = row.path("item").asText();
    String pair =
        joined(
            " in ", sheet.part(row.path("part").asText()), sheet.part(row.path("mate").asText()));
    String authority = row.path("authority").asText();
    out.start("tr", "id", "figure-" + board.path("figure").asText(count));
    out.start("th", "scope", "row").element("span", "balloon", item.isEmpty() ? count : item).end();
    out.start("td").element("span", "what", row.path("what").asText(pair));
    out.some("span", "under", pair);
    out.element(
        "span",
        "under",
        joined(
            "; ",
            row.path("condition").asText(),
            authority.isBlank() ? "engineer's own" : authority));
    out.end();
    measured(row, board);
    out.end();
    for (int at = 0; at < row.path("sizes").size(); at++) {
      JsonNode size = row.get("sizes").get(at);
      if (size.path("measured").asText().isBlank()) {
        continue;
      }
      JsonNode sized = board.path("sizes").path(at);
      String of = size.path("of").asText();
      String part = of.isBlank() ? row.path(at == 0 ? "part" : "mate").asText() : of;
      out.start("tr", "class", "size", "id", "figure-" + sized.path("figure").asText(count + at));
      out.start("td").end().start("th", "scope", "row").text(sheet.part(part));
      String used = sized.path("used").asText();
      out.some("span", "under", used.isEmpty() ? "" : used + " of its wear allowance used");
      out.end();
      measured(size, sized);
      out.end();
    }
    if (!board.path("advice").asText().isEmpty()) {
      out.start("tr", "class", "advice").start("td").end();
      out.start("td", "colspan", "6").text(board.get("advice").asText()).end().end();
    }
  }

  private void measured(JsonNode row, JsonNode board) {
    for (String state : List.of("new", "worn")) {
      JsonNode ends = board.has(state) ? board.get(state) : row.path(state);
      out.element("td", "ends", Answers.ends(ends));
    }
    if (row.path("measured").asText().isBlank()) {
      out.start("td", "class", "v").element("span", "quiet", "not measured").end();
      out.start("td", "class", "un").end().start("td", "class", "lim").end();
      return;
    }
    JsonNode figure = sheet.figure(board.path("figure").asText());
    new Answers(out).value(figure);
    out.start("td", "class", "lim");
    new Answers(out).limits(figure, true);
    out.some("span", "under", board.path("standing").asText());
    out.end();
  }

  void findings(JsonNode clause) {
    out.start("table", "class", "findings");
    out.element("caption", "unseen", "Findings of " + clause.path("number").asText());
    heads("Part and place", "Damage", "How it was looked for", "State", "Disposition");
    out.end().end().start("tbody");
    for (JsonNode one : clause.path("source").path("findings")) {
      String part = sheet.part(one.path("part").asText());
      out.start("tr").start("th", "scope", "row");
      out.text(part.isBlank() ? one.path("place").asText("not named") : part);
      out.some("span", "under", part.isBlank() ? "" : one.path("place").asText()).end();
      out.start("td").text(or(one.path("damage").asText(), "–"));
      String size = joined(", ", one.path("size").asText(), one.path("orientation").asText());
      out.some("span", "under", size).end();
      out.start("td").text(or(one.path("method").asText(), "–"));
      String smallest = one.path("smallest").asText();
      out.some("span", "under", smallest.isBlank() ? "" : "smallest shown " + smallest);
      out.some("span", "under", one.path("kit").asText());
      out.some("span", "under", one.path("by").asText()).end();
      String state = or(one.path("state").asText(), "not inspected");
      out.element("td", "state " + state.replace(' ', '-'), state);
      out.element("td", "", or(one.path("disposition").asText(), "–"));
      out.end();
    }
    out.end().end();
  }

  private static String or(String text, String other) {
    return text.isBlank() ? other : text;
  }

  /** Causes across, evidence down. There are no totals: evidence is weighed, not counted. */
  void causes(JsonNode clause) {
    JsonNode source = clause.path("source");
    JsonNode causes = source.path("causes");
    JsonNode board = clause.path("board");
    out.start("table", "class", "causes");
    out.element("caption", "unseen", "Candidate causes across, evidence down");
    out.start("thead").start("tr").start("th", "scope", "col").text("Evidence").end();
    for (JsonNode cause : causes) {
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
      for (JsonNode cause : causes) {
        JsonNode mark = one.path("marks").path(cause.path("id").asText());
        String word = mark.path("mark").asText();
        out.start("td", "class", word.equals("not measured") ? "open" : null);
        out.element("span", "mark", sign(word) + or(word, "not weighed"));
        out.some("span", "under", mark.path("reason").asText()).end();
      }
      out.end();
    }
    row("Mechanism", causes.size(), i -> out.text(causes.get(i).path("mechanism").asText("–")));
    String effect = source.path("effect").asText();
    row(
        effect.isBlank() ? "Adds" : "Adds to: " + effect,
        causes.size(),
        i -> quantity(board.path("causes").path(i).path("figure").asText(), "no size entered"));
    row(
        "Big enough for the damage",
        causes.size(),
        i -> out.text(or(board.path("causes").path(i).path("enough").asText(), "–")));
    row(
        "Standing",
        causes.size(),
        i -> {
          String standing = board.path("causes").path(i).path("standing").asText("open");
          out.text(standing);
          boolean out2 = standing.equals("ruled out");
          out.some("span", "under", out2 ? causes.get(i).path("fact").asText() : "");
        });
    out.end().end();
    out.start("table", "class", "effect").start("tbody");
    effect("Effect observed", board.path("observed").asText());
    effect("Size needed for the damage", board.path("needed").asText());
    effect("Remainder unexplained", board.path("unexplained").asText());
    out.end().end();
  }

  private static String sign(String mark) {
    return switch (mark) {
      case "for" -> "+ ";
      case "against" -> "− ";
      default -> "";
    };
  }

  private interface CellOf {
    void write(int column);
  }

  private void row(String head, int columns, CellOf cell) {
    out.start("tr", "class", "sums").start("th", "scope", "row").text(head).end();
    for (int i = 0; i < columns; i++) {
      out.start("td");
      cell.write(i);
      out.end();
    }
    out.end();
  }

  private void quantity(String name, String none) {
    JsonNode figure = sheet.figure(name);
    if (!figure.has("value")) {
      out.element("span", "quiet", none);
      return;
    }
    String unit = figure.path("unit").asText();
    out.start("span", "class", "val", "data-figure", name).text(figure.get("value").asText()).end();
    out.text(unit.isEmpty() ? "" : " " + unit);
    String u = figure.path("u").asText();
    out.some("span", "under", u.isEmpty() ? "" : "± " + u);
  }

  private void effect(String caption, String name) {
    out.start("tr", "id", name.isEmpty() ? null : "figure-" + name);
    out.start("th", "scope", "row").text(caption).end().start("td");
    quantity(name, "not measured");
    out.end().end();
  }

  void approval(JsonNode roles) {
    out.start("table", "class", "approval");
    out.element("caption", "unseen", "Prepared, checked, approved");
    heads("Role", "Name", "Date", "Signature", "Remark");
    out.end().end().start("tbody");
    for (JsonNode role : roles) {
      out.start("tr").start("th", "scope", "row").text(role.path("role").asText()).end();
      out.element("td", "", role.path("name").asText());
      out.element("td", "", role.path("date").asText());
      out.element("td", "sign", "");
      out.element("td", "", role.path("remark").asText()).end();
    }
    out.end().end();
  }
}
