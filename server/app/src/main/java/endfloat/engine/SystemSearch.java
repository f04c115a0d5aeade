package endfloat.engine;

import endfloat.engine.Value.Scalar;
import java.util.ArrayList;
import java.util.List;

/**
 * The one answer of several equations in their brackets, by Newton's method with exact slopes from
 * a grid of starts, each step shortened while it makes matters worse.
 */
final class SystemSearch {
  private static final int STEPS = 60;
  private static final int SHORTENINGS = 20;
  private static final int MOST_STARTS = 729;

  /** Of the bracket: steps below are the end, answers nearer are one. */
  private static final double ARRIVED = 1e-13;

  private static final double ONE_ANSWER = 1e-7;

  private final Solver solver;
  private final Solver.Trial trial;
  private final double[] low;
  private final double[] high;
  private double[] scale;

  SystemSearch(Solver solver, Solver.Trial trial, double[] low, double[] high) {
    this.solver = solver;
    this.trial = trial;
    this.low = low;
    this.high = high;
  }

  double[] roots() {
    int n = low.length;
    if (solver.equations().size() != n) {
      throw new LineFailure(
          solver.span(),
          solver.equations().size() + " equations cannot give " + n + " unknowns.",
          "Give as many equations as unknowns.");
    }
    int perSide = n <= 3 ? 5 : n <= 6 ? 3 : 1;
    List<double[]> answers = new ArrayList<>();
    int starts = Math.min(MOST_STARTS, (int) StrictMath.pow(perSide, n));
    for (int start = 0; start < starts; start++) {
      double[] x = new double[n];
      int digits = start;
      for (int i = 0; i < n; i++, digits /= perSide) {
        x[i] = low[i] + (high[i] - low[i]) * (2 * (digits % perSide) + 1) / (2.0 * perSide);
      }
      double[] answer = newton(x);
      if (answer != null && answers.stream().noneMatch(a -> near(a, answer))) {
        answers.add(answer);
      }
    }
    if (answers.size() == 1) {
      return answers.get(0);
    }
    throw new LineFailure(
        solver.span(),
        answers.isEmpty()
            ? "No values inside the brackets make all sides equal."
            : "Inside the brackets there are " + answers.size() + " answers.",
        answers.isEmpty()
            ? "Widen the brackets, or check the sides for a sign."
            : "Narrow the brackets until they hold the one that is meant.");
  }

  private boolean near(double[] a, double[] b) {
    for (int i = 0; i < a.length; i++) {
      if (Math.abs(a[i] - b[i]) > ONE_ANSWER * (high[i] - low[i])) {
        return false;
      }
    }
    return true;
  }

  private Scalar[] at(double[] x) {
    try {
      return trial.differences(x, true);
    } catch (LineFailure e) {
      return null;
    }
  }

  /** Null where it does not arrive inside the brackets. */
  private double[] newton(double[] start) {
    double[] x = start;
    Scalar[] here = at(x);
    if (here == null) {
      return null;
    }
    for (int step = 0; step < STEPS; step++) {
      double[][] jacobian = trial.jacobian(here);
      scale = rowScale(jacobian);
      double[][] inverse = LinearSystem.inverse(jacobian);
      if (inverse == null) {
        return null;
      }
      double[] next = null;
      Scalar[] there = null;
      double share = 1;
      for (int i = 0; i < SHORTENINGS && there == null; i++, share /= 2) {
        next = moved(x, here, inverse, share);
        there = at(next);
        if (there != null && size(there) > size(here) && size(here) > 0 && !arrived(x, next)) {
          there = null;
        }
      }
      if (there == null) {
        return null;
      }
      boolean end = arrived(x, next);
      x = next;
      here = there;
      if (end) {
        return size(here) <= 1e-9 ? x : null;
      }
    }
    return null;
  }

  /** How far each difference would move across the brackets: what it is measured by. */
  private double[] rowScale(double[][] jacobian) {
    double[] sizes = new double[jacobian.length];
    for (int i = 0; i < sizes.length; i++) {
      for (int j = 0; j < low.length; j++) {
        sizes[i] += Math.abs(jacobian[i][j]) * (high[j] - low[j]);
      }
    }
    return sizes;
  }

  private double size(Scalar[] differences) {
    double size = 0;
    for (int i = 0; i < differences.length; i++) {
      size = Math.max(size, Math.abs(differences[i].si()) / scale[i]);
    }
    return size;
  }

  private double[] moved(double[] x, Scalar[] here, double[][] inverse, double share) {
    double[] next = new double[x.length];
    for (int i = 0; i < next.length; i++) {
      double step = 0;
      for (int j = 0; j < here.length; j++) {
        step += inverse[i][j] * here[j].si();
      }
      next[i] = Math.max(low[i], Math.min(high[i], x[i] - share * step));
    }
    return next;
  }

  private boolean arrived(double[] x, double[] next) {
    for (int i = 0; i < x.length; i++) {
      if (Math.abs(next[i] - x[i]) > ARRIVED * (high[i] - low[i])) {
        return false;
      }
    }
    return true;
  }
}
