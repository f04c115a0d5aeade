package endfloat.shafts;

/**
 * A stretch of a beam with one section and one distributed load that may grow evenly along it.
 *
 * @param length [m]
 * @param bending E I [N m²]
 * @param shear k G A [N]; infinite where shear is left out
 * @param loadStart load per length at the left end, positive in the direction of positive
 *     deflection [N/m]
 * @param loadEnd load per length at the right end [N/m]
 */
record Span(double length, double bending, double shear, double loadStart, double loadEnd) {

  boolean isStiffInShear() {
    return Double.isInfinite(shear);
  }

  /** The load integrated so many times from the left end to s. */
  double loadIntegral(int times, double s) {
    double steady = loadStart;
    double growing = (loadEnd - loadStart) / length * s;
    for (int k = 1; k <= times; k++) {
      steady *= s / k;
      growing *= s / (k + 1);
    }
    return steady + growing;
  }

  /**
   * Forces and couples on the nodes that do the same as the distributed load: those of the span
   * with both ends clamped, turned round. Order: force left, couple left, force right, couple
   * right.
   */
  double[] endLoads() {
    if (loadStart == 0 && loadEnd == 0) {
      return new double[4];
    }
    double give = isStiffInShear() ? 0 : bending / shear;
    double l = length;
    double turn = loadIntegral(3, l);
    double sag = loadIntegral(4, l) - give * loadIntegral(2, l);
    // no slope and no deflection at the right end give shear V and moment M at the left one:
    // M l + V l²/2 = turn, M l²/2 + V (l³/6 − give l) = sag
    double shearLeft = (sag - turn * l / 2) / (-l * l * l / 12 - give * l);
    double momentLeft = turn / l - shearLeft * l / 2;
    return new double[] {
      shearLeft,
      -momentLeft,
      loadIntegral(1, l) - shearLeft,
      momentLeft + shearLeft * l - loadIntegral(2, l)
    };
  }
}
