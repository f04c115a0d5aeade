package endfloat.shafts;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;

/** Places along a beam at which something begins, ends or acts. */
final class Nodes {
  private Nodes() {}

  /** In order; two places closer than a rounding are one. */
  static double[] of(SortedSet<Double> places, double length) {
    List<Double> kept = new ArrayList<>();
    for (double place : places) {
      if (kept.isEmpty() || place - kept.get(kept.size() - 1) > 1e-9 * length) {
        kept.add(place);
      }
    }
    return kept.stream().mapToDouble(Double::doubleValue).toArray();
  }

  static int nearest(double[] nodes, double place) {
    int best = 0;
    for (int i = 1; i < nodes.length; i++) {
      if (Math.abs(nodes[i] - place) < Math.abs(nodes[best] - place)) {
        best = i;
      }
    }
    return best;
  }
}
