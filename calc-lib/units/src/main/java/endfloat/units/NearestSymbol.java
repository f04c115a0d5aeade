package endfloat.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds symbols that a misspelt one may have meant. */
final class NearestSymbol {
  private static final int MOST = 3;

  private NearestSymbol() {}

  /** Best first: another case, then by letters changed, left out, put in or swapped. */
  static List<String> of(String typed, Collection<String> symbols) {
    int allowed = typed.length() <= 3 ? 1 : 2;
    record Near(String symbol, int cost) {}
    return symbols.stream()
        .map(s -> new Near(s, cost(typed, s)))
        .filter(n -> n.cost() <= 2 * allowed)
        .sorted(
            Comparator.comparingInt(Near::cost)
                .thenComparing(n -> n.symbol().length())
                .thenComparing(Near::symbol))
        .map(Near::symbol)
        .limit(MOST)
        .toList();
  }

  /** Twice the changes; a mere change of case counts one in all. */
  private static int cost(String typed, String symbol) {
    String a = typed.toLowerCase(Locale.ROOT);
    String b = symbol.toLowerCase(Locale.ROOT);
    if (a.equals(b)) {
      return 1;
    }
    int changes = changes(a, b);
    return changes >= Math.max(a.length(), b.length()) ? Integer.MAX_VALUE : 2 * changes;
  }

  /** Restricted Damerau-Levenshtein distance. */
  private static int changes(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        d[i][j] = Math.min(replaced, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], 1 + d[i - 2][j - 2]);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
