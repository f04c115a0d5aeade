package endfloat.gears;

import endfloat.definition.RefusedException;
import java.util.Locale;

/**
 * The path of contact of an involute pair in its transverse section, gear 1 driving: from the tip
 * of gear 2 (approach) through the pitch point to the tip of gear 1 (recess).
 *
 * @param approach length before the pitch point [m]
 * @param recess length after it [m]
 * @param basePitch transverse base pitch [m]
 * @param undercut whether a tip reaches below the mate's base circle, where no involute is; the
 *     path is then counted to the base tangent point only
 */
record ContactPath(double approach, double recess, double basePitch, boolean undercut) {

  /**
   * @param tip1 tip radius r_a1 [m], likewise tip2
   * @param base1 base radius r_b1 [m], likewise base2
   * @param angle α_wt, working, transverse [rad]
   * @param basePitch p_bt [m]
   */
  static ContactPath of(
      double tip1, double base1, double tip2, double base2, double angle, double basePitch) {
    double tangent1 = base1 * StrictMath.tan(angle);
    double tangent2 = base2 * StrictMath.tan(angle);
    double recess = reach(tip1, base1) - tangent1;
    double approach = reach(tip2, base2) - tangent2;
    boolean undercut = approach > tangent1 || recess > tangent2;
    return new ContactPath(
        Math.min(approach, tangent1), Math.min(recess, tangent2), basePitch, undercut);
  }

  private static double reach(double tip, double base) {
    return Math.sqrt(Math.max(0, tip * tip - base * base));
  }

  /**
   * Refuses teeth of which one pair parts before the next meets: they do not carry on the motion.
   *
   * @param ratio of contact, that along the face with it
   */
  static void needNextPair(double ratio) {
    if (!(ratio >= 1)) {
      throw new RefusedException(
          String.format(
              Locale.ROOT,
              "one pair of teeth parts before the next meets: their contact ratio is %.2f and must be"
                  + " 1 at least; check tip heights and centre distance",
              ratio));
    }
  }

  /** ε_α. */
  double ratio() {
    return (approach + recess) / basePitch;
  }

  /**
   * Mean distance of the tooth load from the pitch point [m], taken over one base pitch (or the
   * path, where it is shorter: helical teeth overlap), where pairs in contact at one time share the
   * load equally. Between one and two pairs this is the loss factor of Ohlendorf, {@code (1 − ε_α +
   * ε₁² + ε₂²)/2} of a base pitch.
   */
  double meanDistance() {
    int most = (int) Math.ceil(ratio());
    double sum = 0;
    // where the number of pairs in contact changes: each end, and whole base pitches from the other
    double[] cuts = new double[2 * most + 3];
    int n = 0;
    for (int k = 0; k <= most; k++) {
      cuts[n++] = Math.min(recess, -approach + k * basePitch);
      cuts[n++] = Math.max(-approach, recess - k * basePitch);
    }
    cuts[n] = 0;
    java.util.Arrays.sort(cuts);
    for (int i = 0; i + 1 < cuts.length; i++) {
      double from = Math.max(-approach, cuts[i]);
      double to = Math.min(recess, cuts[i + 1]);
      if (to > from) {
        double middle = (from + to) / 2;
        // |x| is linear between cuts, for 0 is one
        sum += Math.abs(middle) * (to - from) / pairsAt(middle);
      }
    }
    return sum / Math.min(basePitch, approach + recess);
  }

  private int pairsAt(double x) {
    return 1
        + (int) Math.floor((recess - x) / basePitch)
        + (int) Math.floor((x + approach) / basePitch);
  }
}
