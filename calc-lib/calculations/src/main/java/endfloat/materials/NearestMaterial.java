package endfloat.materials;

import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Materials that a name not on file may have meant. */
final class NearestMaterial {
  private static final int MOST = 3;

  private NearestMaterial() {}

  /** Best first, by the pairs of letters that both spellings have. */
  static List<String> of(String key, Map<String, String> spellings) {
    record Near(String material, double likeness) {}
    return spellings.entrySet().stream()
        .map(e -> new Near(e.getValue(), likeness(key, e.getKey())))
        .filter(n -> n.likeness() >= 0.4)
        .sorted(Comparator.comparingDouble(Near::likeness).reversed().thenComparing(Near::material))
        .map(Near::material)
        .distinct()
        .limit(MOST)
        .toList();
  }

  /** Dice's share of common pairs of letters, 0 to 1. */
  private static double likeness(String a, String b) {
    int pairs = Math.max(0, a.length() - 1) + Math.max(0, b.length() - 1);
    if (pairs == 0) {
      return 0;
    }
    StringBuilder left = new StringBuilder(b);
    int common = 0;
    for (int i = 0; i + 1 < a.length(); i++) {
      int at = left.indexOf(a.substring(i, i + 2));
      if (at >= 0) {
        common++;
        // a pair counts once; the mark is in no key
        left.setCharAt(at, '\u0000');
      }
    }
    return 2.0 * common / pairs;
  }
}
