package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.working.Span;

/** Straight between the points of a table, refused outside. */
final class Interpolation {
  private Interpolation() {}

  static Value of(Span span, Value[] values, Term[] operands) {
    if (values[0] instanceof Series many) {
      return Elementwise.map(
          new Value[] {many},
          new Span[] {operands[0].span()},
          (v, at) -> at(span, (Scalar) v[0], (Series) values[1], (Series) values[2]));
    }
    return at(span, (Scalar) values[0], (Series) values[1], (Series) values[2]);
  }

  private static Scalar at(Span span, Scalar x, Series xs, Series ys) {
    int n = xs.size();
    if (n < 2 || ys.size() != n) {
      throw new LineFailure(
          span,
          "A table to interpolate in takes two lists of one length, and these have "
              + n
              + " and "
              + ys.size()
              + " values.",
          "Give one y for each x, at least two.");
    }
    double sign = si(xs, n - 1) > si(xs, 0) ? 1 : -1;
    for (int i = 1; i < n; i++) {
      if (!(sign * (si(xs, i) - si(xs, i - 1)) > 0)) {
        throw new LineFailure(
            span,
            "The first list of a table must rise or fall all the way, and value "
                + (i + 1)
                + " does not.",
            "Sort the points, or take out the one that stands twice.");
      }
    }
    if (sign * (x.si() - si(xs, 0)) < 0 || sign * (x.si() - si(xs, n - 1)) > 0) {
      throw new LineFailure(
          span,
          "The value lies outside the table, which is not extended beyond its ends.",
          "Add points to the table, or keep the value inside it.");
    }
    int i = 1;
    while (i < n - 1 && sign * (x.si() - si(xs, i)) > 0) {
      i++;
    }
    return between(span, x, points(xs, i), points(ys, i));
  }

  private static double si(Series series, int at) {
    return ((Scalar) series.elements().get(at)).si();
  }

  private static Scalar[] points(Series series, int upper) {
    return new Scalar[] {
      (Scalar) series.elements().get(upper - 1), (Scalar) series.elements().get(upper)
    };
  }

  private static Scalar between(Span span, Scalar x, Scalar[] xs, Scalar[] ys) {
    Scalar width = Functions.subtract(span, xs[1], xs[0]);
    Scalar share = Functions.divide(span, Functions.subtract(span, x, xs[0]), width);
    Scalar rise = Functions.subtract(span, ys[1], ys[0]);
    return Functions.add(span, ys[0], Functions.multiply(span, share, rise));
  }
}
