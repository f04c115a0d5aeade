package endfloat.contact;

import endfloat.definition.RefusedException;

/**
 * The elliptical area in which two elastic bodies touch, by Hertz, with complete elliptic integrals
 * and no chart.
 *
 * @param major a, half the long axis [m]
 * @param minor b, half the short axis [m]
 * @param pressure p₀, greatest [Pa]
 * @param approach δ, of distant points [m]
 */
public record ContactEllipse(double major, double minor, double pressure, double approach) {

  /**
   * The ellipse for a gap of two curvatures.
   *
   * @param sum A + B, half the sum of all four curvatures [1/m]
   * @param difference B − A, 0 or more and below the sum [1/m]
   * @param force [N]
   * @param contactModulus E*, 1/E* = (1 − ν₁²)/E₁ + (1 − ν₂²)/E₂ [Pa]
   * @throws RefusedException if the bodies touch along a line or all over
   */
  public static ContactEllipse of(
      double sum, double difference, double force, double contactModulus) {
    double a = (sum - difference) / 2;
    double b = (sum + difference) / 2;
    if (!(a > 0) || !(a > 1e-9 * b)) {
      throw new RefusedException(
          "the bodies touch along a line or fit into each other: there is no ellipse of contact");
    }
    double flatness = flatness(b / a);
    double e2 = 1 - flatness * flatness;
    double[] integrals = integrals(flatness);
    // (K − E)/e² has a limit of π/4 for a circle, where both run out of figures
    double share =
        e2 < 1e-6 ? StrictMath.PI / 4 * (1 + 3 * e2 / 8) : (integrals[0] - integrals[1]) / e2;
    double major = StrictMath.cbrt(3 * force * share / (2 * StrictMath.PI * contactModulus * a));
    double minor = major * flatness;
    double pressure = 3 * force / (2 * StrictMath.PI * major * minor);
    return new ContactEllipse(
        major, minor, pressure, pressure * minor * integrals[0] / contactModulus);
  }

  /** b/a of the ellipse for a ratio B/A of 1 or more, by halving in its logarithm. */
  private static double flatness(double ratio) {
    if (ratio < 1 + 1e-12) {
      return 1;
    }
    double low = -16;
    double high = 0;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (curvatureRatio(StrictMath.exp(middle)) > ratio) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return StrictMath.exp((low + high) / 2);
  }

  private static double curvatureRatio(double flatness) {
    double e2 = 1 - flatness * flatness;
    if (e2 < 1e-6) {
      return 1 + 3 * e2 / 4;
    }
    double[] integrals = integrals(flatness);
    return (integrals[1] / (flatness * flatness) - integrals[0]) / (integrals[0] - integrals[1]);
  }

  /**
   * Complete elliptic integrals {K, E} of the modulus √(1 − k'²), by the arithmetic-geometric mean.
   */
  static double[] integrals(double complementary) {
    double a = 1;
    double g = complementary;
    double c2 = 1 - complementary * complementary;
    double sum = c2 / 2;
    double power = 0.5;
    for (int i = 0; i < 40 && Math.abs(a - g) > 1e-16 * a; i++) {
      double c = (a - g) / 2;
      double next = (a + g) / 2;
      g = Math.sqrt(a * g);
      a = next;
      power *= 2;
      sum += power * c * c;
    }
    double k = StrictMath.PI / (2 * a);
    return new double[] {k, k * (1 - sum)};
  }
}
