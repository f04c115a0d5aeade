package endfloat.picture;

import endfloat.engine.Question;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.record.ChartClause;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The values of a column by groups side by side: for each where half of its values lie. */
final class BoxChart {
  /** A group of fewer values is drawn point by point: its quartiles say nothing. */
  private static final int FEWEST = 5;

  private static final int MOST_GROUPS = 24;

  private final ChartColumn column;
  private final String by;
  private final Map<String, double[]> groups = new TreeMap<>();
  private final int without;

  BoxChart(ChartClause clause, ValueGraph graph) {
    column = new ChartColumn(graph, "/of", clause.of());
    by = clause.input().strip();
    Question asked = Question.of(graph, "/input", clause.input());
    if (!(asked.value() instanceof Value.Series labels)) {
      throw Question.refused(
          "/input", "This is no column.", "Name the column that tells the groups, of texts.");
    }
    Map<List<String>, String> groupOf = new HashMap<>();
    for (int row = 0; row < labels.size(); row++) {
      Value value = labels.elements().get(row);
      if (value instanceof Value.Words words) {
        groupOf.put(labels.labels().get(row), words.text());
      } else if (value instanceof Value.Truth truth) {
        groupOf.put(labels.labels().get(row), truth.holds() ? "yes" : "no");
      } else if (!(value instanceof Value.Absent)) {
        throw Question.refused(
            "/input",
            "Groups are told by texts, dates or yes and no.",
            "Name such a column of the same table.");
      }
    }
    without = fill(groupOf);
    if (groups.isEmpty() || groups.size() > MOST_GROUPS) {
      throw Question.refused(
          "/input",
          "There are " + groups.size() + " groups; the chart takes 1 to " + MOST_GROUPS + ".",
          "Name a column with fewer different values, of the same table.");
    }
  }

  private int fill(Map<List<String>, String> groupOf) {
    Map<String, List<Double>> all = new TreeMap<>();
    int left = 0;
    for (int row = 0; row < column.size(); row++) {
      String group = groupOf.get(column.labels().get(row));
      if (group == null || Double.isNaN(column.at(row))) {
        left++;
      } else {
        all.computeIfAbsent(group, g -> new ArrayList<>()).add(column.at(row));
      }
    }
    all.forEach(
        (group, values) ->
            groups.put(group, values.stream().mapToDouble(Double::doubleValue).toArray()));
    return left;
  }

  ChartPicture.Drawn drawn() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    StringBuilder described = new StringBuilder(column.said() + " by " + by);
    List<List<String>> rows = new ArrayList<>();
    for (Map.Entry<String, double[]> group : groups.entrySet()) {
      Quartiles q = Quartiles.of(group.getValue());
      low = Math.min(low, q.least());
      high = Math.max(high, q.greatest());
      described
          .append(rows.isEmpty() ? ": " : "; ")
          .append(group.getKey())
          .append(", ")
          .append(q.count())
          .append(q.count() == 1 ? " value, " : " values, half below ")
          .append(column.text(q.median()));
      rows.add(row(group.getKey(), q));
    }
    String description = described.append('.').toString();
    AxisScale up = ChartFrame.upright(low, high, 5);
    ChartFrame frame = new ChartFrame(up, description);
    frame.upright(column.caption());
    frame.limits(column.limits());
    double pitch = (ChartFrame.RIGHT - ChartFrame.LEFT) / groups.size();
    double x = ChartFrame.LEFT + pitch / 2;
    for (Map.Entry<String, double[]> group : groups.entrySet()) {
      box(frame.svg(), up, x, Math.min(44, 0.3 * pitch), group.getValue());
      svgLabel(frame.svg(), x, group.getKey(), group.getValue().length);
      x += pitch;
    }
    return new ChartPicture.Drawn(
        frame.svg().finished(),
        description,
        List.of(by, "values", "least", "lower quartile", "median", "upper quartile", "greatest"),
        rows,
        notes());
  }

  private static void svgLabel(SvgWriter svg, double x, String group, int values) {
    svg.text("chart-label", x, ChartFrame.BOTTOM + 19, Anchor.MIDDLE, group);
    svg.text("chart-caption", x, ChartFrame.BOTTOM + 37, Anchor.MIDDLE, "n = " + values);
  }

  private static void box(SvgWriter svg, AxisScale up, double x, double half, double[] values) {
    if (values.length < FEWEST) {
      for (double value : values) {
        svg.circle("chart-mark", x, up.at(value), 3.2);
      }
      return;
    }
    Quartiles q = Quartiles.of(values);
    double lower = up.at(q.lower());
    double upper = up.at(q.upper());
    svg.path(
        "chart-whisker",
        new SvgPath()
            .line(x, up.at(q.least()), x, lower)
            .line(x, upper, x, up.at(q.greatest()))
            .line(x - half / 3, up.at(q.least()), x + half / 3, up.at(q.least()))
            .line(x - half / 3, up.at(q.greatest()), x + half / 3, up.at(q.greatest())));
    svg.rectangle("chart-bar", x - half, upper, 2 * half, Math.max(0.5, lower - upper));
    svg.path(
        "chart-edge",
        new SvgPath()
            .from(x - half, upper)
            .to(x + half, upper)
            .to(x + half, lower)
            .to(x - half, lower)
            .close());
    svg.path(
        "chart-curve",
        new SvgPath().line(x - half, up.at(q.median()), x + half, up.at(q.median())));
  }

  private List<String> row(String group, Quartiles q) {
    boolean few = q.count() < FEWEST;
    return List.of(
        group,
        Integer.toString(q.count()),
        column.text(q.least()),
        few ? "" : column.text(q.lower()),
        column.text(q.median()),
        few ? "" : column.text(q.upper()),
        column.text(q.greatest()));
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Box: from the lower to the upper quartile, the line in it the median; whiskers to the least"
            + " and the greatest value. Groups of fewer than "
            + FEWEST
            + " values are drawn point by point.");
    if (without > 0) {
      notes.add(without + " of " + column.size() + " rows lack a value or a group.");
    }
    return notes;
  }
}
