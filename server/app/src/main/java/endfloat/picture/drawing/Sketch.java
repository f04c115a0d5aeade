package endfloat.picture.drawing;

import endfloat.picture.Ink;
import endfloat.picture.SvgPath;
import endfloat.picture.SvgWriter;
import endfloat.picture.SvgWriter.Anchor;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * One line drawing in the conventions of the trade: outlines thick, dimensions thin with filled
 * arrow heads, axes as chain lines, hidden edges dashed. Names written by {@link #dimension},
 * {@link #angle}, {@link #move} and {@link #named} are those of arguments, and are kept so that a
 * test can hold them to the calculation.
 */
final class Sketch {
  static final double WIDTH = 340;
  static final double HEIGHT = 200;
  private static final double HEAD = 7;
  private static final double HALF_HEAD = 2.4;
  private static final double TEXT_ABOVE = 4;
  private static final int ARC_STEPS = 40;

  private final SvgWriter svg;
  private final Set<String> names = new LinkedHashSet<>();

  Sketch(String caption) {
    svg = new SvgWriter("drawing", WIDTH, HEIGHT, caption, Ink.PAGE);
  }

  String finished() {
    return svg.finished();
  }

  /** Arguments that it names. */
  Set<String> names() {
    return names;
  }

  /** A thick line through points: x and y in turn. */
  Sketch outline(double... points) {
    svg.path("drawing-outline", line(points));
    return this;
  }

  /** The same, closed. */
  Sketch body(double... points) {
    svg.path("drawing-body", line(points).close());
    return this;
  }

  Sketch thin(double... points) {
    svg.path("drawing-thin", line(points));
    return this;
  }

  Sketch hidden(double... points) {
    svg.path("drawing-hidden", line(points));
    return this;
  }

  /** An axis. */
  Sketch centre(double... points) {
    svg.path("drawing-centre", line(points));
    return this;
  }

  Sketch circle(double x, double y, double radius) {
    svg.circle("drawing-body", x, y, radius);
    return this;
  }

  /** A pitch circle or another line that is no edge. */
  Sketch pitchCircle(double x, double y, double radius) {
    svg.circle("drawing-centre", x, y, radius);
    return this;
  }

  Sketch hiddenCircle(double x, double y, double radius) {
    svg.circle("drawing-hidden", x, y, radius);
    return this;
  }

  /** Two short chain lines through a centre. */
  Sketch cross(double x, double y, double half) {
    return centre(x - half, y, x + half, y).centre(x, y - half, x, y + half);
  }

  Sketch dot(double x, double y) {
    svg.circle("drawing-dot", x, y, 2.2);
    return this;
  }

  /** A thick arc; angles in degrees from +x towards +y, which is down. */
  Sketch arc(double x, double y, double radius, double from, double to) {
    return outline(arcPoints(x, y, radius, from, to));
  }

  Sketch hatch(double left, double top, double right, double bottom) {
    svg.path("drawing-hatch", new SvgPath().hatch(left, top, right, bottom, 6));
    return this;
  }

  /** A rectangle cut through: hatched. */
  Sketch section(double left, double top, double right, double bottom) {
    return hatch(left, top, right, bottom)
        .outline(left, top, right, top, right, bottom, left, bottom, left, top);
  }

  /** A dimension between two points, the name above its line. */
  Sketch dimension(double x1, double y1, double x2, double y2, String name) {
    name(name);
    return dimensionOf(x1, y1, x2, y2, name);
  }

  /** A dimension that is no argument, in words. */
  Sketch dimensionOf(double x1, double y1, double x2, double y2, String words) {
    thin(x1, y1, x2, y2);
    head(x2, y2, x1, y1);
    head(x1, y1, x2, y2);
    boolean upright = Math.abs(x1 - x2) < Math.abs(y1 - y2);
    if (upright) {
      svg.text("drawing-name", (x1 + x2) / 2 + 5, (y1 + y2) / 2 + 4, Anchor.START, words);
    } else {
      svg.text("drawing-name", (x1 + x2) / 2, (y1 + y2) / 2 - TEXT_ABOVE, Anchor.MIDDLE, words);
    }
    return this;
  }

  /** An angle by an arc with heads; the name beside its middle. */
  Sketch angle(double x, double y, double radius, double from, double to, String name) {
    name(name);
    double[] points = arcPoints(x, y, radius, from, to);
    thin(points);
    int last = points.length - 2;
    head(points[last], points[last + 1], points[last - 8], points[last - 7]);
    head(points[0], points[1], points[8], points[9]);
    double middle = StrictMath.toRadians((from + to) / 2);
    double dx = StrictMath.cos(middle);
    return text(
        x + (radius + 6) * dx,
        y + (radius + 8) * StrictMath.sin(middle) + 4,
        dx < -0.3 ? Anchor.END : dx > 0.3 ? Anchor.START : Anchor.MIDDLE,
        name);
  }

  /** The direction that counts as positive: a heavy arrow with its name and a plus. */
  Sketch move(double x1, double y1, double x2, double y2, String name) {
    name(name);
    return arrow(x1, y1, x2, y2).nameAt(x1, y1, x2, y2, "+ " + name);
  }

  /** A force or another arrow with its name. */
  Sketch acts(double x1, double y1, double x2, double y2, String name) {
    name(name);
    return arrow(x1, y1, x2, y2).nameAt(x1, y1, x2, y2, name);
  }

  /** A heavy arrow without a name. */
  Sketch arrow(double x1, double y1, double x2, double y2) {
    svg.path("drawing-move", new SvgPath().line(x1, y1, x2, y2));
    svg.path("drawing-move-head", triangle(x2, y2, x1, y1, 10, 4));
    return this;
  }

  /** A thin line from a place to the name of the argument that it is. */
  Sketch named(double x, double y, double toX, double toY, String name) {
    name(name);
    return leader(x, y, toX, toY, name);
  }

  /** The name of an argument alone. */
  Sketch named(double x, double y, Anchor anchor, String name) {
    name(name);
    return text(x, y, anchor, name);
  }

  /** The same in words that are no argument. */
  Sketch leader(double x, double y, double toX, double toY, String words) {
    thin(x, y, toX, toY);
    svg.circle("drawing-dot", x, y, 1.7);
    boolean right = toX >= x;
    return text(toX + (right ? 4 : -4), toY + 4, right ? Anchor.START : Anchor.END, words);
  }

  /** Words of the trade. */
  Sketch words(double x, double y, Anchor anchor, String words) {
    svg.text("drawing-words", x, y, anchor, words);
    return this;
  }

  /** A mark in front of a name is not part of it. */
  private void name(String written) {
    if (!written.isEmpty()) {
      names.add(written.replace("+ ", ""));
    }
  }

  private Sketch nameAt(double x1, double y1, double x2, double y2, String name) {
    boolean upright = Math.abs(x1 - x2) < Math.abs(y1 - y2);
    if (upright) {
      return text(Math.max(x1, x2) + 7, (y1 + y2) / 2 + 4, Anchor.START, name);
    }
    return text((x1 + x2) / 2, Math.min(y1, y2) - 7, Anchor.MIDDLE, name);
  }

  private Sketch text(double x, double y, Anchor anchor, String words) {
    svg.text("drawing-name", x, y, anchor, words);
    return this;
  }

  private void head(double x, double y, double fromX, double fromY) {
    svg.path("drawing-head", triangle(x, y, fromX, fromY, HEAD, HALF_HEAD));
  }

  private static SvgPath triangle(
      double x, double y, double fromX, double fromY, double length, double half) {
    double distance = StrictMath.hypot(x - fromX, y - fromY);
    double dx = (x - fromX) / distance;
    double dy = (y - fromY) / distance;
    double backX = x - length * dx;
    double backY = y - length * dy;
    return new SvgPath()
        .from(x, y)
        .to(backX - half * dy, backY + half * dx)
        .to(backX + half * dy, backY - half * dx)
        .close();
  }

  private static double[] arcPoints(double x, double y, double radius, double from, double to) {
    double[] points = new double[2 * (ARC_STEPS + 1)];
    for (int i = 0; i <= ARC_STEPS; i++) {
      double angle = StrictMath.toRadians(from + (to - from) * i / ARC_STEPS);
      points[2 * i] = x + radius * StrictMath.cos(angle);
      points[2 * i + 1] = y + radius * StrictMath.sin(angle);
    }
    return points;
  }

  private static SvgPath line(double... points) {
    SvgPath path = new SvgPath().from(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.to(points[i], points[i + 1]);
    }
    return path;
  }
}
