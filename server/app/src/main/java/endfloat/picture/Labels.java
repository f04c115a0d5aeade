package endfloat.picture;

import endfloat.picture.SvgWriter.Anchor;
import java.util.ArrayList;
import java.util.List;

/** Puts labels of a chart where they cover nothing, each on a leader from what it names. */
final class Labels {
  private static final double HEIGHT = 17;
  private static final double[][] WAYS = {
    {26, -44},
    {-26, -44},
    {26, 50},
    {-26, 50},
    {60, -24},
    {-60, -24},
    {60, 34},
    {-60, 34},
    {26, -90},
    {-26, -90},
    {26, 96},
    {-26, 96}
  };

  private final double left;
  private final double top;
  private final double right;
  private final double bottom;
  private final List<double[]> taken = new ArrayList<>();

  /** Labels stay inside this rectangle. */
  Labels(double left, double top, double right, double bottom) {
    this.left = left;
    this.top = top;
    this.right = right;
    this.bottom = bottom;
  }

  /** Breadth of a text in the lettering at 13.5 px, on the safe side. */
  static double breadth(String text) {
    return 7.4 * text.codePointCount(0, text.length());
  }

  /** Nothing may cover this. */
  void keepClear(double x1, double y1, double x2, double y2) {
    taken.add(
        new double[] {Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2)});
  }

  /** A label on a leader from a point. */
  void label(SvgWriter svg, double x, double y, String text) {
    double breadth = breadth(text);
    double[] best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double[] way : WAYS) {
      double footX = x + way[0];
      double footY = y + way[1];
      double from = way[0] > 0 ? footX : footX - breadth;
      double[] box = {from, footY - HEIGHT, from + breadth, footY + 4};
      double cost = cost(box);
      if (cost < least) {
        least = cost;
        best = new double[] {footX, footY, from, from + breadth, way[0]};
      }
    }
    svg.rectangle("chart-plate", best[2], best[1] - HEIGHT, best[3] - best[2], HEIGHT);
    double startX = x + Math.signum(best[4]) * 4;
    double startY = y + Math.signum(best[1] - y) * 6;
    svg.path(
        "chart-leader",
        new SvgPath()
            .from(startX, startY)
            .to(best[0], best[1])
            .to(best[4] > 0 ? best[3] : best[2], best[1]));
    svg.text(
        "chart-name",
        best[4] > 0 ? best[0] + 3 : best[0] - 3,
        best[1] - 4,
        best[4] > 0 ? Anchor.START : Anchor.END,
        text);
    keepClear(best[2], best[1] - HEIGHT, best[3], best[1] + 2);
  }

  private double cost(double[] box) {
    double outside =
        Math.max(0, left - box[0])
            + Math.max(0, top - box[1])
            + Math.max(0, box[2] - right)
            + Math.max(0, box[3] - bottom);
    double covered = 0;
    for (double[] other : taken) {
      double wide = Math.min(box[2], other[2]) - Math.max(box[0], other[0]);
      double high = Math.min(box[3], other[3]) - Math.max(box[1], other[1]);
      // a line has no area, but is covered all the same
      covered += wide >= 0 && high >= 0 ? (wide + 1) * (high + 1) : 0;
    }
    return 1000 * outside + covered;
  }
}
