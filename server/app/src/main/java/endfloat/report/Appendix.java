package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.LibraryVersion;
import endfloat.record.Cell;
import endfloat.record.Instrument;
import endfloat.record.InvestigationRecord;
import endfloat.record.RegisteredPart;
import endfloat.review.Agree;
import java.util.Map;
import java.util.Set;

/** What a second person needs to check it all: registers, lines as written, rules, hashes. */
final class Appendix {
  /** As many lines of a working go to one sheet, head and all. */
  private static final int MOST_LINES_WHOLE = 30;

  private final Markup out;
  private final SheetOnPaper sheet;
  private final InvestigationRecord record;

  Appendix(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
    this.record = sheet.record();
  }

  void write() {
    if (record.cells().stream().noneMatch(cell -> cell.kind().equals("approval"))) {
      approval();
    }
    support();
    out.start("section", "class", "part appendix", "id", "appendix");
    out.element("h2", "", "Appendix");
    instruments();
    parts();
    new PhotoPart(out, sheet).register();
    sources();
    lines();
    charts();
    integrity();
    out.end();
  }

  private void approval() {
    var roles = JsonNodeFactory.instance.arrayNode();
    roles.addObject().put("role", "Prepared").put("name", record.titleBlock().prepared());
    roles.addObject().put("role", "Checked").put("name", record.titleBlock().checked());
    roles.addObject().put("role", "Approved").put("name", record.titleBlock().approved());
    out.start("section", "class", "part", "id", "approval");
    out.element("h2", "", "Prepared, checked, approved");
    new BoardParts(out, sheet).approval(roles);
    out.end();
  }

  /** What every report says where it is signed. */
  private void support() {
    out.element(
        "p",
        "support",
        "Figures support, and do not replace, the maker's manual, the local code and the licensed"
            + " engineer who signs.");
  }

  /** The numbers that the charts draw. */
  private void charts() {
    Map<String, JsonNode> views = sheet.clauses();
    for (Cell cell : record.cells()) {
      JsonNode chart = views.get(cell.id()).path("chart");
      if (chart.path("rows").isEmpty()) {
        continue;
      }
      out.start("div", "id", "numbers-" + cell.id());
      String caption = "Numbers of the chart " + cell.number() + ", " + cell.title();
      out.table("register charted", "", caption);
      out.start("thead").start("tr");
      chart.get("heads").forEach(head -> out.start("th", "scope", "col").text(head.asText()).end());
      out.end().end().start("tbody");
      for (JsonNode row : chart.get("rows")) {
        out.start("tr");
        row.forEach(text -> out.element("td", "", text.asText()));
        out.end();
      }
      out.end().end().end();
    }
  }

  private void table(String caption, String... heads) {
    out.table("register", "", caption);
    out.start("thead").start("tr");
    for (String head : heads) {
      out.start("th", "scope", "col").text(head).end();
    }
    out.end().end().start("tbody");
  }

  private void row(String head, String... cells) {
    out.start("tr").start("th", "scope", "row").text(head).end();
    for (String cell : cells) {
      out.element("td", "", or(cell));
    }
    out.end();
  }

  private void hash(String head, String hash) {
    out.start("tr").start("th", "scope", "row").text(head).end();
    out.element("td", "hash", or(hash)).end();
  }

  private void instruments() {
    if (record.instruments().isEmpty()) {
      return;
    }
    Set<String> overdue = sheet.overdue();
    table(
        "Instruments; offset, gain and uncertainty are expanded",
        "Mark",
        "Instrument",
        "Offset",
        "Gain",
        "U",
        "k",
        "Step",
        "Scatter",
        "Calibrated, due",
        "Certificate");
    for (Instrument one : record.instruments()) {
      out.start("tr").start("th", "scope", "row").text(one.id()).end();
      out.element("td", "", one.name().isBlank() ? one.kind() : one.name());
      figures(
          one.offset(),
          one.gain(),
          one.uncertainty(),
          // a whole number is typed without a point
          one.source().path("coverage").asText("2"),
          one.resolution(),
          one.scatter());
      out.start("td", "class", "fig").text(or(one.calibrated()));
      String due = one.due() + (overdue.contains(one.id()) ? " overdue" : "");
      out.some("span", "under", one.due().isBlank() ? "" : due).end();
      out.element("td", "", or(one.certificate())).end();
    }
    out.end().end();
  }

  /** Values with units, which are not broken. */
  private void figures(String... texts) {
    for (String text : texts) {
      out.element("td", "fig", or(text));
    }
  }

  private static String or(String text) {
    return text.isBlank() ? "–" : text;
  }

  private void parts() {
    if (record.parts().isEmpty()) {
      return;
    }
    table("Parts", "Number", "Part", "Serial", "Position");
    for (RegisteredPart part : record.parts()) {
      row(part.number(), part.name(), part.serial(), part.position());
    }
    out.end().end();
  }

  private void sources() {
    Set<String> used = CalculationsUsed.names(record);
    if (used.isEmpty()) {
      return;
    }
    table("Calculations used", "Name", "Source");
    for (String name : used) {
      row(name, Catalogue.library().find(name).orElseThrow().source());
    }
    out.end().end();
  }

  private void lines() {
    out.element("h3", "", "Lines as written");
    for (Cell cell : record.cells()) {
      if (cell.kind().equals("working") && !cell.text().isBlank()) {
        boolean fits = cell.text().lines().count() <= MOST_LINES_WHOLE;
        out.start("div", "class", fits ? "written whole" : "written");
        out.element("p", "cap", cell.number() + " " + cell.title());
        out.element("pre", "", cell.text()).end();
      }
    }
  }

  private void integrity() {
    table("Integrity", "Item", "As it is");
    hash("Source hash (SHA-256, RFC 8785)", record.sourceHash());
    String results = record.tree().path("hashes").path("results").asText();
    hash("Results hash, as saved", results);
    row("Calculation library", LibraryVersion.text());
    row("Figures saved with library", record.savedLibrary());
    row("Saved figures against those of this report", agreement());
    row("Decision rule", rule(record.settings().rule()));
    String k = record.tree().path("settings").path("coverage").asText("2");
    row(
        "Uncertainty",
        "printed with ± is expanded, U = k u, k = "
            + k
            + "; where it rests on a few readings, by Student's t for their degrees of freedom, with the"
            + " same probability (JCGM 100, G.3)");
    JsonNode from = record.tree().path("provenance");
    if (!from.isMissingNode()) {
      row(
          "Run again from",
          from.path("record_number").asText()
              + " rev "
              + from.path("revision").asText()
              + ", "
              + from.path("record").asText());
      hash("Its source hash", from.path("source_hash").asText());
      row("Readings from", from.path("readings_file").asText());
      hash("Their hash", from.path("readings_hash").asText());
    }
    out.end().end();
  }

  private String agreement() {
    Agree.Report agree = Agree.of(record, false);
    if (agree.compared() == 0) {
      return "none were saved";
    }
    return agree.agrees()
        ? "all " + agree.compared() + " agree"
        : agree.differences().size() + " differences in " + agree.compared() + " figures";
  }

  private static String rule(String rule) {
    return switch (rule) {
      case "simple" -> "simple acceptance: the value alone decides (ILAC-G8:09/2019, 4.2.1)";
      case "guarded" ->
          "guarded: the value must clear the limit by U = k u, on either side (ILAC-G8:09/2019,"
              + " 4.2.2); between, it is not proven";
      case "probability" ->
          "95 % probability of conformity (ISO 14253-1:2017); between, it is not proven";
      default ->
          "each limit's own: simple where an authority sets it, guarded by U = k u elsewhere; it is"
              + " printed with every verdict";
    };
  }
}
