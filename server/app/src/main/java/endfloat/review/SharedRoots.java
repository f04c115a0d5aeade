package endfloat.review;

import endfloat.engine.Correlations;
import endfloat.engine.Figure;
import endfloat.engine.Gradient;
import endfloat.engine.Root;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.Instrument;
import endfloat.record.InvestigationRecord;
import endfloat.review.Comparison.Side;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which errors two records have in common, so that they cancel in a difference.
 *
 * <ul>
 *   <li>Offset and gain of an instrument: where both registers have it by the same id, with the
 *       same calibration (date and certificate) and the same figures. Another calibration is
 *       another error. Between two engines more is asked for: the calibration must be named, and
 *       hold on the day of either record; and a thermometer shares nothing, for how it sits is most
 *       of its error, and it is set anew on each engine.
 *   <li>Values of the calculation library and errors of its models: the handbook is off the same
 *       way on both sides.
 *   <li>What belongs to one engine (inputs, resolution and scatter of readings, temperatures of
 *       parts): only between two states of one record, and only where the value it belongs to is
 *       the same in both, so was not measured anew.
 * </ul>
 *
 * <p>Whatever is not known to be shared is independent: that never makes a difference clear that is
 * not.
 */
final class SharedRoots {
  private final Set<String> instruments;
  private final List<String> notShared;
  private final Correlations left;
  private final Correlations right;
  private final Set<String> unchanged;

  private SharedRoots(
      Set<String> instruments,
      List<String> notShared,
      Side left,
      Side right,
      Set<String> unchanged) {
    this.instruments = instruments;
    this.notShared = notShared;
    this.left = left.graph().correlations();
    this.right = right.graph().correlations();
    this.unchanged = unchanged;
  }

  static SharedRoots of(Side left, Side right, boolean sameEngine) {
    Map<String, Instrument> known = new HashMap<>();
    left.record().instruments().forEach(one -> known.put(one.id(), one));
    Set<String> shared = new TreeSet<>();
    List<String> notShared = new ArrayList<>();
    for (Instrument one : right.record().instruments()) {
      Instrument other = known.get(one.id());
      if (other == null || one.id().isEmpty()) {
        continue;
      }
      String why = difference(other, one);
      if (why.isEmpty() && !sameEngine) {
        why = doubt(one, left.record(), right.record());
      }
      if (why.isEmpty()) {
        shared.add(one.id());
      } else {
        notShared.add(one.id() + ": " + why);
      }
    }
    Set<String> unchanged = sameEngine ? unchanged(left.graph(), right.graph()) : Set.of();
    return new SharedRoots(shared, List.copyOf(notShared), left, right, unchanged);
  }

  private static String difference(Instrument left, Instrument right) {
    if (!left.calibrated().equals(right.calibrated())
        || !left.certificate().equals(right.certificate())) {
      return "calibrated anew in between";
    }
    boolean same =
        left.offset().equals(right.offset())
            && left.gain().equals(right.gain())
            && left.uncertainty().equals(right.uncertainty())
            && left.coverage() == right.coverage();
    return same ? "" : "its figures in the two registers differ";
  }

  /** Why an error may be another one on another engine, though the registers are alike. */
  private static String doubt(Instrument one, InvestigationRecord left, InvestigationRecord right) {
    if (one.kind().equals("thermometer")) {
      return "a thermometer sits otherwise on each engine";
    }
    if (one.calibrated().isBlank() && one.certificate().isBlank()) {
      return "no calibration is named, so that it may have been set anew in between";
    }
    for (InvestigationRecord record : List.of(left, right)) {
      String day = record.titleBlock().date();
      if (!day.isBlank() && !one.due().isBlank() && one.due().compareTo(day) < 0) {
        return "its calibration was overdue on " + day;
      }
      if (!day.isBlank() && day.compareTo(one.calibrated()) < 0) {
        return "it was calibrated after " + day + ", the day of one of the two";
      }
    }
    return "";
  }

  /** The roots that belong to a figure which is the same in both states. */
  private static Set<String> unchanged(ValueGraph left, ValueGraph right) {
    Set<String> same = new HashSet<>();
    Map<String, Figure> others = right.figures();
    left.figures()
        .forEach(
            (name, figure) -> {
              Map<String, String> ours = marks(figure);
              Map<String, String> theirs = marks(others.get(name));
              ours.forEach(
                  (root, mark) -> {
                    if (mark.equals(theirs.get(root))) {
                      same.add(root);
                    }
                  });
            });
    return same;
  }

  /** For each root of its own, the value it belongs to and its part in that. */
  private static Map<String, String> marks(Figure figure) {
    Map<String, String> marks = new HashMap<>();
    if (figure != null) {
      figure.value().ifPresent(value -> marks(figure.name(), value, marks));
    }
    return marks;
  }

  private static void marks(String name, Value value, Map<String, String> into) {
    if (value instanceof Value.Series series) {
      series.elements().forEach(element -> marks(name, element, into));
    } else if (value instanceof Value.Scalar scalar) {
      Gradient gradient = scalar.gradient();
      for (int i = 0; i < gradient.size(); i++) {
        if (gradient.root(i).subject().equals(name)) {
          // The whole reading must be the same: a mean of other repeats is another one.
          into.merge(
              gradient.root(i).id(), scalar.si() + " " + gradient.part(i), (a, b) -> a + " " + b);
        }
      }
    }
  }

  private boolean isShared(Root root) {
    return switch (root.kind()) {
      case OFFSET, GAIN -> instruments.contains(root.subject());
      case LIBRARY, MODEL -> true;
      case UNKNOWN -> false;
      default -> unchanged.contains(root.id());
    };
  }

  /**
   * Standard uncertainty of right less left [SI]: from the slopes of the difference itself, for a
   * difference of variances would leave rounding where all cancels.
   */
  double ofDifference(Gradient from, Gradient to) {
    double variance = 0;
    for (int i = 0; i < from.size(); i++) {
      double part = slope(from.root(i), from, to, true);
      variance += part * part;
    }
    for (int i = 0; i < to.size(); i++) {
      boolean counted = isShared(to.root(i)) && from.part(to.root(i)) != 0;
      double part = counted ? 0 : to.part(i);
      variance += part * part;
    }
    for (Correlations.Pair pair : left.pairs()) {
      variance += correlated(pair, from, to, true);
    }
    for (Correlations.Pair pair : right.pairs()) {
      if (!left.pairs().contains(pair) || !isShared(pair.first()) || !isShared(pair.second())) {
        variance += correlated(pair, from, to, false);
      }
    }
    return variance <= 0 ? 0 : Math.sqrt(variance);
  }

  /**
   * Effective degrees of freedom of that uncertainty (JCGM 100, G.4); NaN where roots of it are
   * correlated, for which there is no formula.
   */
  double degreesOfDifference(Gradient from, Gradient to, double u) {
    if (u == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0;
    for (int i = 0; i < from.size(); i++) {
      double share = slope(from.root(i), from, to, true) / u;
      sum += share * share * share * share / from.root(i).degreesOfFreedom();
    }
    for (int i = 0; i < to.size(); i++) {
      boolean counted = isShared(to.root(i)) && from.part(to.root(i)) != 0;
      double share = counted ? 0 : to.part(i) / u;
      sum += share * share * share * share / to.root(i).degreesOfFreedom();
    }
    boolean together =
        left.pairs().stream().anyMatch(pair -> correlated(pair, from, to, true) != 0)
            || right.pairs().stream().anyMatch(pair -> correlated(pair, from, to, false) != 0);
    return together ? Double.NaN : 1 / sum;
  }

  private double correlated(Correlations.Pair pair, Gradient from, Gradient to, boolean ofLeft) {
    return 2
        * pair.coefficient()
        * slope(pair.first(), from, to, ofLeft)
        * slope(pair.second(), from, to, ofLeft);
  }

  /** How the difference moves with a root of one side; a shared one moves both. */
  private double slope(Root root, Gradient from, Gradient to, boolean ofLeft) {
    if (isShared(root)) {
      return to.part(root) - from.part(root);
    }
    return ofLeft ? -from.part(root) : to.part(root);
  }

  List<String> shared() {
    return List.copyOf(instruments);
  }

  List<String> notShared() {
    return notShared;
  }
}
