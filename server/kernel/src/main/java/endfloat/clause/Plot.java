package endfloat.clause;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** A small chart of points and curves against one axis, as SVG, in the colour of its text. */
public final class Plot {
  private static final double WIDTH = 560;
  private static final double HEIGHT = 260;
  private static final double LEFT = 64;
  private static final double BOTTOM = 44;
  private static final double MARGIN = 14;
  private static final double TOP = 26;
  private static final int STEPS = 180;
  private static final double[] NICE = {1, 2, 2.5, 5, 10};

  private final String across;
  private final String up;
  private final List<double[][]> lines = new ArrayList<>();
  private final List<double[][]> points = new ArrayList<>();

  /**
   * An empty chart.
   *
   * @param across what goes to the right, with its unit
   * @param up what goes upwards, with its unit
   */
  public Plot(String across, String up) {
    this.across = across;
    this.up = up;
  }

  /** Marks of readings. */
  public Plot points(double[] x, double[] y) {
    points.add(new double[][] {x.clone(), y.clone()});
    return this;
  }

  /** A line through points. */
  public Plot line(double[] x, double[] y) {
    lines.add(new double[][] {x.clone(), y.clone()});
    return this;
  }

  /** A curve from one end to the other. */
  public Plot curve(double from, double to, DoubleUnaryOperator curve) {
    double[] x = new double[STEPS + 1];
    double[] y = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      x[i] = from + (to - from) * i / STEPS;
      y[i] = curve.applyAsDouble(x[i]);
    }
    return line(x, y);
  }

  /** The SVG document. */
  public String svg() {
    double[] xs = scale(0);
    double[] ys = scale(1);
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s against %s\" font-size=\"11\""
                + " fill=\"currentColor\" stroke=\"none\"><title>%s against %s</title>",
            WIDTH,
            HEIGHT,
            escaped(up),
            escaped(across),
            escaped(up),
            escaped(across)));
    for (double tick = xs[0]; tick <= xs[1] + xs[2] / 2; tick += xs[2]) {
      double x = x(tick, xs);
      stroke(svg, x, HEIGHT - BOTTOM, x, HEIGHT - BOTTOM + 4, 0.8);
      text(svg, x, HEIGHT - BOTTOM + 17, "middle", number(tick, xs[2]));
    }
    for (double tick = ys[0]; tick <= ys[1] + ys[2] / 2; tick += ys[2]) {
      double y = y(tick, ys);
      stroke(svg, LEFT - 4, y, LEFT, y, 0.8);
      text(svg, LEFT - 8, y + 4, "end", number(tick, ys[2]));
    }
    stroke(svg, LEFT, HEIGHT - BOTTOM, WIDTH - MARGIN, HEIGHT - BOTTOM, 0.8);
    stroke(svg, LEFT, TOP, LEFT, HEIGHT - BOTTOM, 0.8);
    text(svg, (LEFT + WIDTH - MARGIN) / 2, HEIGHT - 8, "middle", across);
    text(svg, 0, TOP - 10, "start", up);
    for (double[][] line : lines) {
      svg.append("<polyline fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.4\" points=\"");
      for (int i = 0; i < line[0].length; i++) {
        svg.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(line[0][i], xs), y(line[1][i], ys)));
      }
      svg.append("\"/>");
    }
    for (double[][] some : points) {
      for (int i = 0; i < some[0].length; i++) {
        svg.append(
            String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\"/>",
                x(some[0][i], xs),
                y(some[1][i], ys)));
      }
    }
    return svg.append("</svg>").toString();
  }

  /** First tick, last tick, step. */
  private double[] scale(int which) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    List<double[][]> all = new ArrayList<>(lines);
    all.addAll(points);
    for (double[][] one : all) {
      for (double value : one[which]) {
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
      }
    }
    if (!(greatest > least)) {
      greatest = least + 1;
    }
    double rough = (greatest - least) / 5;
    double ten = StrictMath.pow(10, Math.floor(StrictMath.log10(rough)));
    double step = ten * 10;
    for (double nice : NICE) {
      if (nice * ten >= rough) {
        step = nice * ten;
        break;
      }
    }
    return new double[] {
      Math.floor(least / step + 1e-9) * step, Math.ceil(greatest / step - 1e-9) * step, step
    };
  }

  private static double x(double value, double[] scale) {
    return LEFT + (value - scale[0]) / (scale[1] - scale[0]) * (WIDTH - MARGIN - LEFT);
  }

  private static double y(double value, double[] scale) {
    return HEIGHT - BOTTOM - (value - scale[0]) / (scale[1] - scale[0]) * (HEIGHT - BOTTOM - TOP);
  }

  private static String number(double value, double step) {
    int decimals = (int) Math.max(0, -Math.floor(StrictMath.log10(step) + 1e-9));
    String text =
        String.format(
            Locale.ROOT, "%." + Math.min(8, decimals + (isQuarter(step) ? 1 : 0)) + "f", value);
    return text.replaceFirst("^-(0\\.?0*)$", "$1").replace('-', '\u2212');
  }

  private static boolean isQuarter(double step) {
    double ten = StrictMath.pow(10, Math.floor(StrictMath.log10(step) + 1e-9));
    return Math.abs(step / ten - 2.5) < 1e-6;
  }

  private static void stroke(
      StringBuilder svg, double x1, double y1, double x2, double y2, double width) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"currentColor\""
                + " stroke-width=\"%.1f\"/>",
            x1,
            y1,
            x2,
            y2,
            width));
  }

  private static void text(StringBuilder svg, double x, double y, String anchor, String text) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>",
            x,
            y,
            anchor,
            escaped(text)));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
