package endfloat.shafts;

import java.util.function.ToDoubleFunction;

/**
 * The largest magnitude of a quantity along a beam and where it lies.
 *
 * @param value with its sign
 * @param at from the left end [m]
 */
record Extreme(double value, double at) {
  private static final int STEPS = 64;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * Samples every span, then closes in by golden section. A span's polynomial of degree four has at
   * most three turning points, so 64 samples miss none that matters.
   */
  static Extreme of(BeamLine beam, ToDoubleFunction<BeamLine.State> quantity) {
    Extreme best = new Extreme(quantity.applyAsDouble(beam.within(0, 0)), 0);
    double[] nodes = beam.nodes();
    for (int i = 0; i < beam.spanCount(); i++) {
      double length = beam.span(i).length();
      for (int j = 0; j <= STEPS; j++) {
        double s = length * j / STEPS;
        double value = quantity.applyAsDouble(beam.within(i, s));
        if (Math.abs(value) > Math.abs(best.value)) {
          best = closeIn(beam, quantity, i, s, length / STEPS, nodes[i]);
        }
      }
    }
    return best;
  }

  private static Extreme closeIn(
      BeamLine beam,
      ToDoubleFunction<BeamLine.State> quantity,
      int i,
      double s,
      double step,
      double start) {
    double low = Math.max(0, s - step);
    double high = Math.min(beam.span(i).length(), s + step);
    double sign = Math.signum(quantity.applyAsDouble(beam.within(i, s)));
    Extreme best = new Extreme(quantity.applyAsDouble(beam.within(i, s)), start + s);
    for (int n = 0; n < 60; n++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      if (sign * quantity.applyAsDouble(beam.within(i, a))
          >= sign * quantity.applyAsDouble(beam.within(i, b))) {
        high = b;
      } else {
        low = a;
      }
    }
    double middle = (low + high) / 2;
    double value = quantity.applyAsDouble(beam.within(i, middle));
    return sign * value > sign * best.value ? new Extreme(value, start + middle) : best;
  }
}
