package endfloat.engine;

import endfloat.numerics.Normal;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How many standard uncertainties an expanded uncertainty holds: k where these are well known, more
 * where they rest on a few readings (JCGM 100:2008, G.3 and G.4: Student's t for the effective
 * degrees of freedom, with the coverage probability of k).
 */
final class Coverage {
  /** From here up Student's t is the normal distribution, to more figures than are shown. */
  private static final double MANY = 1e6;

  private static final int MOST_KEPT = 1000;
  private static final Map<Key, Double> KEPT = new ConcurrentHashMap<>();

  private record Key(double k, double degrees) {}

  private Coverage() {}

  /**
   * The coverage factor.
   *
   * @param k for infinitely many degrees of freedom
   * @param degrees effective degrees of freedom; infinite, or NaN where none can be stated
   */
  static double factor(double k, double degrees) {
    if (isNormal(degrees)) {
      return k;
    }
    if (KEPT.size() > MOST_KEPT) {
      KEPT.clear();
    }
    return KEPT.computeIfAbsent(
        new Key(k, degrees), key -> student(degrees).inverseCumulativeProbability(Normal.below(k)));
  }

  /** Share below z standard uncertainties. */
  static double below(double z, double degrees) {
    return isNormal(degrees) ? Normal.below(z) : student(degrees).cumulativeProbability(z);
  }

  private static boolean isNormal(double degrees) {
    return !(degrees < MANY);
  }

  private static TDistribution student(double degrees) {
    return new TDistribution(null, degrees);
  }
}
