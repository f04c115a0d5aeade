package endfloat.gears;

import endfloat.definition.OutOfRangeException;

/** The spur or helical pair of the back cones of a bevel pair, Tredgold's approximation. */
final class EquivalentPair {
  private final ContactPath path;

  /** 1/r_v1 + 1/r_v2 [1/m]; a rack adds nothing. */
  private final double curvature;

  /** F_n / F_t. */
  private final double normalShare;

  /**
   * @param teeth1 virtual number of teeth, likewise teeth2; infinite for a rack
   * @param module transverse, at the middle of the face [m]
   */
  EquivalentPair(
      double teeth1,
      double teeth2,
      double module,
      double pressureAngle,
      double spiralAngle,
      double addendum) {
    double angle = Involute.transverse(pressureAngle, spiralAngle);
    double height = addendum * module * StrictMath.cos(spiralAngle);
    double radius1 = module * teeth1 / 2;
    double radius2 = module * teeth2 / 2;
    double cos = StrictMath.cos(angle);
    double basePitch = StrictMath.PI * module * cos;
    path =
        Double.isInfinite(radius2)
            ? rack(radius1, height, angle, basePitch)
            : ContactPath.of(
                radius1 + height, radius1 * cos, radius2 + height, radius2 * cos, angle, basePitch);
    curvature = 1 / radius1 + 1 / radius2;
    normalShare = 1 / (StrictMath.cos(pressureAngle) * StrictMath.cos(spiralAngle));
  }

  private static ContactPath rack(double radius, double height, double angle, double basePitch) {
    double base = radius * StrictMath.cos(angle);
    double tip = radius + height;
    double recess = Math.sqrt(tip * tip - base * base) - base * StrictMath.tan(angle);
    double approach = height / StrictMath.sin(angle);
    double tangent = base * StrictMath.tan(angle);
    return new ContactPath(Math.min(approach, tangent), recess, basePitch, approach > tangent);
  }

  ContactPath path() {
    return path;
  }

  double contactRatio() {
    return path.ratio();
  }

  double sliding(double distance, double pitchLineSpeed) {
    return pitchLineSpeed * curvature * distance;
  }

  double efficiency(double friction) {
    double loss = friction * normalShare * curvature * path.meanDistance();
    if (!(loss < 1)) {
      throw new OutOfRangeException(
          "friction", friction, 0, friction / loss, "1", "above it the mesh locks");
    }
    return 1 - loss;
  }
}
