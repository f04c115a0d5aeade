package endfloat.picture;

import endfloat.picture.SvgWriter.Anchor;
import java.math.BigDecimal;

/** One field of a picture: a curve over its axis, with round numbers beside it. */
final class Plot {
  static final double WIDTH = 812;
  static final double LEFT = 86;
  static final double RIGHT = 780;

  private final SvgWriter svg;
  private final AxisScale across;
  private final AxisScale up;
  private final double top;
  private final double foot;

  /** All numbers in the units shown. */
  Plot(SvgWriter svg, double[] xs, double[] ys, double top, double foot, String caption) {
    this.svg = svg;
    this.top = top;
    this.foot = foot;
    double low = 0;
    double high = 0;
    for (double y : ys) {
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
    if (low == high) {
      high = 1;
    }
    across = new AxisScale(xs[0], xs[xs.length - 1], LEFT, RIGHT, 8);
    up = AxisScale.widened(low, high, foot, top, 3);
    SvgPath grid = new SvgPath();
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      grid.line(LEFT, y, RIGHT, y);
      svg.text("chart-number", LEFT - 9, y + 4.5, Anchor.END, up.text(tick));
    }
    svg.path("chart-grid", grid);
    svg.path(
        "chart-axis",
        new SvgPath().line(LEFT, top, LEFT, foot).line(LEFT, up.at(0), RIGHT, up.at(0)));
    svg.text("chart-caption", LEFT, top - 8, Anchor.START, caption);
  }

  void curve(double[] xs, double[] ys) {
    SvgPath path = new SvgPath().from(across.at(xs[0]), up.at(ys[0]));
    for (int i = 1; i < xs.length; i++) {
      path.to(across.at(xs[i]), up.at(ys[i]));
    }
    svg.path("chart-curve", path);
  }

  void line(double x1, double y1, double x2, double y2) {
    svg.path("chart-mean", new SvgPath().line(across.at(x1), up.at(y1), across.at(x2), up.at(y2)));
  }

  /** A place of the curve with what it is. */
  void mark(double x, double y, String text) {
    double at = across.at(x);
    svg.circle("chart-mark", at, up.at(y), 3.5);
    boolean right = at < (LEFT + RIGHT) / 2;
    svg.text(
        "chart-name",
        at + (right ? 9 : -9),
        Math.min(foot - 4, Math.max(top + 12, up.at(y) - 7)),
        right ? Anchor.START : Anchor.END,
        text);
  }

  void dot(double x, double y) {
    svg.circle("chart-mark", across.at(x), up.at(y), 3.5);
  }

  /** From the fitted line to a point. */
  void stem(double x, double from, double to) {
    svg.path(
        "chart-whisker", new SvgPath().line(across.at(x), up.at(from), across.at(x), up.at(to)));
  }

  /** Numbers under the axis. */
  void foot(String caption) {
    for (BigDecimal tick : across.ticks()) {
      double x = across.at(tick.doubleValue());
      svg.path("chart-axis", new SvgPath().line(x, foot, x, foot + 5));
      svg.text("chart-number", x, foot + 20, Anchor.MIDDLE, across.text(tick));
    }
    svg.text("chart-caption", RIGHT, foot + 38, Anchor.END, caption);
  }

  double x(double at) {
    return across.at(at);
  }
}
