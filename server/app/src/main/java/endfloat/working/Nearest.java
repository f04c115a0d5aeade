package endfloat.working;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Known names that a misspelt one may have meant. */
public final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /** Best first, at most three; those that begin with what was written count as near too. */
  static List<String> of(String written, Collection<String> known) {
    String small = written.toLowerCase(Locale.ROOT);
    int far = written.length() < 3 ? 0 : (written.length() + 1) / 3;
    return known.stream()
        .distinct()
        .filter(k -> !k.equals(written))
        .filter(k -> distance(small, k.toLowerCase(Locale.ROOT)) <= far || begins(small, k))
        .sorted(
            Comparator.<String>comparingInt(k -> distance(small, k.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  private static boolean begins(String small, String known) {
    return small.length() > 3 && known.toLowerCase(Locale.ROOT).startsWith(small);
  }

  /** {@code Nearest: a, b}, or what else to do. */
  public static String wayOut(String written, Collection<String> known, String otherwise) {
    List<String> nearest = of(written, known);
    return nearest.isEmpty() ? otherwise : "Nearest: " + String.join(", ", nearest);
  }

  /** {@code "a", "b" or "c"}. */
  static String choices(Collection<String> texts) {
    List<String> quoted = texts.stream().map(t -> "\"" + t + "\"").collect(Collectors.toList());
    if (quoted.size() < 2) {
      return String.join("", quoted);
    }
    String last = quoted.remove(quoted.size() - 1);
    return String.join(", ", quoted) + " or " + last;
  }

  /** Letters to insert, take out, exchange, or swap with their neighbour. */
  static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] now = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int other = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(last[j - 1] + other, Math.min(last[j], now[j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          best = Math.min(best, beforeLast[j - 2] + 1);
        }
        now[j] = best;
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = now;
      now = spare;
    }
    return last[b.length()];
  }
}
