package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * The columns of answers: a value, its unit, and the strip that shows it against its limits. What a
 * limit says, and by whose authority, stands in a row of its own beneath, the width of the sheet.
 */
final class Answers {
  /** Results of a calculation or stations of a series are written out up to here. */
  private static final int MOST = 16;

  private final Markup out;
  private final Bands bands;

  Answers(Markup out) {
    this.out = out;
    this.bands = new Bands(out);
  }

  /** Heads of the columns that {@link #cells} fills. */
  void heads(String limits) {
    out.start("th", "scope", "col", "class", "v").text("Result").end();
    out.start("th", "scope", "col", "class", "un").text("Unit").end();
    out.start("th", "scope", "col", "class", "lim").text(limits).end();
  }

  /** Value and unit of a figure, or of its worst station, and the place of its strips. */
  void cells(JsonNode figure) {
    value(figure);
    out.start("td", "class", "lim").end();
  }

  /** Value and unit of a figure, or of its worst station. */
  void value(JsonNode figure) {
    String state = figure.path("state").asText();
    JsonNode worst = SheetOnPaper.worst(figure);
    JsonNode shown = worst.isMissingNode() ? figure : worst;
    out.start("td", "class", "v");
    if (state.equals("error") || state.equals("waiting")) {
      out.element("span", "quiet", state.equals("error") ? "no result" : "waiting");
    } else if (!hasFields(figure) && (!isWritten(figure) || !worst.isMissingNode())) {
      out.some("span", "of", worst.isMissingNode() ? "" : Bands.place(worst));
      bands.number(shown, worst.isMissingNode() && figure.has("name") ? name(figure) : null, "");
    }
    out.end();
    unit(hasFields(figure) ? figure.path("none") : shown, figure);
  }

  private void unit(JsonNode shown, JsonNode figure) {
    out.element("td", "un", shown.path("unit").asText(figure.path("unit").asText()));
  }

  private static String name(JsonNode figure) {
    return figure.get("name").asText();
  }

  /** Whether a figure is what a calculation gives in several parts. */
  static boolean hasFields(JsonNode figure) {
    return figure.path("elements").path(0).has("field");
  }

  /**
   * Rows beneath a figure: its results where it has several, the values of its stations, and each
   * limit with strip, authority and rule.
   *
   * @param columns of the table before that of the strip
   * @param written whether the values of stations are to be written out here
   */
  void beneath(JsonNode figure, int columns, boolean written) {
    JsonNode elements = figure.path("elements");
    if (hasFields(figure)) {
      bands.write(figure, columns);
      elements.forEach(field -> limits(field, Bands.place(field) + " ", columns));
      return;
    }
    if (written && isWritten(figure)) {
      bands.write(figure, columns);
    }
    JsonNode worst = SheetOnPaper.worst(figure);
    limits(worst.has("limits") ? worst : figure, "", columns);
  }

  /** Whether the stations of a series are few enough to be written out. */
  private static boolean isWritten(JsonNode figure) {
    int stations = figure.path("elements").size();
    return stations > 0 && stations <= MOST;
  }

  private void limits(JsonNode shown, String of, int columns) {
    for (JsonNode limit : shown.path("limits")) {
      out.start("tr", "class", "limit").start("td").end();
      out.start("td", "class", "why", "colspan", String.valueOf(columns - 1));
      VerdictMark.write(out, limit.path("verdict").asText());
      out.start("span", "class", "ends").text(of + ends(limit)).end();
      out.text(", " + String.join("; ", terms(limit))).end();
      out.start("td", "class", "lim");
      strip(limit);
      out.end().end();
    }
  }

  /** Verdict and strip in one narrow place, the ends standing beside it already. */
  void judged(JsonNode figure, String standing) {
    for (JsonNode limit : limits(figure)) {
      out.start("div", "class", "judged");
      VerdictMark.write(out, limit.path("verdict").asText());
      out.text(standing.isEmpty() ? "" : ", " + standing);
      strip(limit);
      out.end();
    }
  }

  /** By which rule the limits of a figure were judged, and how sure it is. */
  static String rules(JsonNode figure) {
    List<String> rules = new ArrayList<>();
    limits(figure).forEach(limit -> rules.addAll(rule(limit)));
    return String.join("; ", rules);
  }

  private static JsonNode limits(JsonNode figure) {
    JsonNode worst = SheetOnPaper.worst(figure);
    return worst.has("limits") ? worst.get("limits") : figure.path("limits");
  }

  private void strip(JsonNode limit) {
    if (limit.has("strip")) {
      out.made(limit.get("strip").asText());
    }
  }

  private static List<String> terms(JsonNode limit) {
    List<String> terms = new ArrayList<>();
    add(terms, limit.path("condition").asText());
    add(terms, limit.path("state").asText());
    String authority = limit.path("authority").asText();
    add(terms, authority.isBlank() ? "engineer's own" : authority);
    terms.addAll(rule(limit));
    return terms;
  }

  private static List<String> rule(JsonNode limit) {
    List<String> judged = new ArrayList<>();
    add(judged, limit.path("rule").asText().isEmpty() ? "" : "rule: " + limit.get("rule").asText());
    String p = limit.path("probability").asText();
    add(judged, p.isEmpty() ? "" : "conformity " + p);
    return judged;
  }

  private static void add(List<String> terms, String text) {
    if (!text.isBlank()) {
      terms.add(text);
    }
  }

  /** The two ends in words: {@code 0.10 to 0.30 mm}, {@code at most 0.30 mm}. */
  static String ends(JsonNode limit) {
    String low = limit.path("low").asText();
    String high = limit.path("high").asText();
    String unit = limit.path("unit").asText();
    String after = unit.isEmpty() ? "" : unit.equals("°") ? unit : " " + unit;
    if (low.isEmpty()) {
      return high.isEmpty() ? "" : "at most " + high + after;
    }
    return high.isEmpty() ? "at least " + low + after : low + " to " + high + after;
  }
}
