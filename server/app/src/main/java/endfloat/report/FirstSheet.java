package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.TitleBlock;
import java.util.ArrayList;
import java.util.List;

/** The title block, with how the limits came out. */
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
    counts();
    out.end().end();
    if (!sheet.overdue().isEmpty()) {
      out.element(
          "p",
          "hint",
          "Calibration was overdue on the day of issue: " + String.join(", ", sheet.overdue()));
    }
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

  /** How the limits came out, in figures and in the trade's marks. */
  private void counts() {
    JsonNode summary = sheet.view().path("summary");
    out.start("tr");
    for (String verdict : new String[] {"outside", "not proven", "within"}) {
      out.start("td").element("span", "cap", "Limits " + verdict);
      out.start("span", "class", "f");
      VerdictMark.mark(out, verdict);
      out.text(summary.path(verdict.replace(' ', '_')).asText()).end().end();
    }
    List<String> open = new ArrayList<>();
    add(open, summary, "limits_waiting", "limit", " waiting");
    add(open, summary, "limits_in_error", "limit", " in error");
    add(open, summary, "errors", "line", " in error");
    add(open, summary, "waiting", "value", " waiting");
    String unsettled = open.isEmpty() ? "none" : String.join(", ", open);
    field("Not judged, in error, waiting", unsettled, open.isEmpty() ? "f" : "f wrong");
    out.end();
  }

  private static void add(
      List<String> open, JsonNode summary, String field, String what, String how) {
    int count = summary.path(field).asInt();
    if (count > 0) {
      open.add(count + " " + what + (count == 1 ? "" : "s") + how);
    }
  }
}
