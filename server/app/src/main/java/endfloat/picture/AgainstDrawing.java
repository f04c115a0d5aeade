package endfloat.picture;

import endfloat.engine.Verdict;
import endfloat.picture.SvgWriter.Anchor;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws a result against an input. All numbers are in the units shown. */
final class AgainstDrawing {
  private static final double WIDTH = 812;
  private static final double HEIGHT = 350;
  private static final double LEFT = 66;
  private static final double RIGHT = 792;
  private static final double TOP = 20;
  private static final double BOTTOM = 304;

  /** A limit farther off than this many heights of the curve would flatten it. */
  private static final double FARTHEST = 2.5;

  /**
   * A point of the curve.
   *
   * @param half expanded uncertainty, as drawn
   * @param si value in SI
   * @param expanded uncertainty in SI
   */
  record Point(double x, double y, double half, double si, double expanded) {}

  /** A limit. */
  record Edge(double at, double si, String text, String words, boolean upper) {}

  /**
   * Where the curve passes a limit.
   *
   * @param half expanded uncertainty of the place; 0 where it cannot be stated
   */
  record Crossing(Edge edge, double x, double half, String words) {}

  /** What is written. */
  record Words(String result, String input, String now, String description) {}

  private final List<Point> curve;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Edge> leftOut = new ArrayList<>();
  private final List<Crossing> crossings;
  private final Optional<Point> now;
  private final Optional<Verdict> verdict;
  private final Words words;
  private final AxisScale across;
  private final AxisScale up;
  private final SvgWriter svg;
  private final Labels labels = new Labels(LEFT + 4, TOP + 14, RIGHT - 2, BOTTOM - 4);

  AgainstDrawing(
      List<Point> curve,
      List<Edge> limits,
      List<Crossing> crossings,
      Optional<Point> now,
      Optional<Verdict> verdict,
      Words words) {
    this.curve = curve;
    this.crossings = crossings;
    this.now = now;
    this.verdict = verdict;
    this.words = words;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double first = Double.NaN;
    double last = Double.NaN;
    for (Point point : curve) {
      if (point != null) {
        low = Math.min(low, point.y() - point.half());
        high = Math.max(high, point.y() + point.half());
        first = Double.isNaN(first) ? point.x() : first;
        last = point.x();
      }
    }
    double span = high - low > 0 ? high - low : Math.max(Math.abs(high), 1) * 0.1;
    for (Edge edge : limits) {
      boolean near = edge.at() > low - FARTHEST * span && edge.at() < high + FARTHEST * span;
      (near ? edges : leftOut).add(edge);
    }
    for (Edge edge : edges) {
      low = Math.min(low, edge.at() - 0.12 * span);
      high = Math.max(high, edge.at() + 0.12 * span);
    }
    double margin = high > low ? 0.04 * (high - low) : span;
    up = AxisScale.widened(low - margin, high + margin, BOTTOM, TOP, 5);
    across = new AxisScale(first, last, LEFT, RIGHT, 9);
    svg = new SvgWriter("chart", WIDTH, HEIGHT, words.description(), ChartInk.BOTH);
  }

  /** Limits so far off that they are not drawn. */
  List<Edge> leftOut() {
    return leftOut;
  }

  /** The round numbers of the input's axis. */
  List<BigDecimal> ticks() {
    return across.ticks();
  }

  String svg() {
    beyond();
    grid();
    band();
    for (Edge edge : edges) {
      double y = up.at(edge.at());
      svg.path("chart-limit", new SvgPath().line(LEFT, y, RIGHT, y));
      labels.keepClear(LEFT, y, RIGHT, y);
    }
    curve();
    axes();
    edges.forEach(this::name);
    crossings.forEach(this::crossing);
    now.ifPresent(this::now);
    return svg.finished();
  }

  private void beyond() {
    SvgPath hatching = new SvgPath();
    double lowest = Double.NEGATIVE_INFINITY;
    double highest = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      lowest = edge.upper() ? lowest : Math.max(lowest, edge.at());
      highest = edge.upper() ? Math.min(highest, edge.at()) : highest;
    }
    if (lowest > Double.NEGATIVE_INFINITY) {
      hatching.hatch(LEFT, up.at(lowest), RIGHT, BOTTOM, 9);
    }
    if (highest < Double.POSITIVE_INFINITY) {
      hatching.hatch(LEFT, TOP, RIGHT, up.at(highest), 9);
    }
    svg.path("chart-beyond", hatching);
  }

  private void grid() {
    SvgPath grid = new SvgPath();
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      grid.line(LEFT, y, RIGHT, y);
    }
    svg.path("chart-grid", grid);
  }

  /** Each stretch of the curve without a gap. */
  private List<List<Point>> stretches() {
    List<List<Point>> stretches = new ArrayList<>();
    List<Point> open = new ArrayList<>();
    for (Point point : curve) {
      if (point != null) {
        open.add(point);
      } else if (!open.isEmpty()) {
        stretches.add(open);
        open = new ArrayList<>();
      }
    }
    if (!open.isEmpty()) {
      stretches.add(open);
    }
    return stretches;
  }

  private void band() {
    SvgPath band = new SvgPath();
    for (List<Point> stretch : stretches()) {
      if (stretch.stream().allMatch(p -> p.half() == 0) || stretch.size() < 2) {
        continue;
      }
      for (int i = 0; i < stretch.size(); i++) {
        Point p = stretch.get(i);
        step(band, i == 0, across.at(p.x()), up.at(p.y() + p.half()));
      }
      for (int i = stretch.size() - 1; i >= 0; i--) {
        Point p = stretch.get(i);
        band.to(across.at(p.x()), up.at(p.y() - p.half()));
      }
      band.close();
    }
    svg.path("chart-band", band);
  }

  private void curve() {
    SvgPath line = new SvgPath();
    for (List<Point> stretch : stretches()) {
      for (int i = 0; i < stretch.size(); i++) {
        Point p = stretch.get(i);
        double x = across.at(p.x());
        step(line, i == 0, x, up.at(p.y()));
        labels.keepClear(x - 6, up.at(p.y() + p.half()) - 3, x + 6, up.at(p.y() - p.half()) + 3);
      }
    }
    svg.path("chart-curve", line);
  }

  private static void step(SvgPath path, boolean first, double x, double y) {
    if (first) {
      path.from(x, y);
    } else {
      path.to(x, y);
    }
  }

  private void axes() {
    SvgPath axes = new SvgPath().from(LEFT, TOP).to(LEFT, BOTTOM).to(RIGHT, BOTTOM);
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      axes.line(LEFT - 5, y, LEFT, y);
      svg.text("chart-number", LEFT - 9, y + 4.5, Anchor.END, up.text(tick));
    }
    for (BigDecimal tick : across.ticks()) {
      double x = across.at(tick.doubleValue());
      axes.line(x, BOTTOM, x, BOTTOM + 5);
      svg.text("chart-number", x, BOTTOM + 19, Anchor.MIDDLE, across.text(tick));
    }
    svg.path("chart-axis", axes);
    svg.text("chart-caption", LEFT, TOP - 7, Anchor.START, words.result());
    svg.text("chart-caption", RIGHT, BOTTOM + 38, Anchor.END, words.input());
  }

  /** On the side where the value must not be, at the end where the curve is farther away. */
  private void name(Edge edge) {
    double y = up.at(edge.at());
    double breadth = Labels.breadth(edge.words());
    List<Point> there = curve.stream().filter(p -> p != null).toList();
    double atLeft = Math.abs(up.at(there.get(0).y()) - y);
    double atRight = Math.abs(up.at(there.get(there.size() - 1).y()) - y);
    double x = atLeft >= atRight ? LEFT + 8 : RIGHT - 8 - breadth;
    boolean above = edge.upper() == (edge.upper() ? y - TOP > 22 : BOTTOM - y > 22);
    double foot = above ? y - 5 : y + 17;
    svg.rectangle("chart-plate", x - 3, foot - 13, breadth + 4, 17);
    svg.text("chart-label", x, foot, Anchor.START, edge.words());
    labels.keepClear(x - 3, foot - 13, x + breadth + 1, foot + 4);
  }

  private void crossing(Crossing crossing) {
    if (leftOut.contains(crossing.edge())) {
      return;
    }
    double x = across.at(crossing.x());
    double y = up.at(crossing.edge().at());
    svg.path("chart-lead", new SvgPath().line(x, y, x, BOTTOM));
    labels.keepClear(x, y, x, BOTTOM);
    if (crossing.half() > 0) {
      double from = across.at(crossing.x() - crossing.half());
      double to = across.at(crossing.x() + crossing.half());
      double foot = BOTTOM - 10;
      SvgPath width = new SvgPath().line(from, foot, to, foot);
      if (across.holds(crossing.x() - crossing.half())) {
        width.line(from, foot - 4, from, foot + 4);
      }
      if (across.holds(crossing.x() + crossing.half())) {
        width.line(to, foot - 4, to, foot + 4);
      }
      svg.path("chart-dimension", width);
      labels.keepClear(from, foot - 5, to, foot + 5);
    }
    svg.circle("chart-cross", x, y, 4.5);
    labels.keepClear(x - 6, y - 6, x + 6, y + 6);
    labels.label(svg, x, y, crossing.words());
  }

  private void now(Point point) {
    double x = across.at(point.x());
    double y = up.at(point.y());
    if (point.half() > 0) {
      double top = up.at(point.y() + point.half());
      double foot = up.at(point.y() - point.half());
      svg.path(
          "chart-whisker",
          new SvgPath()
              .line(x, top, x, foot)
              .line(x - 4, top, x + 4, top)
              .line(x - 4, foot, x + 4, foot));
    }
    ChartMark.draw(svg, verdict, x, y);
    labels.keepClear(x - 7, y - 7, x + 7, y + 7);
    labels.label(svg, x, y, words.now());
  }
}
