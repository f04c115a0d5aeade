package endfloat.picture;

import endfloat.engine.Correlations;
import endfloat.engine.FigureUnit;
import endfloat.engine.Gradient;
import endfloat.engine.GraphSettings;
import endfloat.engine.Question;
import endfloat.engine.Root;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.record.ChartClause;
import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What the uncertainty of a value comes from: a bar a root, the greatest first. */
final class SpreadChart {
  private static final double WIDTH = 812;
  private static final double MIDDLE = 430;
  private static final double LONGEST = 150;
  private static final double ROW = 30;
  private static final int MOST = 9;

  private final ChartClause clause;
  private final GraphSettings settings;
  private final Unit unit;
  private final double value;
  private final double u;
  private final double expanded;
  private final List<Part> parts = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /**
   * One root, or several small ones together.
   *
   * @param amount standard uncertainty it brings [SI]
   * @param share of the variance
   */
  private record Part(String words, double amount, double share) {}

  SpreadChart(ChartClause clause, ValueGraph graph) {
    this.clause = clause;
    this.settings = graph.settings();
    Question asked = Question.of(graph, "/of", clause.of());
    Value.Scalar number = asked.number();
    this.unit = FigureUnit.of(asked, settings);
    this.value = number.si();
    this.u = graph.standardUncertainty(number);
    this.expanded = graph.expandedUncertainty(number);
    if (u == 0) {
      throw Question.refused(
          "/of", "This value is exact: it has no uncertainty to take apart.", "");
    }
    parts(number.gradient());
    correlated(number.gradient(), graph.correlations());
  }

  private void parts(Gradient gradient) {
    List<Part> all = new ArrayList<>();
    for (int i = 0; i < gradient.size(); i++) {
      double amount = Math.abs(gradient.part(i));
      all.add(new Part(words(gradient.root(i)), amount, amount / u * (amount / u)));
    }
    all.sort(Comparator.comparingDouble((Part p) -> -p.amount()).thenComparing(Part::words));
    int shown = all.size() <= MOST ? all.size() : MOST - 1;
    parts.addAll(all.subList(0, shown));
    List<Part> rest = all.subList(shown, all.size());
    if (!rest.isEmpty()) {
      double squares = rest.stream().mapToDouble(p -> p.amount() * p.amount()).sum();
      parts.add(
          new Part(
              "the other " + rest.size() + " together",
              Math.sqrt(squares),
              rest.stream().mapToDouble(Part::share).sum()));
    }
  }

  private static String words(Root root) {
    return switch (root.kind()) {
      case INPUT -> root.subject();
      case OFFSET -> "offset of " + root.subject();
      case GAIN -> "gain of " + root.subject();
      case OWN -> root.subject() + ", each reading's own";
      case RESOLUTION -> root.subject() + ", step of the indication";
      case SCATTER -> root.subject() + ", scatter";
      case TEMPERATURE -> root.subject() + ", temperature";
      default -> root.words();
    };
  }

  private void correlated(Gradient gradient, Correlations correlations) {
    double together = 0;
    List<String> pairs = new ArrayList<>();
    for (Correlations.Pair pair : correlations.pairs()) {
      double both = gradient.part(pair.first()) * gradient.part(pair.second());
      if (both != 0) {
        together += 2 * pair.coefficient() * both / u / u;
        pairs.add(words(pair.first()) + " and " + words(pair.second()));
      }
    }
    if (!pairs.isEmpty()) {
      notes.add(
          "Some vary together: "
              + String.join("; ", pairs)
              + ". That "
              + (together < 0 ? "takes away " : "adds ")
              + percent(Math.abs(together))
              + " of the variance, so the shares do not add up to 100 %.");
    }
  }

  private static String percent(double share) {
    double percent = 100 * share;
    return percent < 0.5 ? "< 1 %" : String.format(Locale.ROOT, "%.0f %%", percent);
  }

  private String amount(Part part) {
    String text = Shown.of(0, part.amount(), unit, settings).uncertainty();
    return "\u00b1 " + text + (unit.print().equals("1") ? "" : " " + unit.print());
  }

  ChartPicture.Drawn drawn() {
    String whole = Shown.expanded(value, expanded, unit).text();
    String description =
        "What the uncertainty of "
            + clause.of().strip()
            + ", "
            + whole
            + ", comes from: "
            + String.join(
                "; ",
                parts.stream()
                    .map(p -> p.words() + " " + amount(p) + ", " + percent(p.share()))
                    .toList())
            + ".";
    notes.add(
        "Bars: what each would leave alone, k = "
            + plain(settings.coverage())
            + "; shares are of the variance.");
    List<List<String>> rows =
        parts.stream().map(p -> List.of(p.words(), amount(p), percent(p.share()))).toList();
    return new ChartPicture.Drawn(
        svg(description),
        description,
        List.of("from", "alone", "share of the variance"),
        rows,
        List.copyOf(notes));
  }

  private static String plain(double number) {
    return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private String svg(String description) {
    double height = 12 + ROW * parts.size();
    SvgWriter svg = new SvgWriter("chart", WIDTH, height, description, ChartInk.BOTH);
    double most = parts.stream().mapToDouble(Part::amount).max().orElseThrow();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      double y = 6 + ROW * i;
      double half = Math.max(0.5, LONGEST * part.amount() / most);
      svg.rectangle("chart-bar", MIDDLE - half, y + 7, 2 * half, 16);
      svg.path("chart-hatch", new SvgPath().hatch(MIDDLE - half, y + 7, MIDDLE, y + 23, 5));
      svg.path(
          "chart-edge",
          new SvgPath()
              .from(MIDDLE - half, y + 7)
              .to(MIDDLE + half, y + 7)
              .to(MIDDLE + half, y + 23)
              .to(MIDDLE - half, y + 23)
              .close());
      svg.text("chart-name", 4, y + 20, Anchor.START, shortened(part.words()));
      svg.text("chart-label", 700, y + 20, Anchor.END, amount(part));
      svg.text("chart-name", WIDTH - 8, y + 20, Anchor.END, percent(part.share()));
    }
    svg.path("chart-axis", new SvgPath().line(MIDDLE, 2, MIDDLE, height - 2));
    return svg.finished();
  }

  /** What fits beside the longest bar; the whole of it stands in the rows. */
  private static String shortened(String words) {
    int most = (int) ((MIDDLE - LONGEST - 12) / Labels.breadth("n"));
    return words.length() <= most ? words : words.substring(0, most - 1).stripTrailing() + "\u2026";
  }
}
