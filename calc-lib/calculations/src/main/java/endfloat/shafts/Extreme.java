package endfloat.shafts;

/**
 * The largest magnitude of a quantity along a beam and where it lies.
 *
 * @param value with its sign
 * @param at from the left end [m]
 */
record Extreme(double value, double at) {
  private static final int STEPS = 32;

  /** A quantity at a distance from the left end of a span. */
  interface Along {
    double at(int span, double s);
  }

  /**
   * Samples every span, then closes in on the turning point by halving. A span's polynomial has at
   * most four turning points, so 32 samples miss none that matters.
   *
   * @param rise derivative of the quantity along the span, or anything of the same sign
   */
  static Extreme of(BeamLine beam, Along quantity, Along rise) {
    Extreme best = new Extreme(quantity.at(0, 0), 0);
    double[] nodes = beam.nodes();
    for (int i = 0; i < beam.spanCount(); i++) {
      double step = beam.span(i).length() / STEPS;
      for (int j = 0; j <= STEPS; j++) {
        best = best.or(quantity, i, step * j, nodes[i]);
        if (j < STEPS && turns(rise, i, step * j, step * (j + 1))) {
          best = best.or(quantity, i, turning(rise, i, step * j, step * (j + 1)), nodes[i]);
        }
      }
    }
    return best;
  }

  private Extreme or(Along quantity, int i, double s, double start) {
    double there = quantity.at(i, s);
    return Math.abs(there) > Math.abs(value) ? new Extreme(there, start + s) : this;
  }

  private static boolean turns(Along rise, int i, double low, double high) {
    return Math.signum(rise.at(i, low)) * Math.signum(rise.at(i, high)) < 0;
  }

  private static double turning(Along rise, int i, double from, double to) {
    double low = from;
    double high = to;
    double sign = Math.signum(rise.at(i, low));
    for (int n = 0; n < 60; n++) {
      double middle = (low + high) / 2;
      if (Math.signum(rise.at(i, middle)) == sign) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
