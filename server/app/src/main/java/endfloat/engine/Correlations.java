package endfloat.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which roots vary together (JCGM 100, 5.2). All others are independent.
 *
 * <p>Coefficients are only taken together where they can be true together: a matrix that is not
 * positive semi-definite is refused by {@link #refusal}.
 */
public final class Correlations {
  public static final Correlations NONE = new Correlations(List.of());

  /** A negative pivot of this size is rounding, not a contradiction. */
  private static final double PIVOT_ROUNDING = 1e-12;

  /** Two roots and their coefficient of correlation, -1 to 1. */
  public record Pair(Root first, Root second, double coefficient) {}

  private final List<Pair> pairs;
  private final Map<Root, List<Pair>> byRoot = new HashMap<>();

  Correlations(List<Pair> pairs) {
    this.pairs = List.copyOf(pairs);
    for (Pair pair : pairs) {
      byRoot.computeIfAbsent(pair.first(), r -> new ArrayList<>()).add(pair);
    }
  }

  public boolean isEmpty() {
    return pairs.isEmpty();
  }

  public List<Pair> pairs() {
    return pairs;
  }

  /** Whether two roots of the gradient are correlated. */
  boolean touch(Gradient gradient) {
    if (pairs.isEmpty()) {
      return false;
    }
    for (Pair pair : pairs) {
      if (gradient.part(pair.first()) != 0 && gradient.part(pair.second()) != 0) {
        return true;
      }
    }
    return false;
  }

  /** The standard uncertainty of a value with this gradient (JCGM 100, formula 16). */
  double standardUncertainty(Gradient gradient) {
    double variance = gradient.squares();
    if (!pairs.isEmpty()) {
      for (int i = 0; i < gradient.size(); i++) {
        List<Pair> mine = byRoot.get(gradient.root(i));
        if (mine != null) {
          for (Pair pair : mine) {
            variance += 2 * pair.coefficient() * gradient.part(i) * gradient.part(pair.second());
          }
        }
      }
    }
    return variance <= 0 ? 0 : Math.sqrt(variance);
  }

  /** Covariance of two values with these gradients. */
  double covariance(Gradient x, Gradient y) {
    double sum = 0;
    for (int i = 0; i < x.size(); i++) {
      sum += x.part(i) * y.part(x.root(i));
    }
    for (Pair pair : pairs) {
      sum +=
          pair.coefficient()
              * (x.part(pair.first()) * y.part(pair.second())
                  + x.part(pair.second()) * y.part(pair.first()));
    }
    return sum;
  }

  /**
   * Effective degrees of freedom by Welch and Satterthwaite (JCGM 100, G.4). It is a formula for
   * independent roots: NaN, so not stated, where two roots of the gradient are correlated and one
   * of all is finite; infinite where all are.
   */
  double degreesOfFreedom(Gradient gradient, double standardUncertainty) {
    boolean finite = false;
    for (int i = 0; i < gradient.size() && !finite; i++) {
      finite = gradient.root(i).degreesOfFreedom() < Double.POSITIVE_INFINITY;
    }
    if (!finite || standardUncertainty == 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (touch(gradient)) {
      return Double.NaN;
    }
    double sum = 0;
    for (int i = 0; i < gradient.size(); i++) {
      double share = gradient.part(i) / standardUncertainty;
      share *= share;
      sum += share * share / gradient.root(i).degreesOfFreedom();
    }
    return 1 / sum;
  }

  /**
   * The roots that cannot be correlated as said, in the order given; empty where all can. By
   * Cholesky's pivots of each group of roots that hang together.
   */
  List<Root> refusal() {
    Map<Root, Integer> at = new LinkedHashMap<>();
    for (Pair pair : pairs) {
      at.putIfAbsent(pair.first(), at.size());
      at.putIfAbsent(pair.second(), at.size());
    }
    int n = at.size();
    double[][] matrix = new double[n][n];
    for (int i = 0; i < n; i++) {
      matrix[i][i] = 1;
    }
    for (Pair pair : pairs) {
      int i = at.get(pair.first());
      int j = at.get(pair.second());
      matrix[i][j] = pair.coefficient();
      matrix[j][i] = pair.coefficient();
    }
    return isPossible(matrix) ? List.of() : List.copyOf(at.keySet());
  }

  private static boolean isPossible(double[][] matrix) {
    int n = matrix.length;
    for (int k = 0; k < n; k++) {
      double pivot = matrix[k][k];
      if (pivot < -PIVOT_ROUNDING) {
        return false;
      }
      for (int i = k + 1; i < n; i++) {
        if (pivot <= PIVOT_ROUNDING) {
          if (Math.abs(matrix[i][k]) > Math.sqrt(PIVOT_ROUNDING)) {
            return false;
          }
          continue;
        }
        double factor = matrix[i][k] / pivot;
        for (int j = k + 1; j < n; j++) {
          matrix[i][j] -= factor * matrix[k][j];
        }
      }
    }
    return true;
  }

  /** Coefficient of correlation of two single values; 0 where either is exact. */
  double coefficient(Figure x, Figure y) {
    double both = x.standardUncertainty() * y.standardUncertainty();
    if (both == 0) {
      return 0;
    }
    double covariance =
        covariance(
            ((Value.Scalar) x.value().orElseThrow()).gradient(),
            ((Value.Scalar) y.value().orElseThrow()).gradient());
    return Math.max(-1, Math.min(1, covariance / both));
  }
}
