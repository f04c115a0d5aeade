package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Series;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * Works element by element: series are brought together by their labels, never by their order, and
 * single values spread. A label that one side lacks is named. Where a row of a table has no value,
 * what is made of it has none.
 */
final class Elementwise {
  private Elementwise() {}

  static boolean anySeries(Value[] operands) {
    for (Value operand : operands) {
      if (operand instanceof Series) {
        return true;
      }
    }
    return false;
  }

  /**
   * @param spans where each operand stands
   * @param each is given the operands of one element and the number of that element
   */
  @SuppressWarnings("ReferenceEquality") // the operand itself, not one that equals it
  static Value map(Value[] operands, Span[] spans, BiFunction<Value[], Integer, Value> each) {
    Series widest = widest(operands);
    int[][] places = new int[operands.length][];
    for (int i = 0; i < operands.length; i++) {
      if (operands[i] instanceof Series series && series != widest) {
        places[i] = places(widest, series, spans[i]);
      }
    }
    List<Value> results = new ArrayList<>(widest.size());
    for (int at = 0; at < widest.size(); at++) {
      Value[] single = new Value[operands.length];
      boolean missing = false;
      for (int i = 0; i < operands.length; i++) {
        single[i] =
            operands[i] instanceof Series series
                ? series.elements().get(places[i] == null ? at : places[i][at])
                : operands[i];
        missing |= operands[i] instanceof Series && single[i] instanceof Absent;
      }
      results.add(missing ? Absent.ABSENT : each.apply(single, at));
    }
    return widest.withElements(results);
  }

  private static Series widest(Value[] operands) {
    Series widest = null;
    for (Value operand : operands) {
      if (operand instanceof Series series
          && (widest == null || series.axes().size() > widest.axes().size())) {
        widest = series;
      }
    }
    return widest;
  }

  /** For each element of one series the place of its partner in another; null where alike. */
  static int[] partners(Series of, Series other, Span span) {
    return places(of, other, span);
  }

  /** For each element of the widest the place of its partner; null where they stand alike. */
  private static int[] places(Series widest, Series other, Span span) {
    if (widest.axes().equals(other.axes()) && widest.labels().equals(other.labels())) {
      return null;
    }
    if (widest.axes().isEmpty() || other.axes().isEmpty()) {
      throw new LineFailure(
          span,
          widest.axes().isEmpty() && other.axes().isEmpty()
              ? "This list has " + other.size() + " values and the other " + widest.size() + "."
              : "A plain list has no stations, so it cannot be set beside readings that have them.",
          "Give both the same stations.");
    }
    int[] axes = other.axes().stream().mapToInt(widest.axes()::indexOf).toArray();
    for (int i = 0; i < axes.length; i++) {
      if (axes[i] < 0) {
        throw new LineFailure(
            span,
            "These values go by "
                + String.join(", ", other.axes())
                + " and the others by "
                + String.join(", ", widest.axes())
                + ".",
            "Reduce one of them first, for instance by its mean over \""
                + other.axes().get(i)
                + "\".");
      }
    }
    return partners(widest, other, axes, span);
  }

  private static int[] partners(Series widest, Series other, int[] axes, Span span) {
    Map<List<String>, Integer> byLabels = new HashMap<>();
    for (int i = 0; i < other.size(); i++) {
      byLabels.put(other.labels().get(i), i);
    }
    int[] places = new int[widest.size()];
    boolean[] used = new boolean[other.size()];
    for (int at = 0; at < places.length; at++) {
      List<String> wanted = new ArrayList<>(axes.length);
      for (int axis : axes) {
        wanted.add(widest.labels().get(at).get(axis));
      }
      Integer place = byLabels.get(wanted);
      if (place == null) {
        throw missing(span, "There is no value here at ", other.axes(), wanted);
      }
      places[at] = place;
      used[place] = true;
    }
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        throw missing(span, "The other side has no value at ", other.axes(), other.labels().get(i));
      }
    }
    return places;
  }

  private static LineFailure missing(
      Span span, String words, List<String> axes, List<String> labels) {
    return new LineFailure(
        span,
        words + station(axes, labels) + ".",
        "Take that reading, or pick the stations that both have.");
  }

  /** {@code tooth 4, plane top}. */
  static String station(List<String> axes, List<String> labels) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < axes.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(axes.get(i)).append(' ').append(labels.get(i));
    }
    return text.toString();
  }
}
