package endfloat.statistics;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.ranking.NaturalRanking;

/** Whether two columns go together. */
public final class Correlation {
  /** Up to here the chance of a rank correlation is counted out over all orders. */
  private static final int COUNTED_OUT = 9;

  private static final String NO_CAUSE =
      "Two columns that go together need not have to do with each other; a third may move both.";
  private static final String CHOSEN =
      "Out of many pairs of columns some go together by chance; say how many were tried.";

  private Correlation() {}

  /**
   * Linear correlation of two columns.
   *
   * @param coefficient r, −1 to 1
   * @param low lower end of its 95 % interval
   * @param high upper end of its 95 % interval
   * @param chance probability of one as strong, of either sign, where nothing goes together
   * @param pairs n, how many
   */
  public record Linear(
      @In("1") double coefficient,
      @In("1") double low,
      @In("1") double high,
      @In("1") double chance,
      @In("1") double pairs) {}

  /**
   * Linear correlation (Pearson): how closely the points of two columns lie to a straight line.
   *
   * <p>Interval and chance hold where both scatter normally; one point far out can make or hide it,
   * so look at the points.
   *
   * @param x values
   * @param y values, one for each x
   * @return coefficient, its 95 % interval by Fisher's transformation, and the chance
   * @throws endfloat.definition.RefusedException with fewer than four pairs, unequal lists or a
   *     column that never varies
   */
  @Calculates(
      source =
          "Pearson's coefficient; interval by R. A. Fisher's transformation z = artanh r with"
              + " standard deviation 1/√(n − 3), chance by t with n − 2 degrees of freedom:"
              + " Hollander and Wolfe, Nonparametric Statistical Methods (1973), chapter 8",
      cautions = {NO_CAUSE, CHOSEN},
      partials = "linearCorrelationPartials",
      terms = {"Pearson", "r", "relation", "association"})
  public static Linear linearCorrelation(@In("<x>") double[] x, @In("<y>") double[] y) {
    Columns.holdPairs(x, y, 4);
    double r = LeastSquares.together(x, y).coefficient();
    double reach = new NormalDistribution().inverseCumulativeProbability(0.975);
    double half = reach / Math.sqrt(x.length - 3.0);
    double z = 0.5 * StrictMath.log((1 + r) / (1 - r));
    boolean whole = Math.abs(r) == 1;
    return new Linear(
        r,
        whole ? r : StrictMath.tanh(z - half),
        whole ? r : StrictMath.tanh(z + half),
        chance(r, x.length),
        x.length);
  }

  /** How each of the results moves with each x and each y. */
  public static double[][] linearCorrelationPartials(double[] x, double[] y) {
    LeastSquares sums = LeastSquares.together(x, y);
    Linear all = linearCorrelation(x, y);
    int n = x.length;
    double r = all.coefficient();
    double rest = (1 - r) * (1 + r);
    double t = Math.abs(r) * Math.sqrt((n - 2) / rest);
    // at 0 the chance turns, at 1 the interval has no width
    double chance =
        r == 0
            ? Double.NaN
            : -2
                * Math.signum(r)
                * new TDistribution(n - 2.0).density(t)
                * Math.sqrt(n - 2.0)
                / (rest * Math.sqrt(rest));
    double[] byCoefficient = {
      1, (1 - all.low() * all.low()) / rest, (1 - all.high() * all.high()) / rest, chance, 0
    };
    double[][] partials = new double[5][2 * n];
    for (int k = 0; k < partials.length; k++) {
      for (int i = 0; i < n; i++) {
        partials[k][i] = byCoefficient[k] * sums.coefficientByX(i);
        partials[k][n + i] = byCoefficient[k] * sums.coefficientByY(i);
      }
    }
    return partials;
  }

  /**
   * Rank correlation of two columns.
   *
   * @param coefficient ρ, −1 to 1
   * @param chance probability of one as strong, of either sign, where nothing goes together
   * @param pairs n, how many
   */
  public record Ranked(
      @In("1") double coefficient, @In("1") double chance, @In("1") double pairs) {}

  /**
   * Rank correlation (Spearman): whether one column rises with the other, however it does.
   *
   * <p>Equal values share the mean of their ranks. The chance is counted out over all orders up to
   * nine pairs without equal values, and for columns in one order throughout; else it is that of t
   * with n − 2 degrees of freedom, which far out is rough with few pairs.
   *
   * @param x values
   * @param y values, one for each x
   * @return coefficient and chance
   * @throws endfloat.definition.RefusedException with fewer than four pairs, unequal lists or a
   *     column that never varies
   */
  @Calculates(
      source =
          "Spearman's coefficient: Hollander and Wolfe, Nonparametric Statistical Methods (1973),"
              + " chapter 8",
      cautions = {
        NO_CAUSE,
        CHOSEN,
        "What goes by ranks is taken as exact: values within their uncertainty of one another might"
            + " stand in another order."
      },
      partials = "rankCorrelationPartials",
      terms = {"Spearman", "rank", "relation", "association", "monotonic"})
  public static Ranked rankCorrelation(@In("<x>") double[] x, @In("<y>") double[] y) {
    Columns.holdPairs(x, y, 4);
    NaturalRanking ranking = new NaturalRanking();
    double[] a = ranking.rank(x);
    double[] b = ranking.rank(y);
    double rho = LeastSquares.together(a, b).coefficient();
    boolean counted = x.length <= COUNTED_OUT && isDistinct(a) && isDistinct(b);
    double chance =
        counted ? countedOut(a, b) : isInOneOrder(a, b) ? ofOneOrder(a) : chance(rho, x.length);
    return new Ranked(rho, chance, x.length);
  }

  /** Whether one column rises, or falls, wherever the other does, equal values with equal ones. */
  private static boolean isInOneOrder(double[] a, double[] b) {
    double[] falling = new double[b.length];
    for (int i = 0; i < b.length; i++) {
      falling[i] = b.length + 1 - b[i];
    }
    return Arrays.equals(a, b) || Arrays.equals(a, falling);
  }

  /** Share of all orders that are this one or its opposite: t has no end, orders have. */
  private static double ofOneOrder(double[] ranks) {
    double[] sorted = ranks.clone();
    Arrays.sort(sorted);
    double share = 2;
    int alike = 0;
    for (int i = 0; i < sorted.length; i++) {
      alike = i > 0 && sorted[i] == sorted[i - 1] ? alike + 1 : 1;
      // of the n! orders those that only exchange equal values are no others
      share *= (double) alike / (i + 1);
    }
    return Math.min(1, share);
  }

  /** Ranks do not move with small changes of the values. */
  public static double[][] rankCorrelationPartials(double[] x, double[] y) {
    return new double[3][x.length + y.length];
  }

  private static double chance(double r, int n) {
    if (Math.abs(r) == 1) {
      return 0;
    }
    double t = Math.abs(r) * Math.sqrt((n - 2) / ((1 - r) * (1 + r)));
    return 2 * new TDistribution(n - 2.0).cumulativeProbability(-t);
  }

  private static boolean isDistinct(double[] ranks) {
    return Arrays.stream(ranks).distinct().count() == ranks.length;
  }

  /** Share of all orders whose squared differences of rank are as few, or as many, as these. */
  private static double countedOut(double[] a, double[] b) {
    int n = a.length;
    double[] order = new double[n];
    for (int i = 0; i < n; i++) {
      order[(int) a[i] - 1] = b[i];
    }
    long found = squares(order);
    long most = (long) n * (n * (long) n - 1) / 3;
    long reach = Math.abs(2 * found - most);
    long[] counts = new long[2];
    permute(new double[n], 0, new boolean[n], reach, most, counts);
    return (double) counts[0] / counts[1];
  }

  private static long squares(double[] order) {
    long sum = 0;
    for (int i = 0; i < order.length; i++) {
      long off = i + 1 - (long) order[i];
      sum += off * off;
    }
    return sum;
  }

  private static void permute(
      double[] order, int at, boolean[] taken, long reach, long most, long[] counts) {
    if (at == order.length) {
      counts[0] += Math.abs(2 * squares(order) - most) >= reach ? 1 : 0;
      counts[1]++;
      return;
    }
    for (int rank = 0; rank < order.length; rank++) {
      if (!taken[rank]) {
        taken[rank] = true;
        order[at] = rank + 1;
        permute(order, at + 1, taken, reach, most, counts);
        taken[rank] = false;
      }
    }
  }
}
