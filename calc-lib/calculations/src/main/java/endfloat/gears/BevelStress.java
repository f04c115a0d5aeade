package endfloat.gears;

import endfloat.units.Uncertain;

/**
 * Nominal stresses of bevel teeth at the middle of the face, by the equivalent pair of the back
 * cones.
 *
 * @param tangential F_t there [N]
 * @param face width b [m]
 * @param module transverse, there [m]
 * @param pressureAngle α_n [rad]
 * @param spiral β, without sign [rad]
 */
record BevelStress(
    double tangential, double face, double module, double pressureAngle, double spiral) {
  private static final double STANDARD = StrictMath.toRadians(20);

  private String missing() {
    return tangential == 0
        ? "without a torque there is no stress: give torque"
        : face == 0 ? "the stress needs face_width" : "";
  }

  /**
   * Hertz pressure along the line of contact.
   *
   * @param contactModulus E* [Pa]
   * @param radius1 of the equivalent gear 1, likewise radius2; infinite for a rack [m]
   */
  Uncertain contact(double contactModulus, double radius1, double radius2) {
    if (!missing().isEmpty()) {
      return Uncertain.absent(missing());
    }
    double transverse = Involute.transverse(pressureAngle, spiral);
    double cosBase = StrictMath.cos(Involute.baseHelix(spiral, pressureAngle));
    double curvature = cosBase / StrictMath.sin(transverse) * (1 / radius1 + 1 / radius2);
    double normal = tangential / (StrictMath.cos(pressureAngle) * StrictMath.cos(spiral));
    double length = face / cosBase;
    return new Uncertain(
        Math.sqrt(normal * contactModulus * curvature / (StrictMath.PI * length)), 0);
  }

  /** Lewis stress of a tooth of the equivalent gear, its number of teeth carried to the normal. */
  Uncertain bending(double virtualTeeth) {
    if (!missing().isEmpty()) {
      return Uncertain.absent(missing());
    }
    double cos = StrictMath.cos(spiral);
    double teeth = virtualTeeth / (cos * cos * cos);
    if (Math.abs(pressureAngle - STANDARD) > 1e-9 || teeth < 12) {
      return Uncertain.absent(
          "Lewis's form factors are for teeth of 20 deg and 12 virtual teeth or more");
    }
    return new Uncertain(tangential / (face * module * cos * LewisForm.factor(teeth)), 0);
  }
}
