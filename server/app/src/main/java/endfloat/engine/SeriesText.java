package endfloat.engine;

import endfloat.units.Unit;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A series where there is room for one value: a list of a few as it is, for their order may count;
 * of anything longer, and of stations, the least and the greatest.
 */
public final class SeriesText {
  private static final int FEW = 4;
  private static final int FEW_STATIONS = 2;

  private SeriesText() {}

  /**
   * @param values of the series, in its order
   * @param shown the same as they are shown; fewer where some are no numbers
   */
  public static Shown of(Value.Series series, List<Value> values, List<Shown> shown) {
    int size = values.size();
    if (size == 0 || shown.size() < size) {
      return new Shown(size + " values", "", "");
    }
    String unit = shown.get(0).unit();
    if (size <= (series.axes().isEmpty() ? FEW : FEW_STATIONS)) {
      return new Shown(
          shown.stream().map(Shown::value).collect(Collectors.joining(", ")), unit, "");
    }
    int least = 0;
    int greatest = 0;
    for (int i = 1; i < size; i++) {
      least = si(values.get(i)) < si(values.get(least)) ? i : least;
      greatest = si(values.get(i)) > si(values.get(greatest)) ? i : greatest;
    }
    String from = shown.get(least).value();
    String to = shown.get(greatest).value();
    // where it has to be broken, then behind the dots
    return new Shown(from.equals(to) ? from : from + "\u00a0.. " + to, unit, "");
  }

  /** A list among the results of a calculation. */
  public static Shown of(Value.Series series, Unit unit) {
    List<Shown> shown =
        series.elements().stream()
            .filter(Value.Scalar.class::isInstance)
            .map(one -> Shown.expanded(((Value.Scalar) one).si(), 0, unit))
            .toList();
    return of(series, series.elements(), shown);
  }

  private static double si(Value value) {
    return ((Value.Scalar) value).si();
  }
}
