package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.TitleBlock;
import endfloat.working.typeset.Typeset;
import java.util.ArrayList;
import java.util.List;

/** The title block, and what came out: which limits are not kept, and which are not proven. */
final class FirstSheet {
  private final Markup out;
  private final SheetOnPaper sheet;

  FirstSheet(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  void titleBlock() {
    TitleBlock block = sheet.record().titleBlock();
    out.start("table", "class", "title");
    out.element("caption", "unseen", "Title block");
    out.start("tbody").start("tr").start("td", "colspan", "2", "rowspan", "1");
    out.element("span", "cap", "Title").element("h1", "", block.title());
    out.some("span", "sub", block.subtitle()).end();
    field("Record number", block.recordNumber(), "big");
    field("Rev", block.revision(), "big");
    out.end();
    row(
        "Owner", block.owner(),
        "Engine type", block.engineType(),
        "Engine serial", block.engineSerial(),
        "Since overhaul", block.hoursSinceOverhaul());
    row(
        "Part", block.part(),
        "Document", block.document(),
        "Date of issue", block.date(),
        "State", block.state());
    row(
        "Prepared", block.prepared(),
        "Checked", block.checked(),
        "Approved", block.approved(),
        "Source hash", sheet.record().sourceHash().substring(0, 12));
    out.end().end();
  }

  private void row(String... captionsAndTexts) {
    out.start("tr");
    for (int i = 0; i < captionsAndTexts.length; i += 2) {
      field(captionsAndTexts[i], captionsAndTexts[i + 1], "f");
    }
    out.end();
  }

  private void field(String caption, String text, String look) {
    out.start("td").element("span", "cap", caption);
    out.element("span", look, text.isBlank() ? "–" : text).end();
  }

  void verdicts() {
    JsonNode summary = sheet.view().path("summary");
    out.start("section", "class", "part", "id", "verdicts");
    out.element("h2", "", "Verdicts");
    int within = summary.path("within").asInt();
    int notProven = summary.path("not_proven").asInt();
    int outside = summary.path("outside").asInt();
    out.start("p", "class", "counts").text((within + notProven + outside) + " limits judged: ");
    VerdictMark.write(out, "outside");
    out.text(" " + outside + ", ");
    VerdictMark.write(out, "not proven");
    out.text(" " + notProven + ", ");
    VerdictMark.write(out, "within");
    out.text(" " + within + ".").end();
    unsettled(summary);
    List<Judged> judged = new ArrayList<>();
    for (JsonNode figure : sheet.view().path("figures")) {
      gather(figure, judged);
    }
    table("Outside", "outside", judged);
    table("Not proven", "not proven", judged);
    out.end();
  }

  private void unsettled(JsonNode summary) {
    int errors = summary.path("errors").asInt();
    int waiting = summary.path("waiting").asInt();
    int limitsWaiting = summary.path("limits_waiting").asInt();
    int limitsInError = summary.path("limits_in_error").asInt();
    if (limitsWaiting + limitsInError > 0) {
      out.element(
          "p",
          "wrong",
          "Not judged: " + limitsWaiting + " waiting, " + limitsInError + " in error.");
    }
    if (errors + waiting > 0) {
      out.element(
          "p",
          "wrong",
          errors + " lines in error, " + waiting + " values waiting for readings or lines.");
    }
    if (!sheet.overdue().isEmpty()) {
      out.element(
          "p",
          "hint",
          "Calibration was overdue on the day of issue: " + String.join(", ", sheet.overdue()));
    }
  }

  /** A limit that is not kept, or not proven to be. */
  private record Judged(JsonNode figure, JsonNode shown, JsonNode limit) {}

  private static void gather(JsonNode figure, List<Judged> into) {
    for (JsonNode limit : figure.path("limits")) {
      into.add(new Judged(figure, figure, limit));
    }
    for (JsonNode element : figure.path("elements")) {
      for (JsonNode limit : element.path("limits")) {
        into.add(new Judged(figure, element, limit));
      }
    }
  }

  private void table(String caption, String verdict, List<Judged> all) {
    List<Judged> some =
        all.stream().filter(j -> j.limit().path("verdict").asText().equals(verdict)).toList();
    if (some.isEmpty()) {
      return;
    }
    out.start("table", "class", "verdicts");
    out.element("caption", "", caption);
    out.start("thead").start("tr").start("th", "scope", "col", "class", "no").text("Clause").end();
    out.start("th", "scope", "col").text("What").end();
    new Answers(out).heads("Against limits");
    out.end().end().start("tbody");
    for (Judged one : some) {
      String clause = one.figure().path("cell").asText();
      out.start("tr").start("td", "class", "no");
      out.start("a", "href", "#clause-" + clause).text(sheet.number(clause)).end().end();
      out.start("th", "scope", "row");
      what(one);
      out.end();
      out.start("td", "class", "v").element("span", "val", one.shown().path("value").asText());
      String u = one.shown().path("u").asText();
      out.some("span", "u", u.isEmpty() ? "" : "± " + u).end();
      out.element("td", "un", one.shown().path("unit").asText());
      out.start("td", "class", "lim");
      new Answers(out).limit(one.limit(), true);
      out.end().end();
    }
    out.end().end();
  }

  private void what(Judged one) {
    String title = one.figure().path("title").asText();
    String name = one.figure().path("name").asText();
    if (title.isEmpty()) {
      out.start("span", "class", "nm").made(Typeset.nameHtml(name)).end();
    } else {
      out.text(title);
    }
    boolean part = one.shown() != one.figure();
    out.some("span", "under", part ? Answers.station(one.shown()) : "");
    String clause = one.figure().path("cell").asText();
    String of = sheet.record().cell(clause).map(cell -> cell.title()).orElse("");
    out.some("span", "under", of);
  }

  /** What the calculations used warn of, each once. */
  void cautions() {
    List<String[]> cautions = CalculationsUsed.cautions(sheet.record());
    out.start("section", "class", "part", "id", "cautions");
    out.element("h2", "", "Cautions");
    out.start("div", "class", "caution").start("ul");
    for (String[] caution : cautions) {
      out.start("li").text(caution[1]);
      out.element("span", "under", caution[0].replace('_', ' ')).end();
    }
    out.element(
        "li",
        "",
        "Figures support, and do not replace, the maker's manual, the local code and the licensed"
            + " engineer who signs.");
    out.end().end().end();
  }
}
