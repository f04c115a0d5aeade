package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.working.BuiltIn;
import endfloat.working.Span;

/**
 * The functions of the language on numbers with their gradients: each value by StrictMath, each
 * slope exact. A point where a function or its slope has no value is refused where it stands.
 */
final class Functions {
  private static final double LN_10 = 2.302585092994046;
  private static final double PER_DEGREE = 57.29577951308232;

  /** Results of cosines this near 0 are the rounding of 90 degrees. */
  private static final double COSINE_ROUNDING = 4e-16;

  /** A sine or cosine may pass 1 by rounding this far. */
  private static final double SINE_ROUNDING = 4e-16;

  /** Whole powers to this size are multiplied out. */
  private static final int MULTIPLIED = 1024;

  /** Steps this close to a whole number, of their size, are whole. */
  private static final double STEP_ROUNDING = 1e-12;

  private static final double HALF = 0.5 + STEP_ROUNDING;

  private Functions() {}

  static Scalar add(Span span, Scalar a, Scalar b) {
    return scalar(span, a.si() + b.si(), Gradient.combine(1, a.gradient(), 1, b.gradient()));
  }

  static Scalar subtract(Span span, Scalar a, Scalar b) {
    return scalar(span, a.si() - b.si(), Gradient.combine(1, a.gradient(), -1, b.gradient()));
  }

  static Scalar multiply(Span span, Scalar a, Scalar b) {
    return scalar(
        span, a.si() * b.si(), Gradient.combine(b.si(), a.gradient(), a.si(), b.gradient()));
  }

  static Scalar divide(Span span, Scalar a, Scalar b) {
    if (b.si() == 0) {
      throw new LineFailure(
          span, "This divides by zero.", "Check the value below the line, or guard it with an if.");
    }
    double quotient = a.si() / b.si();
    return scalar(
        span,
        quotient,
        Gradient.combine(1 / b.si(), a.gradient(), -quotient / b.si(), b.gradient()));
  }

  /** A number that is finite, or a refusal. */
  static Scalar scalar(Span span, double si, Gradient gradient) {
    if (!Double.isFinite(si)) {
      throw new LineFailure(
          span,
          "The result is too large to be reckoned with.",
          "Check the exponents and the units.");
    }
    return new Scalar(si, gradient);
  }

  /** A function of one argument. */
  static Scalar of(BuiltIn function, Span span, Scalar x) {
    double v = x.si();
    Gradient g = x.gradient();
    return switch (function) {
      case NEGATE -> new Scalar(-v, g.times(-1));
      case SIN -> scalar(span, StrictMath.sin(v), g.times(StrictMath.cos(v)));
      case COS -> scalar(span, StrictMath.cos(v), g.times(-StrictMath.sin(v)));
      case TAN -> tan(span, v, g);
      case ASIN -> {
        double s = sine(span, v, "asin");
        yield scalar(span, StrictMath.asin(s), g.times(slope(span, g, 1, Math.sqrt(1 - s * s))));
      }
      case ACOS -> {
        double s = sine(span, v, "acos");
        yield scalar(span, StrictMath.acos(s), g.times(slope(span, g, -1, Math.sqrt(1 - s * s))));
      }
      case ATAN -> scalar(span, StrictMath.atan(v), g.times(1 / (1 + v * v)));
      case SINH -> scalar(span, StrictMath.sinh(v), g.times(StrictMath.cosh(v)));
      case COSH -> scalar(span, StrictMath.cosh(v), g.times(StrictMath.sinh(v)));
      case TANH -> {
        double t = StrictMath.tanh(v);
        yield scalar(span, t, g.times((1 - t) * (1 + t)));
      }
      case SQRT -> sqrt(span, v, g);
      case CBRT -> {
        double r = StrictMath.cbrt(v);
        yield scalar(span, r, g.times(slope(span, g, 1, 3 * r * r)));
      }
      case EXP -> {
        double e = StrictMath.exp(v);
        yield scalar(span, e, g.times(e));
      }
      case LN -> scalar(span, StrictMath.log(positive(span, v)), g.times(1 / v));
      case LOG10 -> scalar(span, StrictMath.log10(positive(span, v)), g.times(1 / (v * LN_10)));
      case ABS -> new Scalar(Math.abs(v), v < 0 ? g.times(-1) : g);
      case KELVIN, TEMPERATURE -> x;
      default -> throw new IllegalStateException(function + " does not take one number");
    };
  }

  private static Scalar tan(Span span, double v, Gradient g) {
    double cosine = StrictMath.cos(v);
    if (Math.abs(cosine) < COSINE_ROUNDING * Math.max(1, Math.abs(v))) {
      throw new LineFailure(
          span,
          "The tangent of " + Shown.digits(v * PER_DEGREE, 6) + "\u00b0 has no value.",
          "Keep the angle away from 90\u00b0.");
    }
    double t = StrictMath.tan(v);
    return scalar(span, t, g.times(1 + t * t));
  }

  private static double sine(Span span, double v, String name) {
    if (Math.abs(v) > 1 + SINE_ROUNDING) {
      throw new LineFailure(
          span,
          "The " + name + " takes \u22121 to 1, and this is " + Shown.digits(v, 6) + ".",
          "Check the two lengths whose ratio this is.");
    }
    return Math.max(-1, Math.min(1, v));
  }

  private static double positive(Span span, double v) {
    if (v <= 0) {
      throw new LineFailure(
          span,
          "A logarithm takes a number above zero, and this is " + Shown.digits(v, 6) + ".",
          "Check the sign and the ratio.");
    }
    return v;
  }

  private static Scalar sqrt(Span span, double v, Gradient g) {
    if (v < 0) {
      throw new LineFailure(
          span,
          "This is the square root of a number below zero.",
          "Check the order of the difference under the root.");
    }
    double root = Math.sqrt(v);
    return scalar(span, root, g.times(slope(span, g, 0.5, root)));
  }

  /** {@code above / below}, refused where it is infinite and the argument is uncertain. */
  private static double slope(Span span, Gradient g, double above, double below) {
    if (g.isEmpty()) {
      return 0;
    }
    if (below == 0) {
      throw noSlope(span);
    }
    return above / below;
  }

  static LineFailure noSlope(Span span) {
    return new LineFailure(
        span,
        "Here the result changes without limit, so its uncertainty cannot be stated.",
        "Check whether the value should be exactly at this end, or give it without uncertainty.");
  }

  /** A power; whole ones by multiplication, so that they are the same everywhere and quick. */
  static Scalar power(Span span, Scalar base, Scalar exponent) {
    double x = base.si();
    double n = exponent.si();
    if (x == 0 && n < 0) {
      throw new LineFailure(span, "This divides by zero.", "Check the value that is raised.");
    }
    boolean whole = n == StrictMath.rint(n);
    if (x < 0 && !whole) {
      throw new LineFailure(
          span,
          "A number below zero cannot be raised to the power " + Shown.digits(n, 6) + ".",
          "Check the sign of the value that is raised.");
    }
    double raised = raise(x, n, whole);
    Gradient byBase = Gradient.NONE;
    if (!base.gradient().isEmpty() && n != 0) {
      if (x == 0 && n < 1) {
        throw noSlope(span);
      }
      byBase = base.gradient().times(n * raise(x, n - 1, whole));
    }
    if (exponent.gradient().isEmpty()) {
      return scalar(span, raised, byBase);
    }
    if (x <= 0) {
      throw new LineFailure(
          span,
          "With an uncertain power the number that is raised must be above zero.",
          "Check the value that is raised.");
    }
    double byExponent = raised * StrictMath.log(x);
    return scalar(span, raised, Gradient.combine(1, byBase, byExponent, exponent.gradient()));
  }

  private static double raise(double x, double n, boolean whole) {
    if (n == 0.5) {
      return Math.sqrt(x);
    }
    if (!whole || Math.abs(n) > MULTIPLIED) {
      return StrictMath.pow(x, n);
    }
    double product = 1;
    double square = x;
    for (int left = (int) Math.abs(n); left > 0; left >>= 1) {
      if ((left & 1) == 1) {
        product *= square;
      }
      square *= square;
    }
    return n < 0 ? 1 / product : product;
  }

  /** The angle of the point (x, y). */
  static Scalar atan2(Span span, Scalar y, Scalar x) {
    double square = x.si() * x.si() + y.si() * y.si();
    if (square == 0) {
      throw new LineFailure(
          span, "Both arguments are zero, so there is no direction.", "Check the two readings.");
    }
    return scalar(
        span,
        StrictMath.atan2(y.si(), x.si()),
        Gradient.combine(x.si() / square, y.gradient(), -y.si() / square, x.gradient()));
  }

  /** Root of the sum of squares; at zero an uncertain one is refused. */
  static Scalar hypot(Span span, Value[] arguments) {
    double root = 0;
    Gradient all = Gradient.NONE;
    for (Value argument : arguments) {
      Scalar scalar = (Scalar) argument;
      root = StrictMath.hypot(root, scalar.si());
      all = Gradient.combine(1, all, scalar.si(), scalar.gradient());
    }
    if (root > 0) {
      return scalar(span, root, all.times(1 / root));
    }
    for (Value argument : arguments) {
      if (!((Scalar) argument).gradient().isEmpty()) {
        throw noSlope(span);
      }
    }
    return Scalar.exact(0);
  }

  /** To a multiple of the step. What is chosen by it is exact. */
  static Scalar toStep(BuiltIn function, Span span, Scalar x, Scalar step) {
    if (step.si() <= 0) {
      throw new LineFailure(span, "The step must be above zero.", "Give the step rounded to.");
    }
    double ratio = x.si() / step.si();
    double near = StrictMath.rint(ratio);
    double steps;
    if (Math.abs(ratio - near) <= STEP_ROUNDING * Math.max(1, Math.abs(ratio))) {
      steps = near;
    } else {
      steps =
          switch (function) {
            case FLOOR -> StrictMath.floor(ratio);
            case CEIL -> StrictMath.ceil(ratio);
            default -> StrictMath.copySign(StrictMath.floor(Math.abs(ratio) + HALF), ratio);
          };
    }
    return scalar(span, steps * step.si(), step.gradient().times(steps));
  }
}
