package endfloat.statistics;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import java.util.Arrays;
import java.util.Comparator;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.Variance;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** What a column of values comes to. */
public final class Columns {
  private Columns() {}

  /**
   * A column summed up.
   *
   * @param values n, how many
   * @param mean of them
   * @param deviation standard deviation of one value, n − 1 degrees of freedom
   * @param meanDeviation standard deviation of the mean of independent values, {@code s/√n}
   * @param least value
   * @param lowerQuartile a quarter of the values lie below
   * @param median half of the values lie below
   * @param upperQuartile three quarters of the values lie below
   * @param greatest value
   */
  public record Summary(
      @In("1") double values,
      @In("<x>") double mean,
      @In("<x>-<x>") double deviation,
      @In("<x>-<x>") double meanDeviation,
      @In("<x>") double least,
      @In("<x>") double lowerQuartile,
      @In("<x>") double median,
      @In("<x>") double upperQuartile,
      @In("<x>") double greatest) {}

  /**
   * A column summed up: how many values, their mean and spread, and where they lie.
   *
   * <p>Quartiles lie between the values next to the rank {@code p (n + 1)}.
   *
   * @param x the values, three or more
   * @return what they come to
   * @throws RefusedException with fewer than three values, which tell no quartile
   */
  @Calculates(
      source =
          "NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.1, 1.3.5.6 and 7.2.6.2;"
              + " deviation of the mean: JCGM 100:2008, 4.2",
      cautions = {
        "Places and stations are no repeats: the spread of readings round a wheel is run-out, and"
            + " its mean gets no better with more of them."
      },
      partials = "columnSummaryPartials",
      terms = {"statistics", "average", "standard deviation", "quartile", "spread", "sample"})
  public static Summary columnSummary(@In("<x>") double[] x) {
    int n = x.length;
    if (n < 3) {
      throw new RefusedException(n + " values tell no quartiles; it takes three or more");
    }
    double[] sorted = x.clone();
    Arrays.sort(sorted);
    double deviation = deviation(x);
    Percentile quartiles = new Percentile();
    quartiles.setData(sorted);
    return new Summary(
        n,
        mean(x),
        deviation,
        deviation / Math.sqrt(n),
        sorted[0],
        quartiles.evaluate(25),
        quartiles.evaluate(50),
        quartiles.evaluate(75),
        sorted[n - 1]);
  }

  /** How each of the results moves with each of the values. */
  public static double[][] columnSummaryPartials(double[] x) {
    int n = x.length;
    double[][] partials = new double[9][n];
    double mean = mean(x);
    double deviation = deviation(x);
    Integer[] order = new Integer[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
      partials[1][i] = 1.0 / n;
      partials[2][i] = deviation == 0 ? Double.NaN : (x[i] - mean) / (deviation * (n - 1));
      partials[3][i] = partials[2][i] / Math.sqrt(n);
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> x[i]));
    partials[4][order[0]] = 1;
    double[] shares = {0.25, 0.5, 0.75};
    for (int q = 0; q < shares.length; q++) {
      double rank = shares[q] * (n + 1);
      int below = (int) Math.floor(rank);
      partials[5 + q][order[below - 1]] += 1 - (rank - below);
      if (rank > below) {
        partials[5 + q][order[below]] += rank - below;
      }
    }
    partials[8][order[n - 1]] = 1;
    return partials;
  }

  /** In two passes, the second taking up what the first has rounded off. */
  static double mean(double[] x) {
    return new Mean().evaluate(x);
  }

  /** Exactly 0 where all are the same, whatever their mean was rounded to. */
  static double deviation(double[] x) {
    return isConstant(x) ? 0 : Math.sqrt(new Variance().evaluate(x));
  }

  static boolean isConstant(double[] x) {
    for (double value : x) {
      if (value != x[0]) {
        return false;
      }
    }
    return true;
  }

  static void holdPairs(double[] x, double[] y, int least) {
    if (x.length != y.length) {
      throw new RefusedException(
          "x and y must be equally many: " + x.length + " against " + y.length);
    }
    if (x.length < least) {
      throw new RefusedException(
          "there are " + x.length + " points; it takes " + least + " or more");
    }
  }
}
