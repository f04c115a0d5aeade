package endfloat.cli;

import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.SeriesText;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import java.io.PrintStream;
import java.util.Collection;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Figures for people: name, value with its uncertainty, verdict. */
final class FigureTable {
  private static final Pattern ITEM = Pattern.compile("item [^,]+");
  private static final Pattern SIZE = Pattern.compile("\\.size\\d+$");

  private FigureTable() {}

  static void print(PrintStream out, Collection<Figure> figures, GraphSettings settings) {
    TextTable table = new TextTable();
    for (Figure figure : figures) {
      figure.value().ifPresent(value -> rows(table, figure, value, settings));
    }
    table.print(out);
  }

  /** Only figures that a limit is set on. */
  static void printJudged(PrintStream out, Collection<Figure> figures, GraphSettings settings) {
    print(out, figures.stream().filter(f -> f.verdict().isPresent()).toList(), settings);
  }

  /**
   * Its name; a value in a row of fits has none of its own and goes by the item of the schedule, or
   * by what it is.
   */
  private static String called(Figure figure) {
    if (figure.name().indexOf('.') < 0 || figure.given().isBlank()) {
      return figure.name();
    }
    Matcher item = ITEM.matcher(figure.given());
    if (!item.lookingAt()) {
      return figure.given();
    }
    // of the two parts of a fit each is named; which fit it is, the item says
    String given = figure.given();
    return SIZE.matcher(figure.name()).find()
        ? item.group() + given.substring(given.lastIndexOf(", "))
        : item.group();
  }

  private static void rows(TextTable table, Figure figure, Value value, GraphSettings settings) {
    String verdict = figure.verdict().map(Verdict::word).orElse("");
    if (value instanceof Value.Series || value instanceof Value.Fields) {
      for (Figure.Element element : figure.elements()) {
        String text = text(figure, element, settings);
        if (!text.isEmpty()) {
          table.row(
              called(figure) + place(element),
              text,
              element.verdict().map(Verdict::word).orElse(""));
        }
      }
    } else if (value instanceof Value.Words words) {
      table.row(called(figure), words.text(), verdict);
    } else if (value instanceof Value.Truth truth) {
      table.row(called(figure), truth.holds() ? "yes" : "no", verdict);
    } else {
      Shown.of(figure, settings)
          .ifPresent(shown -> table.row(called(figure), shown.text(), verdict));
    }
  }

  private static String place(Figure.Element element) {
    if (!element.field().isEmpty()) {
      return "." + element.field();
    }
    Map<String, String> labels = element.labels();
    return labels.isEmpty()
        ? ""
        : labels.entrySet().stream()
            .map(label -> label.getKey() + "=" + label.getValue())
            .collect(Collectors.joining(",", "[", "]"));
  }

  private static String text(Figure figure, Figure.Element element, GraphSettings settings) {
    if (element.value() instanceof Value.Words words) {
      return words.text();
    }
    if (element.value() instanceof Value.Truth truth) {
      return truth.holds() ? "yes" : "no";
    }
    if (element.value() instanceof Value.Series series) {
      return SeriesText.of(series, FigureUnit.of(figure, element, settings)).text();
    }
    return Shown.of(figure, element, settings).map(Shown::text).orElse("");
  }
}
