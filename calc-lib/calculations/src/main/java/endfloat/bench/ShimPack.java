package endfloat.bench;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Which shims of the stock make up a pack, or two packs at once. */
public final class ShimPack {
  /** Thicknesses are counted in steps of 0.01 um: thous, tenths and micrometres are whole. */
  private static final double STEP = 1e-8;

  private ShimPack() {}

  /**
   * The best pack or packs.
   *
   * @param shims thicknesses taken, the first pack first
   * @param counts how many shims each pack has
   * @param totals thickness of each pack
   * @param misses pack less target, of each pack
   * @param remainder worst miss without its sign
   * @param pieces shims taken in all
   * @param places of the shims in the stock, counted from 1
   * @param packs in words
   */
  public record Packs(
      @In("mm") double[] shims,
      @In("1") double[] counts,
      @In("mm") double[] totals,
      @In("mm") double[] misses,
      @In("mm") double remainder,
      @In("1") double pieces,
      @In("1") double[] places,
      String packs) {}

  /**
   * Shims for one pack, or for two packs at once from one stock: the least worst miss, then the
   * fewest pieces, each shim used once. The answer is exact, not a good guess.
   *
   * <p>All sums within a bound of the target are found by halving the stock and meeting in the
   * middle; the bound starts at the best miss that each pack could have alone and widens only if
   * the two packs want the same shims.
   *
   * @param target thickness wanted, of one pack or of two
   * @param stock measured thickness of every shim, one entry a shim
   * @param most shims allowed in a pack
   * @return the shims of each pack and what is left
   * @throws RefusedException with no or more than two targets, more than 60 shims, or a target out
   *     of reach
   */
  @Calculates(
      source = "derived: exhaustive search by meeting in the middle; checked against enumeration",
      cautions = {
        "Measure each shim: a pack of nominal thicknesses adds up their errors.",
        "Each shim adds its own uncertainty; many thin shims also spring."
      },
      terms = {"shim", "shim stock", "mounting distance", "preload", "laminated shim"},
      partials = "shimPackPartials")
  public static Packs shimPack(
      @In("mm") double[] target,
      @In("mm") double[] stock,
      @In("1") @Range("1 .. 8") @Default("6") double most) {
    if (target.length < 1 || target.length > 2) {
      throw new RefusedException("give one target, or two for two packs from one stock");
    }
    if (stock.length == 0 || stock.length > 60) {
      throw new RefusedException("the stock must hold 1 to 60 shims; it holds " + stock.length);
    }
    if (most != Math.rint(most)) {
      throw new RefusedException("most is a whole number of shims");
    }
    long[] thickness = new long[stock.length];
    for (int i = 0; i < stock.length; i++) {
      if (!(stock[i] > 0 && stock[i] < 1)) {
        throw new RefusedException(
            "shim " + (i + 1) + " of the stock must have a thickness above 0 and below 1 m");
      }
      thickness[i] = Math.round(stock[i] / STEP);
    }
    long[] wanted = new long[target.length];
    for (int i = 0; i < target.length; i++) {
      if (!(target[i] >= 0 && target[i] < 10)) {
        throw new RefusedException("a target cannot be below zero or above 10 m");
      }
      wanted[i] = Math.round(target[i] / STEP);
    }
    ShimSearch search = new ShimSearch(thickness, (int) most);
    for (int i = 0; i < wanted.length; i++) {
      if (wanted[i] > search.thickest() + search.thinnest() / 2) {
        throw new RefusedException(
            String.format(
                Locale.ROOT,
                "target %d is out of reach: the thickest pack of %d is %.3f mm",
                i + 1,
                (int) most,
                search.thickest() * STEP * 1000));
      }
    }
    return packs(search.best(wanted), target, stock);
  }

  /**
   * Of {@link #shimPack}: the shims taken stay the ones taken. Rows are the numbers of the results
   * in order, columns the targets, the stock and the most shims.
   */
  public static double[][] shimPackPartials(double[] target, double[] stock, double most) {
    Packs packs = shimPack(target, stock, most);
    int taken = packs.shims().length;
    int count = packs.counts().length;
    double[][] rows = new double[2 * taken + 3 * count + 2][target.length + stock.length + 1];
    int totals = taken + count;
    int misses = totals + count;
    int next = 0;
    int worst = 0;
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < packs.counts()[k]; i++, next++) {
        int column = target.length + (int) packs.places()[next] - 1;
        rows[next][column] = 1;
        rows[totals + k][column] = 1;
        rows[misses + k][column] = 1;
      }
      rows[misses + k][k] = -1;
      worst = Math.abs(packs.misses()[k]) > Math.abs(packs.misses()[worst]) ? k : worst;
    }
    double sign = packs.misses()[worst] < 0 ? -1 : 1;
    for (int c = 0; c < rows[0].length; c++) {
      rows[misses + count][c] = sign * rows[misses + worst][c];
    }
    return rows;
  }

  private static Packs packs(List<List<Integer>> taken, double[] target, double[] stock) {
    double[] totals = new double[taken.size()];
    double[] misses = new double[taken.size()];
    double[] counts = new double[taken.size()];
    List<Integer> places = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    double worst = 0;
    for (int k = 0; k < taken.size(); k++) {
      words.append(k == 0 ? "" : "; ");
      if (taken.size() > 1) {
        words.append("pack ").append(k + 1).append(": ");
      }
      String plus = "";
      for (int place : taken.get(k)) {
        totals[k] += stock[place];
        words.append(plus).append(text(stock[place]));
        plus = " + ";
        places.add(place);
      }
      words.append(taken.get(k).isEmpty() ? "none" : " mm");
      counts[k] = taken.get(k).size();
      misses[k] = snapped(totals[k] - target[k]);
      worst = Math.max(worst, Math.abs(misses[k]));
    }
    double[] shims = places.stream().mapToDouble(place -> stock[place]).toArray();
    double[] numbers = places.stream().mapToDouble(place -> place + 1).toArray();
    return new Packs(
        shims, counts, totals, misses, worst, places.size(), numbers, words.toString());
  }

  /** The rounding of sums in metres is no miss. */
  private static double snapped(double miss) {
    return Math.abs(miss) < 1e-13 ? 0 : miss;
  }

  /** Millimetres to 0.1 um at most, without trailing zeros. */
  private static String text(double thickness) {
    String text = String.format(Locale.ROOT, "%.4f", thickness * 1000);
    int end = text.length();
    while (text.charAt(end - 1) == '0' && text.charAt(end - 3) != '.') {
      end--;
    }
    return text.substring(0, end);
  }
}
