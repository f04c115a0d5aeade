package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Cell;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The clauses of a record in its own order and under its own numbers. */
final class ClauseParts {
  /** A live figure of a note that is short enough to be a value with its unit. */
  private static final Pattern VALUE = Pattern.compile("<a class=\"live\"([^>]*>[^<]{1,20}</a>)");

  private final Markup out;
  private final SheetOnPaper sheet;
  private final Map<String, JsonNode> views;
  private final Map<String, List<String>> cautions;
  private final Answered answered;

  ClauseParts(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
    this.views = sheet.clauses();
    this.cautions = CalculationsUsed.cautions(sheet.record());
    this.answered = new Answered(out, sheet);
  }

  void write() {
    sheet.record().cells().forEach(this::clause);
  }

  private void clause(Cell cell) {
    JsonNode view = views.get(cell.id());
    boolean top = cell.number().indexOf('.') < 0;
    String look = (top ? "part" : "clause") + (isShort(cell) ? " whole" : "");
    out.start("section", "class", look, "id", "clause-" + cell.id());
    out.start(top ? "h2" : "h3").element("span", "no", cell.number());
    out.text(cell.title().isBlank() ? cell.kind() : cell.title()).end();
    if (!cell.isSection()) {
      // beside the first words of the report: what they rest on
      answered.once(cell.kind().equals("note"));
    }
    BoardParts boards = new BoardParts(out, sheet);
    switch (cell.kind()) {
      case "section" -> {}
      case "note" -> out.start("div", "class", "prose").made(unbroken(view)).end();
      case "caution" -> caution(view.path("html").asText());
      case "working" -> new WorkingPart(out, sheet).write(view);
      case "java" -> new JavaPart(out, sheet).write(view);
      case "readings" -> new ReadingsPart(out, sheet).write(cell);
      case "fits" -> boards.fits(view);
      case "findings" -> boards.findings(view);
      case "causes" -> new CausesPart(out, sheet, view).write();
      case "table" -> new TablePart(out, view, sheet.overdue()).write();
      case "photo" -> new PhotoPart(out, sheet).write(cell);
      case "approval" -> boards.approval(view.path("source").path("roles"));
      default -> other(cell, view);
    }
    minded(cautions.getOrDefault(cell.id(), List.of()));
    problems(view);
    remarks(view.path("source").path("remarks"));
    out.end();
  }

  /**
   * What goes to one sheet whole, rather than with its head alone at the foot of the one before.
   */
  private static boolean isShort(Cell cell) {
    return switch (cell.kind()) {
      case "chart", "photo", "caution", "approval" -> true;
      case "working" -> cell.text().lines().count() <= 3;
      case "readings" -> cell.readings().size() <= 3;
      default -> false;
    };
  }

  /** A value and its unit are not parted; words that a figure comes to may be. */
  private static String unbroken(JsonNode note) {
    return VALUE
        .matcher(note.path("html").asText())
        .replaceAll(live -> Matcher.quoteReplacement("<a class=\"live value\"" + live.group(1)));
  }

  /** What the calculations of a clause warn of. */
  private void minded(List<String> cautions) {
    if (cautions.isEmpty()) {
      return;
    }
    out.start("div", "class", "minded").element("p", "cap", "To be minded with these workings");
    out.start("ul");
    cautions.forEach(one -> out.element("li", "", one));
    out.end().end();
  }

  private void caution(String html) {
    out.start("div", "class", "caution", "role", "note").element("p", "cap", "Caution");
    out.made(html).end();
  }

  /**
   * A kind that has no part of its own here: its picture where the sheet draws one, else a word.
   */
  private void other(Cell cell, JsonNode view) {
    JsonNode chart = view.path("chart");
    if (chart.path("svg").asText().isEmpty()) {
      out.element(
          "p", "quiet", "This clause (" + cell.kind() + ") is in the record, not drawn here.");
      return;
    }
    out.start("div", "class", "figure").made(chart.get("svg").asText());
    out.start("p", "class", "under");
    chart.path("notes").forEach(note -> out.text(note.asText() + " "));
    if (!chart.path("rows").isEmpty()) {
      out.start("a", "href", "#numbers-" + cell.id()).text("Its numbers: appendix").end().text(".");
    }
    out.end().end();
  }

  private void problems(JsonNode view) {
    Set<String> said = new HashSet<>();
    for (JsonNode one : view.path("problems")) {
      String words = one.path("message").asText() + " " + one.path("wayOut").asText();
      boolean error = one.path("severity").asText().equals("ERROR");
      if (said.add(words)) {
        out.element("p", error ? "wrong" : "hint", (error ? "In error: " : "") + words.strip());
      }
    }
  }

  private void remarks(JsonNode remarks) {
    for (JsonNode one : remarks) {
      String by =
          Stream.of("by", "role", "time")
              .map(field -> one.path(field).asText())
              .filter(text -> !text.isBlank())
              .collect(Collectors.joining(", "));
      String answered = one.path("answered").asText();
      boolean open = answered.isBlank() && !one.path("settled").asBoolean();
      out.start("div", "class", open ? "remark open" : "remark");
      out.element("p", "cap", "Remark" + (open ? ", open" : "") + (by.isEmpty() ? "" : ": " + by));
      out.element("p", "", one.path("text").asText());
      out.some("p", "answer", answered.isBlank() ? "" : "Answer: " + answered);
      out.end();
    }
  }
}
