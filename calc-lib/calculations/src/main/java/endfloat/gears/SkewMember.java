package endfloat.gears;

/** One gear of a skew pair. */
record SkewMember(double teeth, double normalModule, double helix, double normalAngle) {

  double transverseModule() {
    return normalModule / StrictMath.cos(helix);
  }

  double pitchDiameter() {
    return transverseModule() * teeth;
  }

  double transverseAngle() {
    return Involute.transverse(normalAngle, helix);
  }

  /** Tangential force for a unit of normal force, friction along the teeth with it. */
  double along(double pressureAngle, double friction) {
    return StrictMath.cos(pressureAngle) * StrictMath.cos(helix) + friction * StrictMath.sin(helix);
  }

  /** Axial force for a unit of normal force. */
  double across(double pressureAngle, double friction) {
    return StrictMath.cos(pressureAngle) * StrictMath.sin(helix) - friction * StrictMath.cos(helix);
  }

  /** From the pitch point to where the tip leaves contact, along the common normal [m]. */
  double reach(double addendum) {
    double radius = pitchDiameter() / 2;
    double base = radius * StrictMath.cos(transverseAngle());
    double tip = radius + addendum * normalModule;
    return (Math.sqrt(tip * tip - base * base) - radius * StrictMath.sin(transverseAngle()))
        / StrictMath.cos(Involute.baseHelix(helix, normalAngle));
  }
}
