package endfloat.picture;

import endfloat.engine.Figure;
import endfloat.engine.Question;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.record.ChartClause;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Values in the order in which they came, with their median: whether something changed. */
final class RunChart {
  private static final int MOST_ROWS = 400;
  private static final int MOST_MARKS = 400;

  private final ChartColumn column;
  private final Optional<String> order;
  private final boolean dated;
  private final List<Point> points = new ArrayList<>();

  /** One value and where it stands. */
  private record Point(String label, double x, double y, Optional<Verdict> verdict) {}

  RunChart(ChartClause clause, ValueGraph graph) {
    column = new ChartColumn(graph, "/of", clause.of());
    order = Optional.of(clause.input().strip()).filter(o -> !o.isEmpty());
    Map<List<String>, Double> places = new HashMap<>();
    Map<List<String>, String> dates = new HashMap<>();
    order.ifPresent(by -> places(graph, by, places, dates));
    dated = !dates.isEmpty();
    Optional<Figure> figure = graph.figure(column.said());
    boolean judged = column.size() <= MOST_MARKS && figure.isPresent();
    for (int row = 0; row < column.size(); row++) {
      List<String> label = column.labels().get(row);
      Double x = order.isPresent() ? places.get(label) : Double.valueOf(row + 1);
      if (x != null && !Double.isNaN(column.at(row))) {
        Optional<Verdict> verdict =
            judged ? figure.get().elements().get(row).verdict() : Optional.empty();
        points.add(
            new Point(dates.getOrDefault(label, column.label(row)), x, column.at(row), verdict));
      }
    }
    points.sort(Comparator.comparingDouble(Point::x));
    if (points.size() < 3) {
      throw Question.refused(
          "/of",
          "There are " + points.size() + " values in order; the chart takes 3 or more.",
          "Enter more rows.");
    }
  }

  /** Days from the first date, or numbers as they are. */
  private static void places(
      ValueGraph graph,
      String by,
      Map<List<String>, Double> places,
      Map<List<String>, String> dates) {
    Question asked = Question.of(graph, "/input", by);
    if (!(asked.value() instanceof Value.Series series)) {
      throw Question.refused("/input", "This is no column.", "Name a column of dates or numbers.");
    }
    for (int row = 0; row < series.size(); row++) {
      List<String> label = series.labels().get(row);
      Value value = series.elements().get(row);
      if (value instanceof Value.Words words && words.text().matches("\\d{4}-\\d{2}-\\d{2}")) {
        places.put(label, (double) LocalDate.parse(words.text()).toEpochDay());
        dates.put(label, words.text());
      } else if (value instanceof Value.Scalar scalar) {
        places.put(label, asked.unit().map(u -> u.fromSi(scalar.si())).orElse(scalar.si()));
      } else if (!(value instanceof Value.Absent)) {
        throw Question.refused(
            "/input", "Texts are no order in time.", "Name a column of dates or numbers.");
      }
    }
  }

  ChartPicture.Drawn drawn() {
    double[] values = points.stream().mapToDouble(Point::y).toArray();
    Quartiles quartiles = Quartiles.of(values);
    int longest = longestRun(quartiles.median());
    String description =
        column.said()
            + " in order"
            + order.map(o -> " of " + o).orElse("")
            + ": "
            + points.size()
            + " values, median "
            + column.text(quartiles.median())
            + "; most in a row on one side of it: "
            + longest
            + ".";
    AxisScale up = ChartFrame.upright(quartiles.least(), quartiles.greatest(), 5);
    AxisScale across = ChartFrame.along(points.get(0).x(), points.get(points.size() - 1).x());
    ChartFrame frame = new ChartFrame(up, description);
    frame.upright(column.caption());
    frame.limits(column.limits());
    double middle = up.at(quartiles.median());
    frame
        .svg()
        .path("chart-mean", new SvgPath().line(ChartFrame.LEFT, middle, ChartFrame.RIGHT, middle));
    run(frame.svg(), across, up);
    foot(frame, across);
    return new ChartPicture.Drawn(
        frame.svg().finished(), description, List.of("row", column.said()), rows(), notes());
  }

  private void foot(ChartFrame frame, AxisScale across) {
    if (!dated) {
      frame.along(across, order.orElse("row"));
      return;
    }
    Point first = points.get(0);
    Point last = points.get(points.size() - 1);
    SvgWriter svg = frame.svg();
    svg.text(
        "chart-label", across.at(first.x()), ChartFrame.BOTTOM + 19, Anchor.START, first.label());
    svg.text("chart-label", across.at(last.x()), ChartFrame.BOTTOM + 19, Anchor.END, last.label());
    svg.text(
        "chart-caption", ChartFrame.RIGHT, ChartFrame.BOTTOM + 40, Anchor.END, order.orElse("row"));
  }

  /** Values on the median belong to neither side. */
  private int longestRun(double median) {
    int longest = 0;
    int run = 0;
    double side = 0;
    for (Point point : points) {
      double now = Math.signum(point.y() - median);
      if (now == 0) {
        continue;
      }
      run = now == side ? run + 1 : 1;
      side = now;
      longest = Math.max(longest, run);
    }
    return longest;
  }

  private void run(SvgWriter svg, AxisScale across, AxisScale up) {
    SvgPath line = new SvgPath();
    for (int i = 0; i < points.size(); i++) {
      double x = across.at(points.get(i).x());
      double y = up.at(points.get(i).y());
      if (i == 0) {
        line.from(x, y);
      } else {
        line.to(x, y);
      }
    }
    svg.path("chart-leader", line);
    if (points.size() <= MOST_MARKS) {
      points.forEach(p -> ChartMark.draw(svg, p.verdict(), across.at(p.x()), up.at(p.y())));
    }
  }

  private List<List<String>> rows() {
    return points.stream()
        .limit(MOST_ROWS)
        .map(p -> List.of(p.label(), column.text(p.y())))
        .toList();
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Line across: the median. Where nothing changes, values fall to either side of it as a coin"
            + " falls.");
    int left = column.size() - points.size();
    if (left > 0) {
      notes.add(left + " of " + column.size() + " rows have no value or no place in the order.");
    }
    if (points.size() > MOST_ROWS) {
      notes.add("The first " + MOST_ROWS + " values are listed.");
    }
    return notes;
  }
}
