package endfloat.picture;

import endfloat.engine.Verdict;
import java.util.Optional;

/** The mark of a value on a chart: its shape is its verdict, as on a limit strip. */
final class ChartMark {
  private ChartMark() {}

  static void draw(SvgWriter svg, Optional<Verdict> verdict, double x, double y) {
    if (verdict.isEmpty()) {
      svg.circle("chart-mark", x, y, 3.6);
      return;
    }
    switch (verdict.get()) {
      case WITHIN -> svg.circle("chart-within", x, y, 4.6);
      case NOT_PROVEN ->
          svg.path(
              "chart-not-proven",
              new SvgPath().from(x, y - 6).to(x + 6, y).to(x, y + 6).to(x - 6, y).close());
      case OUTSIDE ->
          svg.path(
              "chart-outside",
              new SvgPath().from(x, y - 6.6).to(x + 6, y + 4.6).to(x - 6, y + 4.6).close());
    }
  }
}
