package endfloat.numerics;

/** Values that are nought but for the rounding of what they were worked out from. */
public final class Nought {
  private static final double ROUNDING = 1e-12;

  private Nought() {}

  /** The value, or 0 where it is no more than rounding beside the largest of its kind. */
  public static double snapped(double value, double largest) {
    return Math.abs(value) <= ROUNDING * Math.abs(largest) ? 0 : value;
  }

  /** Each value likewise. */
  public static double[] snapped(double[] values, double largest) {
    double[] all = new double[values.length];
    for (int i = 0; i < all.length; i++) {
      all[i] = snapped(values[i], largest);
    }
    return all;
  }
}
