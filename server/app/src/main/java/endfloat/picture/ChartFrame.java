package endfloat.picture;

import endfloat.picture.SvgWriter.Anchor;
import java.math.BigDecimal;
import java.util.List;

/** The frame of a chart of columns: two axes with round numbers, and lines across it. */
final class ChartFrame {
  private static final double WIDTH = 812;
  private static final double HEIGHT = 350;
  static final double LEFT = 74;
  static final double RIGHT = 784;
  static final double TOP = 30;
  static final double BOTTOM = 296;

  private final SvgWriter svg;
  private final AxisScale up;

  ChartFrame(AxisScale up, String description) {
    this.up = up;
    this.svg = new SvgWriter("chart", WIDTH, HEIGHT, description, ChartInk.BOTH);
  }

  /** An upright axis that holds all of these, with room above and below. */
  static AxisScale upright(double low, double high, int about) {
    double span = high > low ? high - low : Math.max(Math.abs(high), 1);
    return AxisScale.widened(lowered(low, 0.06 * span), high + 0.06 * span, BOTTOM, TOP, about);
  }

  /** An axis along the foot that holds all of these. */
  static AxisScale along(double low, double high) {
    double span = high > low ? high - low : Math.max(Math.abs(high), 1);
    return new AxisScale(lowered(low, 0.03 * span), high + 0.03 * span, LEFT, RIGHT, 9);
  }

  /** Values that are never negative have no axis below nothing. */
  private static double lowered(double low, double room) {
    return low >= 0 ? Math.max(0, low - room) : low - room;
  }

  SvgWriter svg() {
    return svg;
  }

  void upright(String caption) {
    SvgPath grid = new SvgPath();
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      grid.line(LEFT, y, RIGHT, y);
      svg.text("chart-number", LEFT - 9, y + 4.5, Anchor.END, up.text(tick));
    }
    svg.path("chart-grid", grid);
    svg.path("chart-axis", new SvgPath().from(LEFT, TOP).to(LEFT, BOTTOM).to(RIGHT, BOTTOM));
    svg.text("chart-caption", LEFT, TOP - 12, Anchor.START, caption);
  }

  void along(AxisScale across, String caption) {
    SvgPath marks = new SvgPath();
    for (BigDecimal tick : across.ticks()) {
      double x = across.at(tick.doubleValue());
      marks.line(x, BOTTOM, x, BOTTOM + 5);
      svg.text("chart-number", x, BOTTOM + 19, Anchor.MIDDLE, across.text(tick));
    }
    svg.path("chart-axis", marks);
    svg.text("chart-caption", RIGHT, BOTTOM + 40, Anchor.END, caption);
  }

  /** Limits as lines from side to side; those beyond the axis are left out. */
  void limits(List<Double> limits) {
    for (double limit : limits) {
      if (up.holds(limit)) {
        svg.path("chart-limit", new SvgPath().line(LEFT, up.at(limit), RIGHT, up.at(limit)));
      }
    }
  }
}
