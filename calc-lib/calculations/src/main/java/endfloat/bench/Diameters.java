package endfloat.bench;

import endfloat.definition.RefusedException;
import endfloat.units.Indexed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Diameters of bores or journals, each read in a plane and a direction. */
final class Diameters {
  private final Indexed readings;
  private final int plane;
  private final int direction;

  /** A difference of two diameters and where it is. */
  record Difference(double size, String where) {}

  Diameters(Indexed readings, String planeAxis, String directionAxis) {
    if (readings.size() == 0) {
      throw new RefusedException("no diameter has been read");
    }
    this.readings = readings;
    plane = axis(planeAxis);
    direction = axis(directionAxis);
  }

  private int axis(String name) {
    int at = readings.axes().indexOf(name);
    if (at < 0) {
      throw new RefusedException(
          "the diameters have no axis \""
              + name
              + "\""
              + (readings.axes().isEmpty()
                  ? ": read them with stations, one for each plane and direction"
                  : "; theirs are " + String.join(", ", readings.axes())));
    }
    return at;
  }

  /** Ovality: the largest difference of two diameters in one plane; empty for one direction. */
  Optional<Difference> ovality() {
    return largest(direction);
  }

  /** Taper: the largest difference of two diameters along one direction; empty for one plane. */
  Optional<Difference> taper() {
    return largest(plane);
  }

  /** Over all readings that differ on one axis only. */
  private Optional<Difference> largest(int free) {
    Map<List<String>, List<Double>> groups = new LinkedHashMap<>();
    for (int i = 0; i < readings.size(); i++) {
      List<String> rest = new ArrayList<>(readings.labels().get(i));
      rest.set(free, "");
      groups.computeIfAbsent(rest, k -> new ArrayList<>()).add(readings.values()[i]);
    }
    Difference largest = null;
    for (Map.Entry<List<String>, List<Double>> group : groups.entrySet()) {
      List<Double> values = group.getValue();
      if (values.size() < 2) {
        continue;
      }
      double high = values.stream().mapToDouble(d -> d).max().orElseThrow();
      double low = values.stream().mapToDouble(d -> d).min().orElseThrow();
      if (largest == null || high - low > largest.size()) {
        largest = new Difference(high - low, place(group.getKey()));
      }
    }
    return Optional.ofNullable(largest);
  }

  double at(int reading) {
    return readings.values()[reading];
  }

  int greatest() {
    int best = 0;
    for (int i = 1; i < readings.size(); i++) {
      best = at(i) > at(best) ? i : best;
    }
    return best;
  }

  int least() {
    int best = 0;
    for (int i = 1; i < readings.size(); i++) {
      best = at(i) < at(best) ? i : best;
    }
    return best;
  }

  String place(int reading) {
    return place(readings.labels().get(reading));
  }

  /** {@code cylinder 3, plane top}; an empty label is left out. */
  private String place(List<String> labels) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      if (!labels.get(i).isEmpty()) {
        words.add(readings.axes().get(i) + " " + labels.get(i));
      }
    }
    return words.stream().collect(Collectors.joining(", "));
  }
}
