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
}
