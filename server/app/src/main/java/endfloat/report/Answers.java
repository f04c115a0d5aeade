package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * The two columns of answers: a value with its uncertainty, and the limits it is judged against.
 */
final class Answers {
  private final Markup out;

  Answers(Markup out) {
    this.out = out;
  }

  /** Heads of the columns that {@link #cells} fills. */
  void heads(String limits) {
    out.start("th", "scope", "col", "class", "v").text("Result").end();
    out.start("th", "scope", "col", "class", "un").text("Unit").end();
    out.start("th", "scope", "col", "class", "lim").text(limits).end();
  }

  /** Value, unit and limits of a figure, or of its worst station. */
  void cells(JsonNode figure) {
    value(figure);
    out.start("td", "class", "lim");
    limits(figure, true);
    out.end();
  }

  /** Value and unit of a figure, or of its worst station. */
  void value(JsonNode figure) {
    String state = figure.path("state").asText();
    JsonNode worst = SheetOnPaper.worst(figure);
    JsonNode shown = worst.isMissingNode() ? figure : worst;
    out.start("td", "class", "v");
    if (state.equals("error") || state.equals("waiting")) {
      out.element("span", "quiet", state.equals("error") ? "no result" : "waiting");
    } else {
      out.some("span", "of", worst.isMissingNode() ? "" : station(worst));
      out.start("span", "class", "val", "data-figure", name(figure, worst));
      out.text(shown.path("value").asText()).end();
      String u = shown.path("u").asText();
      out.some("span", "u", u.isEmpty() ? "" : "± " + u);
    }
    out.end();
    String unit = shown.path("unit").asText(figure.path("unit").asText());
    out.element("td", "un", unit);
  }

  private static String name(JsonNode figure, JsonNode worst) {
    return worst.isMissingNode() && figure.has("name") ? figure.get("name").asText() : null;
  }

  /** Where a station is, or which of several results: {@code cylinder 3, top}. */
  static String station(JsonNode element) {
    if (element.has("field")) {
      return element.get("field").asText().replace('_', ' ');
    }
    List<String> labels = new ArrayList<>();
    element
        .path("labels")
        .properties()
        .forEach(
            one -> {
              String label = one.getValue().asText();
              labels.add(label.matches("[\\d.]+") ? one.getKey() + " " + label : label);
            });
    return String.join(", ", labels);
  }

  /** The limits of a figure or of its worst station, each with strip, authority and rule. */
  void limits(JsonNode figure, boolean drawn) {
    JsonNode worst = SheetOnPaper.worst(figure);
    JsonNode limits = worst.has("limits") ? worst.get("limits") : figure.path("limits");
    for (JsonNode limit : limits) {
      limit(limit, drawn);
    }
  }

  void limit(JsonNode limit, boolean drawn) {
    out.start("div", "class", "judged");
    String verdict = limit.path("verdict").asText();
    VerdictMark.write(out, verdict);
    if (drawn && limit.has("strip")) {
      out.made(limit.get("strip").asText());
    }
    out.element("span", "under", ends(limit));
    List<String> terms = new ArrayList<>();
    add(terms, limit.path("field").asText().replace('_', ' '));
    add(terms, limit.path("condition").asText());
    add(terms, limit.path("state").asText());
    String authority = limit.path("authority").asText();
    add(terms, authority.isBlank() ? "engineer's own" : authority);
    out.element("span", "under", String.join("; ", terms));
    List<String> judged = new ArrayList<>();
    add(judged, limit.path("rule").asText().isEmpty() ? "" : "rule: " + limit.get("rule").asText());
    String p = limit.path("probability").asText();
    add(judged, p.isEmpty() ? "" : "conformity " + p);
    out.some("span", "under", String.join("; ", judged));
    out.end();
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
