package endfloat.fits;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The published chains are in checks/chain_*.check; here the rules that physics gives. */
class DimensionChainTest {
  private static final double NONE = Double.NaN;

  private static Link link(double nominal, double lower, double upper, double sense) {
    return new Link(nominal, NONE, upper, lower, sense, Link.Distribution.NORMAL, 0);
  }

  private static List<Link> random(int seed, int size) {
    Random random = new Random(seed);
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      double lower = (random.nextDouble() - 0.7) * 1e-4;
      links.add(
          link(
              random.nextDouble() * 0.1,
              lower,
              lower + random.nextDouble() * 1e-4,
              random.nextBoolean() ? 1 : -1));
    }
    return links;
  }

  /** Second method: every corner of the limits, one after the other. */
  @Property(tries = 100)
  void worstCaseIsTheExtremeOfAllCorners(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 8) int size) {
    List<Link> links = random(seed, size);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int corner = 0; corner < 1 << size; corner++) {
      double gap = 0;
      for (int i = 0; i < size; i++) {
        Link link = links.get(i);
        double size1 = link.nominal() + ((corner >> i & 1) == 0 ? link.lower() : link.upper());
        gap += link.sense() * size1;
      }
      low = Math.min(low, gap);
      high = Math.max(high, gap);
    }
    DimensionChain.Gap gap = DimensionChain.chainWorstCase(links);
    assertEquals(low, gap.low(), 1e-15);
    assertEquals(high, gap.high(), 1e-15);
  }

  @Property(tries = 100)
  void rootSumSquareLiesWithinTheWorstCaseAndSharesAddUpToOne(
      @ForAll int seed, @ForAll @IntRange(min = 1, max = 8) int size) {
    List<Link> links = random(seed, size);
    DimensionChain.LikelyGap likely = DimensionChain.chainRss(links, 1);
    assertTrue(
        likely.tolerance() <= DimensionChain.chainWorstCase(links).tolerance() * (1 + 1e-12));
    double sum = 0;
    for (double share : likely.contributions()) {
      sum += share;
    }
    assertEquals(1, sum, 1e-12);
  }

  /** Round trip: allocated tolerances put back give the wanted gap. */
  @Property(tries = 100)
  void allocatedTolerancesGiveTheWantedGap(
      @ForAll int seed, @ForAll @IntRange(min = 2, max = 8) int size, @ForAll boolean rss) {
    List<Link> links = random(seed, size);
    double mean = DimensionChain.mean(links);
    DimensionChain.Method method = rss ? DimensionChain.Method.RSS : DimensionChain.Method.WORST;
    DimensionChain.Allocation allocation =
        DimensionChain.chainAllocate(links, mean - 5e-5, mean + 7e-5, method);
    List<Link> tightened = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      tightened.add(
          new Link(
              links.get(i).middle(),
              allocation.tolerances()[i],
              NONE,
              NONE,
              links.get(i).sense(),
              Link.Distribution.NORMAL,
              0));
    }
    double low =
        rss
            ? DimensionChain.chainRss(tightened, 1).low()
            : DimensionChain.chainWorstCase(tightened).low();
    assertEquals(mean - 5e-5, low, 1e-14);
  }

  @Test
  void refusesWhatIsNotClear() {
    assertEquals(
        "a link takes tolerance, or upper and lower, not both: which one holds?",
        assertThrows(
                RefusedException.class,
                () -> new Link(0.1, 1e-5, 1e-5, NONE, 1, Link.Distribution.NORMAL, 0).half())
            .getMessage());
    assertThrows(RefusedException.class, () -> DimensionChain.chainWorstCase(List.of()));
    assertThrows(RefusedException.class, () -> link(0.1, 2e-5, 1e-5, 1).half());
  }

  /** Second method: sigma of three distributions is known in closed form, T/3, T/√3, T/√6. */
  @Test
  void trialsAgreeWithTheClosedForm() {
    List<Link> links = new ArrayList<>();
    double variance = 0;
    for (Link.Distribution distribution : Link.Distribution.values()) {
      links.add(new Link(0.05, 1e-4, NONE, NONE, 1, distribution, 0));
      double sigma =
          1e-4
              / switch (distribution) {
                case NORMAL -> 3;
                case RECTANGULAR -> Math.sqrt(3);
                case TRIANGULAR -> Math.sqrt(6);
              };
      variance += sigma * sigma;
    }
    ChainTrials.TriedGap gap =
        ChainTrials.chainMonteCarlo(links, NONE, NONE, 3, 400_000, 7, Progress.IGNORED);
    // four standard errors
    assertEquals(0.15, gap.mean().value(), 4 * Math.sqrt(variance / 400_000));
    assertEquals(Math.sqrt(variance), gap.sigma().value(), 4 * Math.sqrt(variance / 800_000));
  }

  @Test
  void theSameSeedGivesTheSameTrialsAndAnotherSeedOthers() {
    List<Link> links = random(3, 4);
    ChainTrials.TriedGap one =
        ChainTrials.chainMonteCarlo(links, 0, NONE, 3, 10_000, 1, Progress.IGNORED);
    ChainTrials.TriedGap again =
        ChainTrials.chainMonteCarlo(links, 0, NONE, 3, 10_000, 1, Progress.IGNORED);
    ChainTrials.TriedGap other =
        ChainTrials.chainMonteCarlo(links, 0, NONE, 3, 10_000, 2, Progress.IGNORED);
    assertEquals(one.mean(), again.mean());
    assertEquals(one.low(), again.low());
    assertTrue(one.mean().value() != other.mean().value());
    assertArrayEquals(one.contributions(), other.contributions());
    assertThrows(
        RefusedException.class,
        () -> ChainTrials.chainMonteCarlo(links, 0, NONE, 3, 10_000, 1, fraction -> false));
  }

  /**
   * Second method: two hundred seeds. What the results scatter by from seed to seed is what each of
   * them says that it is uncertain by; the scatter of 200 is known to 5 %.
   */
  @Test
  void trialsSayHowFarTheirOwnNumberLeavesThemUncertain() {
    List<Link> links =
        List.of(
            new Link(0.01, 1e-4, NONE, NONE, 1, Link.Distribution.NORMAL, 0),
            new Link(0.009, 1e-4, NONE, NONE, -1, Link.Distribution.NORMAL, 0));
    List<Function<ChainTrials.TriedGap, Uncertain>> results =
        List.of(
            ChainTrials.TriedGap::mean,
            ChainTrials.TriedGap::sigma,
            ChainTrials.TriedGap::low,
            ChainTrials.TriedGap::high,
            ChainTrials.TriedGap::below);
    int seeds = 200;
    double[] sum = new double[results.size()];
    double[] squares = new double[results.size()];
    double[] stated = new double[results.size()];
    for (int seed = 0; seed < seeds; seed++) {
      ChainTrials.TriedGap gap =
          ChainTrials.chainMonteCarlo(links, 9.2e-4, NONE, 3, 20_000, seed, Progress.IGNORED);
      for (int i = 0; i < sum.length; i++) {
        Uncertain result = results.get(i).apply(gap);
        sum[i] += result.value();
        squares[i] += result.value() * result.value();
        stated[i] += result.standardUncertainty() * result.standardUncertainty() / seeds;
      }
      assertTrue(gap.above().isAbsent());
    }
    for (int i = 0; i < sum.length; i++) {
      double scatter = Math.sqrt((squares[i] - sum[i] * sum[i] / seeds) / (seeds - 1));
      assertEquals(scatter, Math.sqrt(stated[i]), 0.2 * scatter, "result " + i);
    }
  }
}
