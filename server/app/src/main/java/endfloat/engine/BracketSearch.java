package endfloat.engine;

import endfloat.units.Unit;
import endfloat.units.UnitPreference;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The one root in a bracket. The bracket is searched in even steps for changes of sign and for
 * places where the sides may touch; each is closed in on by Brent's method. None or several are an
 * error that says where.
 */
final class BracketSearch {
  private static final int STEPS = 96;
  private static final int NARROWINGS = 80;
  private static final int MOST_TRIALS = 200;
  private static final int MOST_NAMED = 6;
  private static final double GOLDEN = 0.6180339887498949;

  /** Roots nearer than this, of the bracket, are one. */
  private static final double ONE_ROOT = 1e-9;

  private final Solver solver;
  private final Solver.Trial trial;
  private final double low;
  private final double high;
  private final Frame frame;
  private LineFailure refused;

  BracketSearch(Solver solver, Solver.Trial trial, double low, double high, Frame frame) {
    this.solver = solver;
    this.trial = trial;
    this.low = low;
    this.high = high;
    this.frame = frame;
  }

  double root() {
    double[] x = new double[STEPS + 1];
    double[] f = new double[STEPS + 1];
    boolean any = false;
    for (int i = 0; i <= STEPS; i++) {
      x[i] = i == STEPS ? high : low + (high - low) * i / STEPS;
      f[i] = at(x[i]);
      any |= !Double.isNaN(f[i]);
    }
    if (!any) {
      throw refused;
    }
    NavigableSet<Double> roots = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      if (f[i] == 0) {
        roots.add(x[i]);
      } else if (i > 0 && f[i] * f[i - 1] < 0) {
        add(roots, x[i - 1], f[i - 1], x[i], f[i]);
      } else if (i > 1 && touches(f, i)) {
        closest(roots, x[i - 2], x[i], f[i - 1]);
      }
    }
    List<Double> apart = apart(roots);
    if (apart.size() > STEPS) {
      throw everywhere();
    }
    if (apart.size() == 1) {
      return apart.get(0);
    }
    throw apart.isEmpty() ? none(f) : several(apart);
  }

  /** NaN where a side has no value. */
  private double at(double x) {
    try {
      return trial.differences(new double[] {x}, false)[0].si();
    } catch (LineFailure e) {
      refused = e;
      return Double.NaN;
    }
  }

  private static boolean touches(double[] f, int i) {
    return f[i] * f[i - 1] > 0
        && f[i - 1] * f[i - 2] > 0
        && Math.abs(f[i - 1]) <= Math.abs(f[i])
        && Math.abs(f[i - 1]) <= Math.abs(f[i - 2]);
  }

  /** Narrows in on the least difference; it may pass zero twice, or just reach it. */
  private void closest(NavigableSet<Double> roots, double from, double to, double sample) {
    double sign = Math.signum(sample);
    double a = from;
    double b = to;
    for (int i = 0; i < NARROWINGS; i++) {
      double left = b - GOLDEN * (b - a);
      double right = a + GOLDEN * (b - a);
      double fLeft = sign * at(left);
      double fRight = sign * at(right);
      if (fLeft <= 0 || fRight <= 0) {
        double middle = fLeft <= 0 ? left : right;
        double f = at(middle);
        if (f == 0) {
          roots.add(middle);
        } else {
          add(roots, from, at(from), middle, f);
          add(roots, middle, f, to, at(to));
        }
        return;
      }
      if (fLeft < fRight) {
        b = right;
      } else {
        a = left;
      }
    }
  }

  /** A change of sign is a root, unless the difference grows there without end. */
  private void add(NavigableSet<Double> roots, double a, double fa, double b, double fb) {
    double root = brent(a, fa, b, fb);
    double left = at(root);
    if (Math.abs(left) <= Math.max(Math.abs(fa), Math.abs(fb))) {
      roots.add(root);
    }
  }

  private List<Double> apart(NavigableSet<Double> roots) {
    List<Double> apart = new ArrayList<>();
    for (double root : roots) {
      if (apart.isEmpty() || root - apart.get(apart.size() - 1) > ONE_ROOT * (high - low)) {
        apart.add(root);
      }
    }
    return apart;
  }

  /** R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4. */
  private double brent(double from, double fFrom, double to, double fTo) {
    double a = from;
    double fa = fFrom;
    double b = to;
    double fb = fTo;
    double c = a;
    double fc = fa;
    double d = b - a;
    double e = d;
    for (int i = 0; i < MOST_TRIALS; i++) {
      if (Math.abs(fc) < Math.abs(fb)) {
        a = b;
        b = c;
        c = a;
        fa = fb;
        fb = fc;
        fc = fa;
      }
      double tolerance = Math.ulp(b);
      double half = (c - b) / 2;
      if (Math.abs(half) <= tolerance || fb == 0) {
        return b;
      }
      double step =
          Math.abs(e) >= tolerance && Math.abs(fa) > Math.abs(fb)
              ? interpolated(a, fa, b, fb, c, fc, half)
              : Double.NaN;
      if (!Double.isNaN(step)
          && Math.abs(step) < Math.min(1.5 * Math.abs(half) - tolerance / 2, Math.abs(e / 2))
          && step * half > 0) {
        e = d;
        d = step;
      } else {
        d = half;
        e = half;
      }
      a = b;
      fa = fb;
      b += Math.abs(d) > tolerance ? d : Math.copySign(tolerance, half);
      fb = at(b);
      if (Double.isNaN(fb)) {
        return b;
      }
      if (fb * fc > 0) {
        c = a;
        fc = fa;
        d = b - a;
        e = d;
      }
    }
    return b;
  }

  private static double interpolated(
      double a, double fa, double b, double fb, double c, double fc, double half) {
    double s = fb / fa;
    if (a == c) {
      return 2 * half * s / (s - 1);
    }
    double q = fa / fc;
    double r = fb / fc;
    double p = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
    return -p / ((q - 1) * (r - 1) * (s - 1));
  }

  private LineFailure none(double[] f) {
    String bracket = said(low) + " and " + said(high);
    String name = solver.unknowns().get(0).name();
    return new LineFailure(
        solver.span(),
        "No "
            + name
            + " between "
            + bracket
            + " makes the two sides equal: "
            + end(low, f[0])
            + ", "
            + end(high, f[f.length - 1])
            + ".",
        "Widen the bracket, or check the sides for a sign.");
  }

  private String end(double x, double difference) {
    if (Double.isNaN(difference)) {
      return "at " + said(x) + " there is no value";
    }
    return "at "
        + said(x)
        + " the left one is "
        + Shown.withUnit(Math.abs(difference), sideUnit())
        + (difference < 0 ? " less" : " more");
  }

  private Unit sideUnit() {
    Kind kind = solver.equations().get(0).kind();
    return kind instanceof Kind.Quantity quantity
        ? UnitPreference.of(quantity.dimension(), frame.settings().units())
        : UnitPreference.temperature(frame.settings().units()).interval();
  }

  private LineFailure everywhere() {
    String name = solver.unknowns().get(0).name();
    return new LineFailure(
        solver.span(),
        "Every "
            + name
            + " between "
            + said(low)
            + " and "
            + said(high)
            + " makes the two sides equal: they do not hang on it.",
        "Write an equation in which " + name + " stands, itself or through another line.");
  }

  private LineFailure several(List<Double> roots) {
    List<String> said = new ArrayList<>();
    roots.stream().limit(MOST_NAMED).forEach(root -> said.add(said(root)));
    if (roots.size() > MOST_NAMED) {
      said.add("and so on");
    }
    return new LineFailure(
        solver.span(),
        "Between "
            + said(low)
            + " and "
            + said(high)
            + " there are "
            + roots.size()
            + " answers: "
            + String.join(", ", said)
            + ".",
        "Narrow the bracket until it holds the one that is meant.");
  }

  private String said(double si) {
    Kind kind = solver.unknowns().get(0).kind();
    Unit unit =
        solver.unknownUnit() != null
            ? solver.unknownUnit()
            : kind instanceof Kind.Quantity quantity
                ? UnitPreference.of(quantity.dimension(), frame.settings().units())
                : UnitPreference.temperature(frame.settings().units());
    return Shown.withUnit(si, unit);
  }
}
