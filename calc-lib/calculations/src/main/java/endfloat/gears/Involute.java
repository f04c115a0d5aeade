package endfloat.gears;

/** The involute function and the angles of helical teeth. */
final class Involute {
  private Involute() {}

  /** inv α = tan α − α. */
  static double inv(double angle) {
    return StrictMath.tan(angle) - angle;
  }

  /** α_t of α_n and β: tan α_t = tan α_n / cos β. */
  static double transverse(double normalAngle, double helixAngle) {
    return StrictMath.atan(StrictMath.tan(normalAngle) / StrictMath.cos(helixAngle));
  }

  /** β_b of β and α_n: sin β_b = sin β cos α_n. */
  static double baseHelix(double helixAngle, double normalAngle) {
    return StrictMath.asin(StrictMath.sin(helixAngle) * StrictMath.cos(normalAngle));
  }

  /**
   * The angle whose involute function is a value, by Newton's method from Cheng's first term.
   *
   * @param value 0 or more
   */
  static double angleOf(double value) {
    double angle = StrictMath.cbrt(3 * value);
    for (int i = 0; i < 60; i++) {
      double tan = StrictMath.tan(angle);
      double step = (tan - angle - value) / (tan * tan);
      angle -= step;
      if (!(Math.abs(step) > 1e-16 * angle)) {
        break;
      }
    }
    return angle;
  }
}
