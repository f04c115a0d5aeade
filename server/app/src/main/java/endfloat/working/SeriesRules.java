package endfloat.working;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** How series go together: by the labels of their stations, never by position. */
final class SeriesRules {
  private SeriesRules() {}

  /** The kind of what works element by element on the operands: scalar if none is a series. */
  static Kind spread(Kind element, List<Operand> operands) {
    int widest = -1;
    for (int i = 0; i < operands.size(); i++) {
      if (operands.get(i).kind() instanceof Kind.Series series
          && (widest < 0 || series.axes().size() > widest(operands.get(widest)).axes().size())) {
        widest = i;
      }
    }
    if (widest < 0) {
      return element;
    }
    for (int i = 0; i < operands.size(); i++) {
      if (i != widest && operands.get(i).kind() instanceof Kind.Series series) {
        align(operands.get(widest), operands.get(i), series);
      }
    }
    Kind.Series shape = widest(operands.get(widest));
    return new Kind.Series(element, shape.axes(), shape.labels());
  }

  private static Kind.Series widest(Operand operand) {
    return (Kind.Series) operand.kind();
  }

  private static void align(Operand widest, Operand operand, Kind.Series narrow) {
    Kind.Series wide = widest(widest);
    if (wide.axes().isEmpty() != narrow.axes().isEmpty()) {
      throw new KindException(
          operand.span(),
          "A list has no stations by which to go with readings",
          "Take the readings by a name each, or reduce them first");
    }
    if (!wide.axes().containsAll(narrow.axes())) {
      throw new KindException(
          operand.span(),
          "The stations differ: "
              + String.join(" and ", wide.axes())
              + " here, "
              + String.join(" and ", narrow.axes())
              + " there",
          "Reduce one of the two first, such as max(x, over: \"" + narrow.axes().get(0) + "\")");
    }
    if (wide.labels().isEmpty() || narrow.labels().isEmpty()) {
      return;
    }
    if (wide.axes().isEmpty()) {
      sameLength(operand, wide.labels().size(), narrow.labels().size());
    } else {
      sameLabels(widest, operand, narrow);
    }
  }

  private static void sameLength(Operand operand, int wide, int narrow) {
    if (wide != narrow) {
      throw new KindException(
          operand.span(),
          "The lists have " + wide + " and " + narrow + " values",
          "Give both the same number of values");
    }
  }

  private static void sameLabels(Operand widest, Operand operand, Kind.Series narrow) {
    Kind.Series wide = widest(widest);
    List<Integer> places = narrow.axes().stream().map(wide.axes()::indexOf).toList();
    Set<List<String>> seen = new HashSet<>();
    Set<List<String>> known = new HashSet<>(narrow.labels());
    for (List<String> labels : wide.labels()) {
      List<String> station = new ArrayList<>();
      places.forEach(p -> station.add(labels.get(p)));
      seen.add(station);
      if (!known.contains(station)) {
        throw missing(operand, narrow.axes(), station, operand.said());
      }
    }
    for (List<String> station : narrow.labels()) {
      if (!seen.contains(station)) {
        throw missing(widest, narrow.axes(), station, widest.said());
      }
    }
  }

  private static KindException missing(
      Operand operand, List<String> axes, List<String> station, String name) {
    List<String> said = new ArrayList<>();
    for (int i = 0; i < axes.size(); i++) {
      said.add(axes.get(i) + " " + station.get(i));
    }
    return new KindException(
        operand.span(),
        String.join(", ", said) + " is missing in " + (name.isEmpty() ? "one of the two" : name),
        "Take that reading, or pick the stations that both have");
  }
}
