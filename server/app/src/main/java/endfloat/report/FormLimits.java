package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Cell;
import endfloat.record.Reading;
import endfloat.working.typeset.XmlText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a reading itself is held to: lines that limit it by its name, and rows of a schedule of fits
 * that measure nothing else.
 */
final class FormLimits {
  private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");

  private final Markup out;
  private final SheetOnPaper sheet;
  private final Map<String, JsonNode> views;

  FormLimits(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
    this.views = sheet.clauses();
  }

  void of(Reading reading) {
    // rows of a schedule that measure one series station by station have one limit: it is said once
    Set<String> said = new LinkedHashSet<>();
    for (Cell cell : sheet.record().cells()) {
      JsonNode view = views.get(cell.id());
      for (JsonNode line : view.path("lines")) {
        if (line.path("kind").asText().equals("limit")
            && line.path("name").asText().equals(reading.name())) {
          said.add(
              said(Formulas.inXml(line.path("formula").asText()), line.path("given").asText()));
        }
      }
      if (cell.kind().equals("fits")) {
        view.path("source").path("rows").forEach(row -> row(row, reading.name(), said));
      }
    }
    said.forEach(out::made);
  }

  private static String said(String limit, String terms) {
    Markup one = new Markup();
    one.start("div", "class", "asked-limit").text("Limit: ").made(limit);
    return one.some("span", "under", terms).end().finished();
  }

  private void row(JsonNode row, String name, Set<String> into) {
    String terms =
        Stream.of(row.path("condition").asText(), row.path("authority").asText())
            .filter(text -> !text.isBlank())
            .collect(Collectors.joining("; "));
    String unit = row.path("unit").asText();
    fit(row, name, unit, terms, into);
    row.path("sizes").forEach(size -> fit(size, name, unit, terms, into));
  }

  private void fit(JsonNode fit, String name, String unit, String terms, Set<String> into) {
    if (!measuresOnly(fit.path("measured").asText(), name)) {
      return;
    }
    List<String> ends = new ArrayList<>();
    for (String state : List.of("new", "worn")) {
      String limit = Answers.ends(fit.path(state));
      if (!limit.isEmpty()) {
        boolean bare = Character.isDigit(limit.charAt(limit.length() - 1));
        ends.add(state + " " + limit + (bare && !unit.isBlank() ? " " + unit : ""));
      }
    }
    if (!ends.isEmpty()) {
      into.add(said(XmlText.escaped(String.join("; ", ends)), terms));
    }
  }

  private boolean measuresOnly(String expression, String name) {
    Set<String> figures = new HashSet<>();
    var names = NAME.matcher(expression);
    while (names.find()) {
      if (sheet.view().path("figures").has(names.group())) {
        figures.add(names.group());
      }
    }
    return figures.equals(Set.of(name));
  }
}
