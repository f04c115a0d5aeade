package endfloat.shafts;

/**
 * A beam at one place: what runs along it from left to right.
 *
 * @param deflection y, the way the loads point [m]
 * @param slope θ, turn of the section [rad]
 * @param moment M, sagging [N m]
 * @param shear V = dM/dx [N]
 */
record BeamState(double deflection, double slope, double moment, double shear) {

  /** The state a distance on in a span. */
  BeamState along(Span span, double s) {
    double turned = (moment * s + shear * s * s / 2 - span.loadIntegral(3, s)) / span.bending();
    double sag =
        (moment * s * s / 2 + shear * s * s * s / 6 - span.loadIntegral(4, s)) / span.bending();
    double sheared =
        span.isStiffInShear() ? 0 : (shear * s - span.loadIntegral(2, s)) / span.shear();
    return new BeamState(
        deflection + slope * s - sag + sheared,
        slope - turned,
        moment + shear * s - span.loadIntegral(2, s),
        shear - span.loadIntegral(1, s));
  }

  /** The state just past a force and a couple. */
  BeamState past(double force, double couple) {
    return new BeamState(deflection, slope, moment + couple, shear - force);
  }

  /** dy/dx: the slope of the section and the shear's own. */
  double rise(Span span) {
    return slope + (span.isStiffInShear() ? 0 : shear / span.shear());
  }
}
