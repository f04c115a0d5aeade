package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Clauses that are filled in by fields: schedule of fits, findings, approval. */
final class BoardParts {
  private final Markup out;
  private final SheetOnPaper sheet;

  BoardParts(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  private static String or(String text, String other) {
    return text.isBlank() ? other : text;
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
    out.table("fits", "unseen", "Schedule of fits and clearances");
    out.start("thead").start("tr");
    out.start("th", "scope", "col", "class", "item").text("Item").end();
    out.start("th", "scope", "col").text("Fit").end();
    out.start("th", "scope", "col", "class", "ends").text("New").end();
    out.start("th", "scope", "col", "class", "ends").text("Worn").end();
    new Answers(out).heads("Against limits");
    out.end().end();
    String group = "";
    JsonNode rows = clause.path("source").path("rows");
    for (int i = 0; i < rows.size(); i++) {
      JsonNode row = rows.get(i);
      out.start("tbody", "class", "one");
      if (!row.path("group").asText().equals(group)) {
        group = row.path("group").asText();
        out.start("tr", "class", "group").start("th", "colspan", "7", "scope", "rowgroup");
        out.text(group).end().end();
      }
      fit(row, clause.path("board").path("rows").path(i), String.valueOf(i + 1));
      out.end();
    }
    out.end();
  }

  private void fit(JsonNode row, JsonNode board, String count) {
    String item = row.path("item").asText();
    String pair =
        joined(
            " in ", sheet.part(row.path("part").asText()), sheet.part(row.path("mate").asText()));
    String authority = row.path("authority").asText();
    out.start("tr", "id", "figure-" + board.path("figure").asText(count));
    out.start("th", "scope", "row", "rowspan", "2");
    out.element("span", "balloon", item.isEmpty() ? count : item).end();
    out.start("td").element("span", "what", row.path("what").asText(pair));
    out.some("span", "under", pair).end();
    measured(row, board);
    out.end();
    why(
        row.path("condition").asText(),
        authority.isBlank() ? "engineer's own" : authority,
        Answers.rules(sheet.figure(board.path("figure").asText())));
    for (int at = 0; at < row.path("sizes").size(); at++) {
      JsonNode size = row.get("sizes").get(at);
      if (size.path("measured").asText().isBlank()) {
        continue;
      }
      JsonNode sized = board.path("sizes").path(at);
      String of = size.path("of").asText();
      String part = of.isBlank() ? row.path(at == 0 ? "part" : "mate").asText() : of;
      out.start("tr", "class", "size", "id", "figure-" + sized.path("figure").asText(count + at));
      out.start("td", "rowspan", "2").end();
      out.start("th", "scope", "row").text(sheet.part(part)).end();
      measured(size, sized);
      out.end();
      String used = sized.path("used").asText();
      String rules = Answers.rules(sheet.figure(sized.path("figure").asText()));
      why(used.isEmpty() ? "" : used + " of its wear allowance used", rules);
    }
    if (!board.path("advice").asText().isEmpty()) {
      out.start("tr", "class", "advice").start("td").end();
      out.start("td", "colspan", "6").text(board.get("advice").asText()).end().end();
    }
  }

  /** By what it was judged, in a line of its own as wide as the figures. */
  private void why(String... terms) {
    out.start("tr", "class", "judged-by");
    out.start("td", "colspan", "5").text(joined("; ", terms)).end().end();
  }

  private void measured(JsonNode row, JsonNode board) {
    for (String state : List.of("new", "worn")) {
      JsonNode ends = board.has(state) ? board.get(state) : row.path(state);
      out.element("td", "ends", Answers.ends(ends));
    }
    if (row.path("measured").asText().isBlank()) {
      out.start("td", "class", "v").element("span", "quiet", "not measured").end();
      out.start("td", "class", "un").end();
      out.start("td", "class", "lim", "rowspan", "2").end();
      return;
    }
    JsonNode figure = sheet.figure(board.path("figure").asText());
    new Answers(out).value(figure);
    out.start("td", "class", "lim", "rowspan", "2");
    new Answers(out).judged(figure, board.path("standing").asText());
    out.end();
  }

  void findings(JsonNode clause) {
    out.table("findings", "unseen", "Findings of " + clause.path("number").asText());
    heads("Part and place", "Damage", "How it was looked for", "State found", "Disposition");
    out.end().end().start("tbody");
    for (JsonNode one : clause.path("source").path("findings")) {
      String part = sheet.part(one.path("part").asText());
      out.start("tr").start("th", "scope", "row");
      out.text(part.isBlank() ? one.path("place").asText("not named") : part);
      out.some("span", "under", part.isBlank() ? "" : one.path("place").asText()).end();
      out.start("td").text(or(one.path("damage").asText(), "–"));
      String size = joined(", ", one.path("size").asText(), one.path("orientation").asText());
      out.some("span", "under", size);
      String photo = one.path("photo").asText();
      out.some("span", "under", photo.isBlank() ? "" : "photograph " + photo).end();
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

  void approval(JsonNode roles) {
    out.table("approval", "unseen", "Prepared, checked, approved");
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
