package endfloat.plates;

import java.util.function.DoubleUnaryOperator;

/** The greatest values of a plate over its radius. */
final class PlateSurvey {
  private static final int STEPS = 400;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * @param value with its sign
   * @param at radius [m]
   */
  record Greatest(double value, double at) {}

  private PlateSurvey() {}

  /** Largest magnitude between two radii: sampled, then closed in upon by golden section. */
  static Greatest of(DoubleUnaryOperator quantity, double from, double to) {
    double step = (to - from) / STEPS;
    Greatest best = new Greatest(quantity.applyAsDouble(from), from);
    for (int i = 1; i <= STEPS; i++) {
      double r = i == STEPS ? to : from + step * i;
      double value = quantity.applyAsDouble(r);
      if (Math.abs(value) > Math.abs(best.value)) {
        best = new Greatest(value, r);
      }
    }
    double low = Math.max(from, best.at - step);
    double high = Math.min(to, best.at + step);
    double sign = Math.signum(best.value);
    for (int n = 0; n < 50; n++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      if (sign * quantity.applyAsDouble(a) >= sign * quantity.applyAsDouble(b)) {
        high = b;
      } else {
        low = a;
      }
    }
    double middle = (low + high) / 2;
    double value = quantity.applyAsDouble(middle);
    return sign * value > sign * best.value ? new Greatest(value, middle) : best;
  }
}
