package endfloat.picture;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** One axis of a chart: round numbers in the unit shown, and where each stands. */
final class AxisScale {
  private final double low;
  private final double high;
  private final double start;
  private final double end;
  private final List<BigDecimal> ticks = new ArrayList<>();

  /**
   * @param low least number shown
   * @param high greatest
   * @param start coordinate of the least
   * @param end coordinate of the greatest
   * @param about how many steps there should be, roughly
   */
  AxisScale(double low, double high, double start, double end, int about) {
    if (!(low < high)) {
      throw new IllegalArgumentException("an axis from " + low + " to " + high);
    }
    this.low = low;
    this.high = high;
    this.start = start;
    this.end = end;
    BigDecimal step = step((high - low) / about);
    BigDecimal first = BigDecimal.valueOf(low).divide(step, 0, RoundingMode.CEILING);
    double slack = 1e-9 * (high - low);
    for (BigDecimal at = first.subtract(BigDecimal.ONE).multiply(step);
        at.doubleValue() <= high + slack;
        at = at.add(step)) {
      if (at.doubleValue() >= low - slack) {
        ticks.add(at);
      }
    }
  }

  /** The same with its ends moved out to whole steps. */
  static AxisScale widened(double low, double high, double start, double end, int about) {
    BigDecimal step = step((high - low) / about);
    double from = whole(low, step, RoundingMode.FLOOR);
    double to = whole(high, step, RoundingMode.CEILING);
    return new AxisScale(from, to, start, end, about);
  }

  private static double whole(double at, BigDecimal step, RoundingMode way) {
    // an end that is a whole step but for rounding is one
    BigDecimal steps =
        BigDecimal.valueOf(at).divide(step, MathContext.DECIMAL64).round(new MathContext(12));
    return steps.setScale(0, way).multiply(step).doubleValue();
  }

  /** 1, 2 or 5 times a power of ten, at least this. */
  private static BigDecimal step(double least) {
    int power = (int) Math.floor(StrictMath.log10(least));
    for (int p = power; ; p++) {
      for (int digit : new int[] {1, 2, 5}) {
        BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(p);
        if (step.doubleValue() >= least * (1 - 1e-9)) {
          return step;
        }
      }
    }
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  double start() {
    return start;
  }

  double end() {
    return end;
  }

  /** Coordinate of a number, held at the ends. */
  double at(double number) {
    double held = Math.min(Math.max(number, low), high);
    return start + (held - low) / (high - low) * (end - start);
  }

  boolean holds(double number) {
    double slack = 1e-9 * (high - low);
    return number >= low - slack && number <= high + slack;
  }

  List<BigDecimal> ticks() {
    return ticks;
  }

  /** A tick as it is printed, all of one axis to the same place. */
  String text(BigDecimal tick) {
    int places = 0;
    for (BigDecimal one : ticks) {
      places = Math.max(places, one.stripTrailingZeros().scale());
    }
    return tick.setScale(places, RoundingMode.HALF_EVEN).toPlainString().replace('-', '\u2212');
  }
}
