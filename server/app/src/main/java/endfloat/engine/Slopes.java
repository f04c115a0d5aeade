package endfloat.engine;

import java.util.Arrays;
import java.util.function.DoubleFunction;

/**
 * Slopes of a calculation that brings none of its own, by differences extrapolated to a step of
 * zero (Richardson; the step of least error is taken as Ridders does, Advances in Engineering
 * Software 4, 1982, 75).
 *
 * <p>Steps are halved from a fiftieth of the value, or a tenth of its uncertainty where that is
 * wider, and stay inside the range where the calculation is valid; at an end of the range the
 * differences are taken from one side.
 */
final class Slopes {
  private static final int HALVINGS = 7;
  private static final double FIRST_STEP = 0.02;
  private static final double LEAST_AMONG_MANY = 1e-9;
  private static final double AMONG_MANY = 1e-3;
  private static final double OF_UNCERTAINTY = 0.1;

  /** Fraction of the first step below which an end counts as reached. */
  private static final double NEAR_END = 1e-3;

  private final DoubleFunction<double[]> function;
  private final double[] slopes;
  private final double[] errors;

  private Slopes(DoubleFunction<double[]> function, int outputs) {
    this.function = function;
    this.slopes = new double[outputs];
    this.errors = new double[outputs];
    Arrays.fill(errors, Double.POSITIVE_INFINITY);
  }

  /**
   * Slopes of all outputs with one argument; null where there is no place to take a difference.
   *
   * @param function gives the outputs, or null where the calculation refuses
   * @param here its outputs at x
   * @param standardUncertainty of the argument
   * @param least lower end of the valid range
   * @param greatest upper end
   */
  static double[] at(
      DoubleFunction<double[]> function,
      double[] here,
      double x,
      double standardUncertainty,
      double least,
      double greatest) {
    return at(
        function,
        here,
        x,
        Math.max(FIRST_STEP * Math.abs(x), OF_UNCERTAINTY * standardUncertainty),
        new double[] {least, greatest});
  }

  /**
   * The same for one of several values of a kind, such as the diameters of a bore: the greatest of
   * them stays the greatest only for a step that is small beside their differences.
   */
  static double[] ofOneAmongMany(
      DoubleFunction<double[]> function,
      double[] here,
      double x,
      double standardUncertainty,
      double least,
      double greatest) {
    return at(
        function, here, x, stepAmongMany(x, standardUncertainty), new double[] {least, greatest});
  }

  /** The widest step that {@link #ofOneAmongMany} takes. */
  static double stepAmongMany(double x, double standardUncertainty) {
    return Math.max(LEAST_AMONG_MANY * Math.abs(x), AMONG_MANY * standardUncertainty);
  }

  private static double[] at(
      DoubleFunction<double[]> function, double[] here, double x, double step, double[] range) {
    double least = range[0];
    double greatest = range[1];
    Slopes slopes = new Slopes(function, here.length);
    double room = Math.min(x - least, greatest - x);
    boolean found = false;
    if (room > NEAR_END * step) {
      found = slopes.difference(x, Math.min(step, 0.9 * room), null, 4);
    }
    if (!found) {
      double side = greatest - x >= x - least ? 1 : -1;
      double away = side > 0 ? greatest - x : x - least;
      found = slopes.difference(x, side * Math.min(step, 0.9 * away), here, 2);
      if (!found) {
        found = slopes.difference(x, -side * Math.min(step, 0.9 * room), here, 2);
      }
    }
    return found ? slopes.slopes : null;
  }

  /**
   * @param from the outputs at x for differences from one side, null for central ones
   * @param growth by which the leading error falls as the step is halved
   */
  private boolean difference(double x, double firstStep, double[] from, double growth) {
    double[][] before = new double[0][];
    double step = firstStep;
    boolean found = false;
    for (int halving = 0; halving < HALVINGS && step != 0; halving++, step /= 2) {
      double[] quotient = quotient(x, step, from);
      if (quotient == null) {
        before = new double[0][];
        continue;
      }
      double[][] row = new double[before.length + 1][];
      row[0] = quotient;
      double factor = growth;
      for (int j = 1; j < row.length; j++, factor *= growth) {
        row[j] = extrapolated(row[j - 1], before[j - 1], factor);
      }
      found |= row.length > 1;
      before = row;
    }
    return found;
  }

  private double[] quotient(double x, double step, double[] from) {
    double upper = x + step;
    double lower = from == null ? x - step : x;
    double[] above = function.apply(upper);
    double[] below = from == null ? function.apply(lower) : from;
    if (above == null
        || below == null
        || above.length != slopes.length
        || below.length != slopes.length) {
      return null;
    }
    double[] quotient = new double[slopes.length];
    for (int i = 0; i < quotient.length; i++) {
      quotient[i] = (above[i] - below[i]) / (upper - lower);
    }
    return quotient;
  }

  private double[] extrapolated(double[] finer, double[] coarser, double factor) {
    double[] next = new double[finer.length];
    for (int i = 0; i < next.length; i++) {
      next[i] = finer[i] + (finer[i] - coarser[i]) / (factor - 1);
      double error = Math.max(Math.abs(next[i] - finer[i]), Math.abs(next[i] - coarser[i]));
      if (error < errors[i]) {
        errors[i] = error;
        slopes[i] = next[i];
      }
    }
    return next;
  }
}
