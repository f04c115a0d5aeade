package endfloat.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Against enumeration of every choice, which is the whole truth for a small stock. */
class ShimPackTest {
  private static double[] micrometres(long... values) {
    double[] metres = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      metres[i] = values[i] / 1e6;
    }
    return metres;
  }

  /** Least worst miss, then fewest pieces, in one number, by trying every shim in every place. */
  private static long enumerated(long[] stock, long[] targets, int most) {
    int packs = targets.length;
    long best = Long.MAX_VALUE;
    long choices = 1;
    for (int i = 0; i < stock.length; i++) {
      choices *= packs + 1;
    }
    for (long choice = 0L; choice < choices; choice++) {
      long[] sums = new long[packs];
      int[] counts = new int[packs];
      long rest = choice;
      int pieces = 0;
      for (long shim : stock) {
        int place = (int) (rest % (packs + 1));
        rest /= packs + 1;
        if (place > 0) {
          sums[place - 1] += shim;
          counts[place - 1]++;
          pieces++;
        }
      }
      long worst = 0;
      for (int k = 0; k < packs; k++) {
        worst = counts[k] > most ? Long.MAX_VALUE / 1000 : worst;
        worst = Math.max(worst, Math.abs(sums[k] - targets[k]));
      }
      best = Math.min(best, worst * 100 + pieces);
    }
    return best;
  }

  private static long found(ShimPack.Packs packs) {
    return Math.round(packs.remainder() * 1e6) * 100 + (long) packs.pieces();
  }

  private static long[] randomStock(Random random, int size, int spread) {
    long[] stock = new long[size];
    for (int i = 0; i < size; i++) {
      stock[i] = 20 + random.nextInt(spread);
    }
    return stock;
  }

  /** A target that one shim can reach, or targets that may have to share it. */
  private static long within(Random random, long[] stock) {
    return random.nextInt((int) Arrays.stream(stock).max().getAsLong() + 1);
  }

  @Property(tries = 150)
  void onePackAsGoodAsEnumeration(
      @ForAll int seed,
      @ForAll @IntRange(min = 1, max = 12) int size,
      @ForAll @IntRange(min = 1, max = 6) int most,
      @ForAll @IntRange(min = 3, max = 400) int spread) {
    Random random = new Random(seed);
    long[] stock = randomStock(random, size, spread);
    long[] target = {within(random, stock)};
    ShimPack.Packs packs = ShimPack.shimPack(micrometres(target), micrometres(stock), most);
    assertEquals(enumerated(stock, target, most), found(packs));
  }

  @Property(tries = 150)
  void twoPacksAsGoodAsEnumeration(
      @ForAll int seed,
      @ForAll @IntRange(min = 2, max = 9) int size,
      @ForAll @IntRange(min = 1, max = 5) int most,
      @ForAll @IntRange(min = 3, max = 400) int spread) {
    Random random = new Random(seed);
    long[] stock = randomStock(random, size, spread);
    long[] targets = {within(random, stock), within(random, stock)};
    ShimPack.Packs packs = ShimPack.shimPack(micrometres(targets), micrometres(stock), most);
    assertEquals(enumerated(stock, targets, most), found(packs));
  }

  @Property(tries = 50)
  void everyShimIsUsedOnceAndTheTotalsAreRight(
      @ForAll int seed, @ForAll @IntRange(min = 10, max = 40) int size) {
    Random random = new Random(seed);
    double[] stock = micrometres(randomStock(random, size, 900));
    double[] targets = micrometres(1000 + random.nextInt(500), 600 + random.nextInt(500));
    ShimPack.Packs packs = ShimPack.shimPack(targets, stock, 6);
    Set<Double> used = new HashSet<>();
    int next = 0;
    for (int k = 0; k < 2; k++) {
      double sum = 0;
      for (int i = 0; i < packs.counts()[k]; i++, next++) {
        assertTrue(used.add(packs.places()[next]));
        assertEquals(stock[(int) packs.places()[next] - 1], packs.shims()[next]);
        sum += packs.shims()[next];
      }
      assertEquals(sum, packs.totals()[k], 1e-15);
      assertEquals(sum - targets[k], packs.misses()[k], 1e-12);
    }
    assertEquals(next, packs.shims().length);
  }

  /** The size that must answer in under a second: measured 0.02 to 0.13 s when written. */
  @Test
  void fortyShimsSixAPackTwoMeshesInUnderASecond() {
    Random random = new Random(5);
    double[] stock = micrometres(randomStock(random, 40, 950));
    ShimPack.shimPack(micrometres(2000, 1500), stock, 6);
    long start = System.nanoTime();
    ShimPack.Packs packs = ShimPack.shimPack(micrometres(2126, 1983), stock, 6);
    assertTrue(System.nanoTime() - start < 1_000_000_000L);
    assertEquals(0, packs.remainder());
  }

  @Test
  void saysTheTakenShimsInWords() {
    ShimPack.Packs packs =
        ShimPack.shimPack(micrometres(650, 250), micrometres(100, 150, 500, 250, 50), 3);
    assertEquals("pack 1: 0.50 + 0.15 mm; pack 2: 0.25 mm", packs.packs());
  }

  @Test
  void refusesWhatItCannotDo() {
    assertEquals(
        "target 1 is out of reach: the thickest pack of 2 is 0.750 mm",
        assertThrows(
                RefusedException.class,
                () -> ShimPack.shimPack(micrometres(2000), micrometres(100, 500, 250), 2))
            .getMessage());
    assertThrows(
        RefusedException.class,
        () -> ShimPack.shimPack(micrometres(100, 100, 100), micrometres(100), 2));
    assertThrows(
        RefusedException.class, () -> ShimPack.shimPack(micrometres(100), new double[61], 2));
  }

  /** A pack is as uncertain as the shims in it, not as the stock. */
  @Test
  void theShimsTakenCarryTheirOwnUncertainty() {
    double[] target = micrometres(650, 250);
    double[] stock = micrometres(100, 150, 500, 250, 50);
    ShimPack.Packs packs = ShimPack.shimPack(target, stock, 3);
    double[][] rows = ShimPack.shimPackPartials(target, stock, 3);
    assertEquals(
        packs.shims().length
            + packs.counts().length
            + packs.totals().length
            + packs.misses().length
            + 2
            + packs.places().length,
        rows.length);
    // pack 1 is 0.50 + 0.15, pack 2 is 0.25: columns are two targets, five shims, the most
    double[] total1 = rows[packs.shims().length + 2];
    assertEquals("[0.0, 0.0, 0.0, 1.0, 1.0, 0.0, 0.0, 0.0]", java.util.Arrays.toString(total1));
    double[] miss2 = rows[packs.shims().length + 5];
    assertEquals("[0.0, -1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0]", java.util.Arrays.toString(miss2));
  }
}
