package endfloat.picture;

import endfloat.engine.GraphSettings;
import endfloat.engine.Question;
import endfloat.engine.QuestionRefusedException;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.ChartClause;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One column against another with the straight line through the points and what it is worth. */
final class ScatterChart {
  /** Points listed one by one. */
  private static final int MOST_ROWS = 400;

  private static final int STEPS = 40;

  private final ValueGraph graph;
  private final GraphSettings settings;
  private final ChartColumn x;
  private final ChartColumn y;
  private final List<String> labels = new ArrayList<>();
  private final List<double[]> points = new ArrayList<>();

  ScatterChart(ChartClause clause, ValueGraph graph) {
    this.graph = graph;
    this.settings = graph.settings();
    x = new ChartColumn(graph, "/input", clause.input());
    y = new ChartColumn(graph, "/of", clause.of());
    Map<List<String>, Integer> rows = new HashMap<>();
    for (int row = 0; row < x.size(); row++) {
      rows.put(x.labels().get(row), row);
    }
    for (int row = 0; row < y.size(); row++) {
      Integer other = rows.get(y.labels().get(row));
      if (other != null && !Double.isNaN(x.at(other)) && !Double.isNaN(y.at(row))) {
        points.add(new double[] {x.at(other), y.at(row)});
        labels.add(y.label(row));
      }
    }
    if (points.size() < 2) {
      throw Question.refused(
          "/input",
          "The two columns have " + points.size() + " rows in common.",
          "Name two columns of one table.");
    }
  }

  /** The line in the units shown: y = at + slope (x - middle). */
  private record Line(double middle, double at, double slope, double deviation, double slopeU) {
    double y(double x) {
      return at + slope * (x - middle);
    }

    /** Standard uncertainty of the line at x. */
    double u(double x, int points) {
      double away = slopeU * (x - middle);
      return Math.sqrt(deviation * deviation / points + away * away);
    }
  }

  ChartPicture.Drawn drawn() {
    Optional<Value.Fields> fit = fit();
    Optional<Line> line = fit.map(this::line);
    String description = description(fit);
    double lowX = points.stream().mapToDouble(p -> p[0]).min().orElseThrow();
    double highX = points.stream().mapToDouble(p -> p[0]).max().orElseThrow();
    double lowY = points.stream().mapToDouble(p -> p[1]).min().orElseThrow();
    double highY = points.stream().mapToDouble(p -> p[1]).max().orElseThrow();
    AxisScale up = ChartFrame.upright(lowY, highY, 5);
    ChartFrame frame = new ChartFrame(up, description);
    AxisScale across = ChartFrame.along(lowX, highX);
    frame.upright(y.caption());
    line.ifPresent(l -> line(frame.svg(), across, up, l, lowX, highX));
    frame.limits(y.limits());
    int drawn = marks(frame.svg(), across, up);
    frame.along(across, x.caption());
    return new ChartPicture.Drawn(
        frame.svg().finished(),
        description,
        List.of("row", x.said(), y.said()),
        rows(),
        notes(line.isPresent(), drawn));
  }

  private Optional<Value.Fields> fit() {
    try {
      String call = "straight_line(" + x.said() + ", " + y.said() + ")";
      return Optional.of((Value.Fields) Question.of(graph, "/of", call).value());
    } catch (QuestionRefusedException e) {
      return Optional.empty();
    }
  }

  private static double number(Value.Fields fields, String name) {
    return ((Value.Scalar) fields.get(name)).si();
  }

  private Line line(Value.Fields fit) {
    double middle = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
    double at = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
    double perX = x.unit().interval().toSi(1);
    double perY = y.unit().interval().toSi(1);
    return new Line(
        middle,
        at,
        number(fit, "slope") * perX / perY,
        number(fit, "residual_deviation") / perY,
        number(fit, "slope_uncertainty") * perX / perY);
  }

  private void line(
      SvgWriter svg, AxisScale across, AxisScale up, Line line, double low, double high) {
    SvgPath band = new SvgPath();
    for (int i = 0; i <= 2 * STEPS + 1; i++) {
      boolean upper = i <= STEPS;
      int step = upper ? i : 2 * STEPS + 1 - i;
      double at = low + (high - low) * step / STEPS;
      double half = settings.expanded(line.u(at, points.size()), points.size() - 2);
      double to = up.at(line.y(at) + (upper ? half : -half));
      if (i == 0) {
        band.from(across.at(at), to);
      } else {
        band.to(across.at(at), to);
      }
    }
    svg.path("chart-band", band.close());
    svg.path(
        "chart-curve",
        new SvgPath()
            .line(across.at(low), up.at(line.y(low)), across.at(high), up.at(line.y(high))));
  }

  /** Marks that would lie on one another are drawn once. */
  private int marks(SvgWriter svg, AxisScale across, AxisScale up) {
    Set<Long> taken = new HashSet<>();
    for (double[] point : points) {
      double px = across.at(point[0]);
      double py = up.at(point[1]);
      if (taken.add(Math.round(px / 1.5) * 100_000L + Math.round(py / 1.5))) {
        svg.circle("chart-mark", px, py, points.size() > 200 ? 2 : 3.2);
      }
    }
    return taken.size();
  }

  private String description(Optional<Value.Fields> fit) {
    String start = y.said() + " against " + x.said() + ": " + points.size() + " points";
    if (fit.isEmpty()) {
      return start + ".";
    }
    Value.Scalar slope = (Value.Scalar) fit.get().get("slope");
    return start
        + "; straight line through them: slope "
        + slope(slope)
        + ", standard deviation about it "
        + y.difference(y.unit().interval().fromSi(number(fit.get(), "residual_deviation")))
        + ", R\u00b2 = "
        + Shown.of(number(fit.get(), "r_squared"), 0, UnitTable.find("1"), settings).value()
        + ".";
  }

  private String slope(Value.Scalar slope) {
    return Shown.expanded(
            slope.si(), graph.expandedUncertainty(slope), SlopeUnit.of(y.unit(), x.unit()))
        .text();
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(points.size(), MOST_ROWS); i++) {
      rows.add(List.of(labels.get(i), x.text(points.get(i)[0]), y.text(points.get(i)[1])));
    }
    return rows;
  }

  private List<String> notes(boolean fitted, int drawn) {
    List<String> notes = new ArrayList<>();
    if (fitted) {
      notes.add(
          "Line: least squares of "
              + y.said()
              + " (straight_line). Band: the line's own expanded uncertainty by the scatter; single"
              + " points lie wider.");
      notes.add("That two columns go together does not say that one causes the other.");
    }
    int left = Math.max(x.size(), y.size()) - points.size();
    if (left > 0) {
      notes.add(left + " rows lack one of the two values and are left out.");
    }
    if (drawn < points.size()) {
      notes.add(
          points.size() + " points, " + drawn + " marks: those that cover one another are one.");
    }
    if (points.size() > MOST_ROWS) {
      notes.add("The first " + MOST_ROWS + " points are listed.");
    }
    return notes;
  }
}
