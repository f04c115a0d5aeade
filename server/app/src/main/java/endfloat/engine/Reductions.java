package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.working.BuiltIn;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Several values to one. Stations are no repeats: their mean adds no scatter of its own. */
final class Reductions {
  private static final Set<BuiltIn> ORDERS = Set.of(BuiltIn.MIN, BuiltIn.MAX, BuiltIn.RANGE);

  private Reductions() {}

  static Value of(BuiltIn function, Span span, List<Value> values) {
    if (values.isEmpty() && function != BuiltIn.COUNT && function != BuiltIn.SUM) {
      throw new LineFailure(span, "There are no values here.", "Take a reading first.");
    }
    if (!values.isEmpty() && values.get(0) instanceof Value.Words && ORDERS.contains(function)) {
      return Dates.of(function, values);
    }
    return switch (function) {
      case MIN -> scalar(values, least(values, false));
      case MAX -> scalar(values, greatest(values));
      case RANGE ->
          Functions.subtract(
              span, scalar(values, greatest(values)), scalar(values, least(values, true)));
      case SUM -> values.isEmpty() ? Scalar.exact(0) : sum(span, values);
      case MEAN -> scaled(span, sum(span, values), values.size());
      case MEDIAN -> median(span, values);
      case SD -> standardDeviation(span, values);
      case COUNT -> Scalar.exact(values.size());
      case FIRST -> values.get(0);
      case LAST -> values.get(values.size() - 1);
      default -> throw new IllegalStateException(function + " does not reduce");
    };
  }

  private static Scalar scalar(List<Value> values, int at) {
    return (Scalar) values.get(at);
  }

  /** Of equal values the first, or the last, so that a range of equal values keeps its spread. */
  private static int least(List<Value> values, boolean last) {
    int least = 0;
    for (int i = 1; i < values.size(); i++) {
      double value = scalar(values, i).si();
      double lowest = scalar(values, least).si();
      if (value < lowest || (last && value == lowest)) {
        least = i;
      }
    }
    return least;
  }

  private static int greatest(List<Value> values) {
    int greatest = 0;
    for (int i = 1; i < values.size(); i++) {
      if (scalar(values, i).si() > scalar(values, greatest).si()) {
        greatest = i;
      }
    }
    return greatest;
  }

  private static Scalar sum(Span span, List<Value> values) {
    double sum = 0;
    for (Value value : values) {
      sum += ((Scalar) value).si();
    }
    return Functions.scalar(span, sum, gradient(values, 0, values.size()));
  }

  /**
   * By halves: a thousand readings with roots of their own take a thousand steps, not a million.
   */
  private static Gradient gradient(List<Value> values, int from, int to) {
    if (to - from == 1) {
      return scalar(values, from).gradient();
    }
    int middle = (from + to) >>> 1;
    return Gradient.combine(1, gradient(values, from, middle), 1, gradient(values, middle, to));
  }

  private static Scalar scaled(Span span, Scalar sum, int count) {
    return Functions.scalar(span, sum.si() / count, sum.gradient().times(1.0 / count));
  }

  private static Scalar median(Span span, List<Value> values) {
    List<Value> sorted = new ArrayList<>(values);
    sorted.sort(Comparator.comparingDouble(v -> ((Scalar) v).si()));
    int half = sorted.size() / 2;
    if (sorted.size() % 2 == 1) {
      return scalar(sorted, half);
    }
    return scaled(span, sum(span, sorted.subList(half - 1, half + 1)), 2);
  }

  /**
   * Between the values next to the rank {@code share (n + 1)}: NIST/SEMATECH e-Handbook of
   * Statistical Methods, 7.2.6.2. Where so few values cannot tell it, it is refused.
   *
   * @param share of the values that lie below, 0 to 1
   */
  static Value quantile(Span span, List<Value> values, double share) {
    int n = values.size();
    double exact = share * (n + 1);
    // 0.3 of 10 is the third value, whatever the last bit of 0.3 says
    double rank = Math.abs(exact - Math.rint(exact)) < 1e-9 ? Math.rint(exact) : exact;
    int below = (int) Math.floor(rank);
    if (!(share > 0 && share < 1)) {
      throw new LineFailure(
          span, "The share of a quantile lies between 0 and 1.", "min and max give the ends.");
    }
    if (below < 1 || below > n || (below == n && rank > n)) {
      int needed = (int) Math.ceil(1 / Math.min(share, 1 - share)) - 1;
      throw new LineFailure(
          span,
          n + " values do not tell this quantile: it lies beyond the last of them.",
          "It takes " + needed + " values or more; min and max give the ends of these.");
    }
    List<Value> sorted = new ArrayList<>(values);
    sorted.sort(Comparator.comparingDouble(v -> ((Scalar) v).si()));
    Scalar low = scalar(sorted, below - 1);
    if (rank == below) {
      return low;
    }
    Scalar high = scalar(sorted, below);
    double part = rank - below;
    return Functions.scalar(
        span,
        low.si() + part * (high.si() - low.si()),
        Gradient.combine(1 - part, low.gradient(), part, high.gradient()));
  }

  private static Scalar standardDeviation(Span span, List<Value> values) {
    int n = values.size();
    if (n < 2) {
      throw new LineFailure(
          span, "A standard deviation takes two values or more.", "Take more readings.");
    }
    double mean = sum(span, values).si() / n;
    double squares = 0;
    double left = 0;
    for (Value value : values) {
      double off = ((Scalar) value).si() - mean;
      squares += off * off;
      left += off;
    }
    // equal values have none, whatever their mean was rounded to
    boolean equal =
        scalar(values, least(values, false)).si() == scalar(values, greatest(values)).si();
    double deviation = equal ? 0 : Math.sqrt((squares - left * left / n) / (n - 1));
    Gradient gradient = Gradient.NONE;
    for (Value value : values) {
      Scalar one = (Scalar) value;
      if (deviation == 0 && !one.gradient().isEmpty()) {
        throw Functions.noSlope(span);
      }
      if (!one.gradient().isEmpty()) {
        double slope = (one.si() - mean) / (deviation * (n - 1));
        gradient = Gradient.combine(1, gradient, slope, one.gradient());
      }
    }
    return Functions.scalar(span, deviation, gradient);
  }
}
