package endfloat.alignment;

import endfloat.definition.RefusedException;
import java.util.Locale;

/**
 * How the teeth of a coupling share its load, as far as an endways thrust knows it.
 *
 * @param meanCos mean of cos φ over the load, φ from the tilt axis
 * @param meanSign mean of the sign of cos φ over the load
 * @param said in words
 */
record ToothShares(double meanCos, double meanSign, String said) {

  /** Part of the load on the half of the teeth about φ = 0, each half sharing its part evenly. */
  static ToothShares ofHalf(double share) {
    double oneSided = 2 * share - 1;
    return new ToothShares(
        oneSided * 2 / StrictMath.PI,
        oneSided,
        String.format(
            Locale.ROOT,
            "%.4g %% of the load on the half about the tilt axis's start",
            share * 100));
  }

  /** Loads of teeth evenly spaced round the coupling, the first at an angle from the tilt axis. */
  static ToothShares ofTeeth(double[] shares, double first) {
    double sum = 0;
    double cos = 0;
    double sign = 0;
    for (int i = 0; i < shares.length; i++) {
      double c = StrictMath.cos(first + 2 * StrictMath.PI * i / shares.length);
      sum += shares[i];
      cos += shares[i] * c;
      // a tooth on the line where sliding turns round drags neither way
      sign += Math.abs(c) < 1e-12 ? 0 : shares[i] * Math.signum(c);
    }
    if (!(sum > 0)) {
      throw new RefusedException("the teeth carry no load: give shares above zero");
    }
    return new ToothShares(
        cos / sum, sign / sum, "shares of " + shares.length + " teeth, as given");
  }
}
