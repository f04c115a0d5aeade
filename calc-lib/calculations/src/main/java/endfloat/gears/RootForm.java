package endfloat.gears;

import endfloat.definition.RefusedException;

/**
 * The root of a spur tooth cut by a rack, as ISO 6336-3 measures it: the section where the 30°
 * tangents touch the fillet, and the lever of the load. Lengths in modules.
 *
 * @param chord s_F, thickness of the root
 * @param lever h_F, of the load over it
 * @param radius ρ_F, of the fillet there
 * @param loadAngle α_F, of the load against the normal to the tooth's middle
 * @param pressureAngle α, of the rack
 */
record RootForm(double chord, double lever, double radius, double loadAngle, double pressureAngle) {

  /**
   * @param teeth z
   * @param shift x, profile shift
   * @param addendum of the tooth
   * @param dedendum h_fP of the rack, so addendum of the cutter
   * @param rootRadius ρ_fP of the rack
   * @param contactRatio ε; 1 puts the load at the tip, else at the outer end of single contact
   */
  static RootForm of(
      double teeth,
      double shift,
      double pressureAngle,
      double addendum,
      double dedendum,
      double rootRadius,
      double contactRatio) {
    double sin = StrictMath.sin(pressureAngle);
    double cos = StrictMath.cos(pressureAngle);
    double tan = StrictMath.tan(pressureAngle);
    double e = StrictMath.PI / 4 - dedendum * tan - (1 - sin) * rootRadius / cos;
    double g = rootRadius - dedendum + shift;
    double h = 2 / teeth * (StrictMath.PI / 2 - e) - StrictMath.PI / 3;
    double theta = tangentAngle(teeth, g, h);
    double chord =
        teeth * StrictMath.sin(StrictMath.PI / 3 - theta)
            + Math.sqrt(3) * (g / StrictMath.cos(theta) - rootRadius);
    double cosTheta = StrictMath.cos(theta);
    double radius = rootRadius + 2 * g * g / (cosTheta * (teeth * cosTheta * cosTheta - 2 * g));
    double base = teeth * cos / 2;
    double tip = teeth / 2 + addendum + shift;
    double along = Math.sqrt(tip * tip - base * base) - StrictMath.PI * cos * (contactRatio - 1);
    double loaded = Math.sqrt(along * along + base * base);
    double angle = StrictMath.acos(base / loaded);
    double half =
        (StrictMath.PI / 2 + 2 * shift * tan) / teeth
            + Involute.inv(pressureAngle)
            - Involute.inv(angle);
    double loadAngle = angle - half;
    double lever =
        ((StrictMath.cos(half) - StrictMath.sin(half) * StrictMath.tan(loadAngle)) * 2 * loaded
                - teeth * StrictMath.cos(StrictMath.PI / 3 - theta)
                - g / cosTheta
                + rootRadius)
            / 2;
    if (!(chord > 0 && lever > 0 && radius > 0)) {
      throw new RefusedException(
          "with this rack and profile shift no sound root is left: the standard has no value for it");
    }
    return new RootForm(chord, lever, radius, loadAngle, pressureAngle);
  }

  /** θ = 2 G/z tan θ − H by Newton; the standard starts from 30°. */
  private static double tangentAngle(double teeth, double g, double h) {
    double theta = StrictMath.PI / 6;
    for (int i = 0; i < 50; i++) {
      double cos = StrictMath.cos(theta);
      double f = theta - 2 * g / teeth * StrictMath.tan(theta) + h;
      double step = f / (1 - 2 * g / (teeth * cos * cos));
      theta -= step;
      if (Math.abs(step) < 1e-15) {
        return theta;
      }
    }
    throw new RefusedException("the root of this tooth cannot be found; its form is not usual");
  }

  /** Y_F. */
  double formFactor() {
    return 6 * lever * StrictMath.cos(loadAngle) / (chord * chord * StrictMath.cos(pressureAngle));
  }

  /** Y_S, for 1 ≤ s_F/(2 ρ_F) &lt; 8. */
  double stressCorrection() {
    double slender = chord / lever;
    double notch = chord / (2 * radius);
    if (!(notch >= 1 && notch < 8)) {
      throw new RefusedException(
          "the fillet of this tooth is outside the range in which ISO 6336-3 corrects the stress");
    }
    return (1.2 + 0.13 * slender) * StrictMath.pow(notch, 1 / (1.21 + 2.3 / slender));
  }
}
