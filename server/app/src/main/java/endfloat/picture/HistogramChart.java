package endfloat.picture;

import endfloat.engine.ValueGraph;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.record.ChartClause;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How the values of a column are spread: how many lie in each stretch of equal breadth. */
final class HistogramChart {
  private final ChartColumn column;
  private final double[] values;
  private final List<BigDecimal> edges;
  private final AxisScale across;
  private final int[] counts;

  HistogramChart(ChartClause clause, ValueGraph graph) {
    column = new ChartColumn(graph, "/of", clause.of());
    values = column.atLeast(3, "/of");
    double low = Arrays.stream(values).min().orElseThrow();
    double high = Arrays.stream(values).max().orElseThrow();
    double span = high > low ? high - low : Math.max(Math.abs(high), 1) * 0.1;
    int about = clause.count() > 0 ? clause.count() : stretches(values.length);
    double room = high > low ? 0 : span;
    across =
        AxisScale.widened(
            low - room, high + room, ChartFrame.LEFT, ChartFrame.RIGHT, Math.max(2, about));
    edges = across.ticks();
    counts = counted();
  }

  /**
   * Sturges's rule, one more than the binary logarithm of their number, and as round edges make
   * stretches wider than asked for, more than half as many again.
   */
  private static int stretches(int values) {
    return (int) Math.ceil(1.6 * (StrictMath.log(values) / StrictMath.log(2) + 1));
  }

  /** A value on an edge counts above it; the greatest counts in the last stretch. */
  private int[] counted() {
    int[] found = new int[edges.size() - 1];
    for (double value : values) {
      int at = 0;
      while (at < found.length - 1 && value >= edges.get(at + 1).doubleValue()) {
        at++;
      }
      found[at]++;
    }
    return found;
  }

  ChartPicture.Drawn drawn() {
    Quartiles quartiles = Quartiles.of(values);
    double mean = Arrays.stream(values).sum() / values.length;
    String description =
        column.said()
            + ": "
            + values.length
            + " values from "
            + column.text(quartiles.least())
            + " to "
            + column.text(quartiles.greatest())
            + ", mean "
            + column.text(mean)
            + ", half of them below "
            + column.text(quartiles.median())
            + ".";
    int most = Arrays.stream(counts).max().orElseThrow();
    AxisScale up =
        AxisScale.widened(0, Math.max(1, most * 1.08), ChartFrame.BOTTOM, ChartFrame.TOP, 5);
    ChartFrame frame = new ChartFrame(up, description);
    frame.upright("values");
    bars(frame.svg(), up);
    frame.along(across, column.caption());
    for (double limit : column.limits()) {
      if (across.holds(limit)) {
        double x = across.at(limit);
        frame
            .svg()
            .path("chart-limit", new SvgPath().line(x, ChartFrame.TOP, x, ChartFrame.BOTTOM));
      }
    }
    double x = across.at(mean);
    frame.svg().path("chart-mean", new SvgPath().line(x, ChartFrame.TOP, x, ChartFrame.BOTTOM));
    boolean left = x > (ChartFrame.LEFT + ChartFrame.RIGHT) / 2;
    frame
        .svg()
        .text(
            "chart-name",
            x + (left ? -6 : 6),
            ChartFrame.TOP + 2,
            left ? Anchor.END : Anchor.START,
            "mean " + column.text(mean));
    return new ChartPicture.Drawn(
        frame.svg().finished(), description, List.of("from", "to", "values"), rows(), notes());
  }

  private void bars(SvgWriter svg, AxisScale up) {
    SvgPath outline = new SvgPath();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        double left = across.at(edges.get(i).doubleValue());
        double right = across.at(edges.get(i + 1).doubleValue());
        double top = up.at(counts[i]);
        svg.rectangle("chart-bar", left, top, right - left, ChartFrame.BOTTOM - top);
        outline
            .from(left, ChartFrame.BOTTOM)
            .to(left, top)
            .to(right, top)
            .to(right, ChartFrame.BOTTOM);
        if (counts.length <= 24) {
          svg.text(
              "chart-label",
              (left + right) / 2,
              top - 5,
              Anchor.MIDDLE,
              Integer.toString(counts[i]));
        }
      }
    }
    svg.path("chart-edge", outline);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      rows.add(
          List.of(
              column.text(edges.get(i).doubleValue()),
              column.text(edges.get(i + 1).doubleValue()),
              Integer.toString(counts[i])));
    }
    return rows;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add("A value on an edge counts in the stretch above it.");
    int missing = column.size() - values.length;
    if (missing > 0) {
      notes.add(missing + " of " + column.size() + " rows have no value and are left out.");
    }
    return notes;
  }
}
