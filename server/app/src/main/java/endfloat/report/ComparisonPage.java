package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Two records side by side on paper, in the manner of the report: what is judged otherwise first,
 * then readings, figures, workings and texts that differ, and what was counted as one error.
 */
public final class ComparisonPage {
  private final Markup out = new Markup();
  private final JsonNode comparison;
  private int sections;

  private ComparisonPage(JsonNode comparison) {
    this.comparison = comparison;
  }

  /**
   * The comparison as one file that opens by itself.
   *
   * @param comparison as its page is sent it
   */
  public static String html(JsonNode comparison, PaperSize paper) {
    ComparisonPage page = new ComparisonPage(comparison);
    return page.page(PageLook.css(paper, page.strip()), "");
  }

  /**
   * The same with ways onward above it, for a reader whom Endfloat serves.
   *
   * @param query of the address, which says what is compared
   */
  public static String served(JsonNode comparison, PaperSize paper, String query) {
    ComparisonPage page = new ComparisonPage(comparison);
    return page.page(PageLook.css(paper, page.strip()), OnwardFromPaper.ofComparison(query, paper));
  }

  /** The same markup for the layout that makes a PDF of it. */
  public static String forSheets(JsonNode comparison, PaperSize paper) {
    ComparisonPage page = new ComparisonPage(comparison);
    return page.page(PageLook.forSheets(paper, page.strip()), "");
  }

  private String page(String css, String before) {
    Strip strip = strip();
    return Paper.page("Comparison " + strip.number(), "", strip.engine(), css, before + body());
  }

  private String body() {
    out.start("main", "class", "report compared");
    titleBlock();
    section("Judged otherwise");
    if (!rowsJudgedOtherwise()
        || comparison.path("figures").findValuesAsText("judged_otherwise").contains("true")) {
      rows("Limits whose verdict is another one", row -> row.path("judged_otherwise").asBoolean());
    }
    section("Readings that differ");
    rows("Readings", row -> row.path("reading").asBoolean() && differs(row));
    section("Figures that differ");
    rows("Figures", row -> !row.path("reading").asBoolean() && differs(row));
    tables();
    wordings("Workings that read otherwise", comparison.path("formulas"), true);
    wordings("Texts that read otherwise", texts(), false);
    how();
    return out.end().finished();
  }

  private JsonNode left() {
    return comparison.path("left");
  }

  private JsonNode right() {
    return comparison.path("right");
  }

  private static boolean differs(JsonNode row) {
    return !row.path("standing").asText().equals("none");
  }

  private Strip strip() {
    String title = right().path("title").asText();
    return new Strip(
        left().path("title").asText().equals(title)
            ? title
            : left().path("title").asText() + " / " + title,
        "A: " + engine(left()) + "; B: " + engine(right()),
        number(left()) + " and " + number(right()),
        "Comparison, " + right().path("date").asText(),
        "A " + hash(left()).substring(0, 12) + "; B " + hash(right()).substring(0, 12),
        "Difference: B less A");
  }

  private static String hash(JsonNode side) {
    return side.path("source_hash").asText();
  }

  private String number(JsonNode side) {
    String number = side.path("record_number").asText();
    String rev = side.path("revision").asText();
    boolean staged = !left().path("stage").equals(right().path("stage"));
    String stage = staged ? side.path("stage").asText() : "";
    return (number.isBlank() ? "not numbered" : number)
        + (rev.isBlank() ? "" : " rev " + rev)
        + (stage.isBlank() ? "" : ", " + stage);
  }

  private static String engine(JsonNode side) {
    String engine =
        Stream.of("engine_serial", "date")
            .map(field -> side.path(field).asText())
            .filter(text -> !text.isBlank())
            .collect(Collectors.joining(", "));
    return engine.isEmpty() ? "engine not named" : engine;
  }

  private void titleBlock() {
    out.start("table", "class", "title").element("caption", "unseen", "Title block");
    out.start("tbody").start("tr").start("td", "colspan", "4");
    out.element("span", "cap", "Comparison").element("h1", "", strip().title());
    out.end().end();
    side("A", left());
    side("B", right());
    out.start("tr");
    field("Differences that are clear", comparison.path("clear").asText());
    field("Verdicts that are others", comparison.path("judged_otherwise").asText());
    field("Sides", comparison.path("same_engine").asBoolean() ? "states of one record" : "two");
    field("Difference", "B less A, ± U");
    out.end().end().end();
  }

  private void side(String mark, JsonNode side) {
    out.start("tr");
    field(mark + ", record", number(side));
    field("Engine", side.path("engine_serial").asText());
    field("Date of issue", side.path("date").asText());
    field("Source hash", hash(side).substring(0, 12));
    out.end();
  }

  private void field(String caption, String text) {
    out.start("td").element("span", "cap", caption);
    out.element("span", "f", text.isBlank() ? "–" : text).end();
  }

  private void section(String title) {
    sections++;
    out.start("h2", "id", "part-" + sections)
        .element("span", "no", String.valueOf(sections))
        .text(title)
        .end();
  }

  private interface Chosen {
    boolean holds(JsonNode row);
  }

  private void rows(String caption, Chosen chosen) {
    List<JsonNode> rows =
        StreamSupport.stream(comparison.path("figures").spliterator(), false)
            .filter(chosen::holds)
            .toList();
    if (rows.isEmpty()) {
      out.element("p", "quiet", "None.");
      return;
    }
    out.table("sides", "unseen", caption);
    out.start("thead").start("tr");
    head("clause", "Clause");
    head("", "What");
    head("side", "A");
    head("side", "B");
    head("side", "B less A");
    head("stands", "Difference");
    head("lim", "Against limits");
    out.end().end();
    rows.forEach(this::row);
    out.end();
  }

  private void head(String look, String text) {
    out.start("th", "scope", "col", "class", look.isEmpty() ? null : look).text(text).end();
  }

  private void row(JsonNode row) {
    out.start("tbody", "class", "one").start("tr");
    out.element("td", "clause", row.path("clause").asText());
    out.start("th", "scope", "row").words(row.path("label").asText()).end();
    point(row.path("left"));
    point(row.path("right"));
    point(row.path("difference"));
    String standing = row.path("standing").asText();
    out.element("td", standing.equals("clear") ? "stands clear" : "stands", standing);
    out.start("td", "class", "lim");
    if (row.path("limits").isEmpty()) {
      verdicts(row.path("left").path("verdict").asText(), row.path("right").path("verdict"));
    }
    for (JsonNode limit : row.path("limits")) {
      verdicts(limit.path("was").asText(), limit.path("verdict"));
      if (limit.has("strip")) {
        out.made(limit.get("strip").asText());
      }
      out.element("span", "under", Answers.ends(limit));
    }
    out.end().end().end();
  }

  private void verdicts(String before, JsonNode after) {
    String now = after.asText();
    if (!before.isEmpty() && !before.equals(now)) {
      VerdictMark.write(out, before);
      out.text(now.isEmpty() ? ", then none" : " then ");
    }
    VerdictMark.write(out, now);
  }

  private void point(JsonNode point) {
    out.start("td", "class", "side");
    if (point.has("value")) {
      String unit = point.path("unit").asText();
      out.element("span", "val", point.get("value").asText());
      out.text(unit.isEmpty() ? "" : " " + unit);
      String u = point.path("u").asText();
      out.some("span", "u", u.isEmpty() ? "" : "± " + u);
    } else {
      out.text(point.path("text").asText("–"));
    }
    out.end();
  }

  /** Rows of tables stand with their table; here it is said that there are some. */
  private boolean rowsJudgedOtherwise() {
    boolean some = false;
    for (JsonNode table : comparison.path("tables")) {
      int count = table.path("values").path("judged_otherwise").asInt();
      if (count > 0) {
        some = true;
        out.element(
            "p",
            "quiet",
            (count == 1 ? "1 row" : count + " rows")
                + " of table "
                + table.path("clause").asText()
                + ", "
                + table.path("name").asText()
                + ": see below.");
      }
    }
    return some;
  }

  private void tables() {
    for (JsonNode table : comparison.path("tables")) {
      if (!table.path("equal").asBoolean()) {
        section("Table " + table.path("clause").asText() + ", " + table.path("name").asText());
        List<String> said = new ArrayList<>();
        said.add(table.path("counts").asText());
        table.path("said").forEach(one -> said.add(one.asText()));
        int more = table.path("more").asInt();
        if (more > 0) {
          said.add("The first " + table.path("first").size() + " rows are listed");
        }
        out.element("p", "quiet", String.join(". ", said) + ".");
        rowsOf(table);
      }
    }
  }

  private void rowsOf(JsonNode table) {
    if (table.path("first").isEmpty()) {
      return;
    }
    out.table("sides", "unseen", "Rows that differ");
    out.start("thead").start("tr");
    head("clause", "Row");
    head("", "Column");
    head("side", "A");
    head("side", "B");
    head("side", "B less A");
    head("stands", "Difference");
    head("lim", "Verdict");
    out.end().end();
    for (JsonNode row : table.path("first")) {
      out.start("tbody", "class", "one");
      String change = row.path("change").asText();
      if (!change.equals("changed")) {
        out.start("tr").element("td", "clause", row.path("row").asText());
        out.start("th", "scope", "row").text(change).end();
        out.start("td", "colspan", "5").text(row.path("text").asText()).end();
        out.end().end();
        continue;
      }
      boolean first = true;
      for (JsonNode cell : row.path("cells")) {
        out.start("tr").element("td", "clause", first ? row.path("row").asText() : "");
        out.start("th", "scope", "row").text(cell.path("head").asText()).end();
        for (String side : new String[] {"left", "right"}) {
          String text = cell.path(side).asText();
          out.element("td", "side", text.isEmpty() ? "–" : text);
        }
        point(cell.path("difference"));
        String standing = cell.path("standing").asText();
        out.element("td", standing.equals("clear") ? "stands clear" : "stands", standing);
        out.start("td", "class", "lim");
        verdicts(cell.path("was").asText(), cell.path("verdict"));
        out.end().end();
        first = false;
      }
      out.end();
    }
    out.end();
  }

  /** Texts but what was taken, which stands among the readings already. */
  private JsonNode texts() {
    ArrayNode texts = JsonNodeFactory.instance.arrayNode();
    for (JsonNode one : comparison.path("texts")) {
      if (!one.path("what").asText().matches("readings .*, taken")) {
        texts.add(one);
      }
    }
    return texts;
  }

  private void wordings(String title, JsonNode wordings, boolean source) {
    section(title);
    if (wordings.isEmpty()) {
      out.element("p", "quiet", "None.");
      return;
    }
    out.table("words", "unseen", title);
    out.start("thead").start("tr");
    head("clause", "Clause");
    head("what", "What");
    head("", "A");
    head("", "B");
    out.end().end();
    for (JsonNode one : wordings) {
      // each by itself: a long one breaks between two sheets, and those before it stay where they
      // are
      out.start("tbody").start("tr");
      out.element("td", "clause", one.path("clause").asText());
      out.start("th", "scope", "row", "class", "what").text(one.path("what").asText()).end();
      for (String side : new String[] {"left", "right"}) {
        String text = one.path(side).asText();
        out.element("td", source ? "source" : "", text.isEmpty() ? "–" : text);
      }
      out.end().end();
    }
    out.end();
  }

  /** What the uncertainty of a difference counts once, and what twice. */
  private void how() {
    section("How differences are judged");
    List<String> said = new ArrayList<>();
    said.add(
        "A difference is clear where it is larger than its own expanded uncertainty; otherwise it"
            + " may be one of measuring.");
    String shared = listed(comparison.path("shared_instruments"), ", ");
    if (!shared.isEmpty()) {
      said.add("Zero and scale are off alike on both sides, and cancel: " + shared + ".");
    }
    for (JsonNode one : comparison.path("not_shared")) {
      said.add("Counted on either side: " + one.asText() + ".");
    }
    if (comparison.path("same_engine").asBoolean()) {
      said.add("What was not measured anew is the same on both sides.");
    }
    out.start("ul");
    said.forEach(one -> out.element("li", "", one));
    out.end();
    out.start("p", "class", "hash").text("Source hashes (SHA-256, RFC 8785): A " + hash(left()));
    out.text("; B " + hash(right())).end();
  }

  private static String listed(JsonNode texts, String between) {
    return StreamSupport.stream(texts.spliterator(), false)
        .map(JsonNode::asText)
        .collect(Collectors.joining(between));
  }
}
