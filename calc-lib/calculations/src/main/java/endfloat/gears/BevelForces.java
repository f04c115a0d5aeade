package endfloat.gears;

import endfloat.numerics.Nought;

/**
 * Forces of a bevel mesh from the direction of the flank normal, {@code cos α (cos β t − sin β e) +
 * sin α n}: t the tangent, e along the pitch cone outwards, n its normal.
 *
 * @param tangential F_t at the middle of the face [N]
 * @param pressureAngle α_n [rad]
 * @param spiralAngle β [rad], positive where it pushes the driver away from the apex
 */
record BevelForces(double tangential, double pressureAngle, double spiralAngle) {

  double normal() {
    return tangential / (StrictMath.cos(pressureAngle) * StrictMath.cos(spiralAngle));
  }

  double axialDriver(double cone) {
    return snapped(separating() * StrictMath.sin(cone) + endways() * StrictMath.cos(cone));
  }

  double radialDriver(double cone) {
    return snapped(separating() * StrictMath.cos(cone) - endways() * StrictMath.sin(cone));
  }

  double axialDriven(double cone) {
    return snapped(separating() * StrictMath.sin(cone) - endways() * StrictMath.cos(cone));
  }

  double radialDriven(double cone) {
    return snapped(separating() * StrictMath.cos(cone) + endways() * StrictMath.sin(cone));
  }

  /** A crown gear is pushed along its shaft only. */
  private double snapped(double force) {
    return Nought.snapped(force, tangential);
  }

  /** Normal to the pitch cone. */
  private double separating() {
    return tangential * StrictMath.tan(pressureAngle) / StrictMath.cos(spiralAngle);
  }

  /** Along the pitch cone. */
  private double endways() {
    return tangential * StrictMath.tan(spiralAngle);
  }
}
