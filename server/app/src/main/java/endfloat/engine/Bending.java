package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Result;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.engine.Value.Scalar;
import endfloat.working.BuiltIn;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.List;
import java.util.Optional;

/**
 * Whether a result bends more than it slopes within the uncertainty of what it is made of: then the
 * law of propagation, which knows the slope alone, says too little (JCGM 100:2008, 5.1.2 note; JCGM
 * 101:2008, 5.8). A tilt of 0 ± 1 degrees has a cosine error, whose slope there is nought.
 */
final class Bending {
  private static final int MOST_PLACES = 40;

  /** Share of the uncertainty by slope from which the bend counts. */
  private static final double COUNTS = 0.5;

  /** Share of the value below which nobody minds, where there is a slope. */
  private static final double MATTERS = 0.01;

  private static final double ROUNDING = 1e-9;

  private Bending() {}

  /** Notes where a function of the language does so. */
  static Scalar noted(BuiltIn function, Span span, Scalar a, Scalar b, Scalar result, Frame frame) {
    double second =
        switch (function) {
          case MULTIPLY -> u(a, frame) * u(b, frame);
          case POWER -> b.gradient().isEmpty() ? power(a, b.si(), result, u(a, frame)) : 0;
          case HYPOT -> hypot(result, Math.max(u(a, frame), u(b, frame)));
          default -> 0;
        };
    return noted(span, second, result, frame);
  }

  /** The same of one argument. */
  static Scalar noted(BuiltIn function, Span span, Scalar x, Scalar result, Frame frame) {
    double second =
        function == BuiltIn.COS || function == BuiltIn.SIN
            ? Math.abs(result.si()) * u(x, frame) * u(x, frame) / 2
            : 0;
    return noted(span, second, result, frame);
  }

  private static double power(Scalar x, double n, Scalar result, double u) {
    if (x.si() == 0) {
      return n == 2 ? u * u : 0;
    }
    double relative = u / x.si();
    return Math.abs(n * (n - 1) / 2 * result.si()) * relative * relative;
  }

  private static double hypot(Scalar result, double u) {
    return result.si() == 0 ? 0 : u * u / result.si() / 2;
  }

  private static double u(Scalar value, Frame frame) {
    return value.gradient().isEmpty()
        ? 0
        : frame.correlations().standardUncertainty(value.gradient());
  }

  private static Scalar noted(Span span, double second, Scalar result, Frame frame) {
    if (second > 0 && counts(second, u(result, frame), result.si())) {
      frame.hint(
          hint(
              span,
              "Within the uncertainty of what it is made of, this bends more than it slopes.",
              "them"));
    }
    return result;
  }

  private static boolean counts(double second, double u, double value) {
    return second >= COUNTS * u && (u == 0 || second >= MATTERS * Math.abs(value));
  }

  private static LineProblem hint(Span span, String what, String either) {
    return new LineProblem(
        span,
        what,
        "Its uncertainty goes by the slope here and is too small; work it out at both ends of "
            + either
            + " as well.",
        LineProblem.Severity.HINT);
  }

  /**
   * Notes where a result of a calculation does so: each uncertain argument is moved by its standard
   * uncertainty either way.
   *
   * @param numbers that it gives
   * @param gradients of these
   */
  static void note(
      CalculateTerm term,
      Value[] values,
      Object[] arguments,
      double[] numbers,
      Gradient[] gradients,
      Frame frame) {
    Calculation calculation = term.calculation();
    // a probability that is reckoned from the uncertainty bends with it and says so itself
    if (calculation.heavy()
        || numbers.length == 0
        || calculation.parameters().stream().anyMatch(WordsInDoubt::isOwnUncertainty)
        || !Arguments.uncertain(values)) {
      return;
    }
    List<Arguments.Place> places = Arguments.uncertainPlaces(values, calculation);
    if (places.size() > MOST_PLACES) {
      return;
    }
    double[] u = new double[numbers.length];
    for (int k = 0; k < u.length; k++) {
      u[k] = frame.correlations().standardUncertainty(gradients[k]);
    }
    for (Arguments.Place place : places) {
      double step = frame.correlations().standardUncertainty(place.value().gradient());
      double[] up = tried(calculation, place.with(arguments, place.value().si() + step));
      double[] down = tried(calculation, place.with(arguments, place.value().si() - step));
      if (up.length != numbers.length || down.length != numbers.length) {
        continue;
      }
      for (int k = 0; k < numbers.length; k++) {
        double second = Math.abs(up[k] + down[k] - 2 * numbers[k]) / 2;
        double size = Math.max(Math.abs(up[k]), Math.abs(numbers[k]));
        if (second > ROUNDING * size
            && counts(second, u[k], numbers[k])
            && bends(calculation, place, arguments, step, numbers[k], second, k)) {
          String argument = calculation.parameters().get(place.argument()).name();
          frame.hint(
              hint(
                  term.span(),
                  "Within the uncertainty of "
                      + argument
                      + ", "
                      + name(calculation, numbers, k).orElse(calculation.name())
                      + " bends more than it slopes.",
                  argument));
          return;
        }
      }
    }
  }

  /**
   * Whether it bends and has no step or corner there: over half the way a curve parts from its
   * slope by a quarter as much, a corner by half, a step by all or nothing.
   */
  private static boolean bends(
      Calculation calculation,
      Arguments.Place place,
      Object[] arguments,
      double step,
      double number,
      double second,
      int k) {
    double x = place.value().si();
    double before = second;
    for (double h = step / 2; h > step / 10; h /= 2) {
      double[] up = tried(calculation, place.with(arguments, x + h));
      double[] down = tried(calculation, place.with(arguments, x - h));
      if (up.length <= k || down.length <= k) {
        return false;
      }
      double part = Math.abs(up[k] + down[k] - 2 * number) / 2;
      if (!(part > 0.15 * before && part < 0.35 * before)) {
        return false;
      }
      before = part;
    }
    return true;
  }

  /** Name of the result that a number belongs to, where each result is one number or none. */
  private static Optional<String> name(Calculation calculation, double[] numbers, int k) {
    List<String> names =
        calculation.results().stream()
            .filter(r -> r.form() == Result.Form.QUANTITY || r.form() == Result.Form.UNCERTAIN)
            .map(Result::name)
            .toList();
    return names.size() == numbers.length
        ? Optional.of(names.get(k)).filter(n -> !n.isEmpty())
        : Optional.empty();
  }

  private static double[] tried(Calculation calculation, Object[] arguments) {
    try {
      return Outputs.numbers(calculation.call(arguments, Progress.IGNORED), calculation.results());
    } catch (RefusedException | ArithmeticException | IllegalArgumentException e) {
      return new double[0];
    }
  }
}
