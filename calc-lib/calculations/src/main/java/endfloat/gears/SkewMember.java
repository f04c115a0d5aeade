package endfloat.gears;

import endfloat.contact.ContactEllipse;

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

  /** Curvature of the flank across its straight generator, at the pitch point [1/m]. */
  double curvature() {
    return cosBaseHelix() / (pitchDiameter() / 2 * StrictMath.sin(transverseAngle()));
  }

  private double cosBaseHelix() {
    return StrictMath.cos(Involute.baseHelix(helix, normalAngle));
  }

  /** Where its flank touches that of a mate: two cylinders whose generators cross. */
  ContactEllipse contact(
      SkewMember mate, double pressureAngle, double normalForce, double contactModulus) {
    double sin = StrictMath.sin(pressureAngle);
    double crossing =
        (StrictMath.cos(helix) * StrictMath.cos(mate.helix)
                - StrictMath.sin(helix) * StrictMath.sin(mate.helix) * sin * sin)
            / (cosBaseHelix() * mate.cosBaseHelix());
    double twice = 2 * crossing * crossing - 1;
    double one = curvature();
    double other = mate.curvature();
    double squares = one * one + other * other + 2 * one * other * twice;
    return ContactEllipse.of(
        (one + other) / 2, Math.sqrt(Math.max(0, squares)) / 2, normalForce, contactModulus);
  }
}
