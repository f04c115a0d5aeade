package endfloat.picture;

import java.util.Arrays;

/**
 * Where the values of a sample lie: quantiles between the values next to the rank p (n + 1), as
 * {@code quantile} of the language gives them.
 */
record Quartiles(
    int count, double least, double lower, double median, double upper, double greatest) {
  static Quartiles of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return new Quartiles(
        n, sorted[0], at(sorted, 0.25), at(sorted, 0.5), at(sorted, 0.75), sorted[n - 1]);
  }

  private static double at(double[] sorted, double share) {
    double rank = share * (sorted.length + 1);
    int below = (int) Math.floor(rank);
    if (below < 1) {
      return sorted[0];
    }
    if (below >= sorted.length) {
      return sorted[sorted.length - 1];
    }
    return sorted[below - 1] + (rank - below) * (sorted[below] - sorted[below - 1]);
  }
}
