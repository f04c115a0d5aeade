package endfloat.fits;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Progress;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.numerics.RandomStream;
import endfloat.units.Uncertain;
import java.util.Arrays;
import java.util.List;

/** A chain assembled many times with sizes drawn at random. */
public final class ChainTrials {
  private static final int BLOCK = 4096;
  private static final double ROOT_SIX = StrictMath.sqrt(6);
  private static final double ROOT_THREE = StrictMath.sqrt(3);

  private ChainTrials() {}

  /**
   * The gap over all trials. What so few or many trials leave uncertain of it is in its figures.
   *
   * @param mean of the gap
   * @param sigma standard deviation of the gap
   * @param low gap that 0.135 % of the trials lie below
   * @param high gap that 0.135 % of the trials lie above
   * @param least smallest gap of all trials
   * @param greatest largest gap of all trials
   * @param below share below the least gap wanted
   * @param above share above the greatest gap wanted
   * @param reject share outside
   * @param contributions of the links in order: their share of the variance by their distributions
   */
  public record TriedGap(
      @In("mm") Uncertain mean,
      @In("mm") Uncertain sigma,
      @In("mm") Uncertain low,
      @In("mm") Uncertain high,
      @In("mm") double least,
      @In("mm") double greatest,
      @In("1") Uncertain below,
      @In("1") Uncertain above,
      @In("1") Uncertain reject,
      @In("1") double[] contributions) {}

  /**
   * Gap of a chain by trials: each link drawn from its distribution about the middle of its limits.
   *
   * <p>The same seed gives the same result on every machine. A normal link is not cut off at its
   * limits.
   *
   * @param links dimensions with their tolerance, sense and distribution
   * @param wantedLeast least gap wanted
   * @param wantedGreatest greatest gap wanted
   * @param sigmas standard deviations in the tolerance of a normal link
   * @param trials how many
   * @param seed any whole number
   * @param progress told after every block of trials
   * @return the gap over all trials
   * @throws RefusedException if a link's tolerance is not clear, or the work was cancelled
   */
  @Calculates(
      name = "chain_monte_carlo",
      source =
          "JCGM 101:2008, propagation of distributions; normals by the ziggurat of Marsaglia and"
              + " Tsang (2000), bits by SplitMix64",
      cautions = {
        "The least and the greatest of all trials go on moving with more of them.",
        "Links are drawn independently: one batch or one worn tool is not."
      },
      terms = {"tolerance stack", "simulation", "yield", "random"},
      heavy = true)
  public static TriedGap chainMonteCarlo(
      List<Link> links,
      @In("mm") @Default(Default.NOT_GIVEN) double wantedLeast,
      @In("mm") @Default(Default.NOT_GIVEN) double wantedGreatest,
      @In("1") @Range("> 0") @Default("3") double sigmas,
      @In("1") @Range("1000 .. 1e7") @Default("100000") double trials,
      @In("1") @Default("1") double seed,
      Progress progress) {
    DimensionChain.needLinks(links);
    DimensionChain.refuseCrossed(wantedLeast, wantedGreatest);
    int n = (int) Math.rint(trials);
    double middle = DimensionChain.mean(links);
    double[] spread = spread(links, sigmas);
    double[] gaps = new double[n];
    for (int start = 0; start < n; start += BLOCK) {
      RandomStream random = new RandomStream((long) seed, start / BLOCK);
      int end = Math.min(n, start + BLOCK);
      for (int i = start; i < end; i++) {
        double gap = middle;
        for (int k = 0; k < spread.length; k++) {
          gap += spread[k] * drawn(links.get(k).distribution(), random);
        }
        gaps[i] = gap;
      }
      if (!progress.reached((double) end / n)) {
        throw new RefusedException("the trials were cancelled");
      }
    }
    return summary(gaps, wantedLeast, wantedGreatest, shares(spread));
  }

  /** Standard deviation of each link's part of the gap, with the sign of its sense. */
  private static double[] spread(List<Link> links, double sigmas) {
    double[] spread = new double[links.size()];
    for (int i = 0; i < spread.length; i++) {
      Link link = links.get(i);
      double divisor =
          switch (link.distribution()) {
            case NORMAL -> sigmas;
            case RECTANGULAR -> ROOT_THREE;
            case TRIANGULAR -> ROOT_SIX;
          };
      spread[i] = link.sense() * link.half() / divisor;
    }
    return spread;
  }

  /** A number of mean 0 and standard deviation 1. */
  private static double drawn(Link.Distribution distribution, RandomStream random) {
    return switch (distribution) {
      case NORMAL -> random.normal();
      case RECTANGULAR -> ROOT_THREE * (2 * random.uniform() - 1);
      case TRIANGULAR -> ROOT_SIX * (random.uniform() + random.uniform() - 1);
    };
  }

  private static double[] shares(double[] spread) {
    double variance = 0;
    for (double value : spread) {
      variance += value * value;
    }
    double[] shares = new double[spread.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = variance == 0 ? 0 : spread[i] * spread[i] / variance;
    }
    return shares;
  }

  private static TriedGap summary(
      double[] gaps, double wantedLeast, double wantedGreatest, double[] shares) {
    int n = gaps.length;
    double sum = 0;
    int below = 0;
    int above = 0;
    for (double gap : gaps) {
      sum += gap;
      below += gap < wantedLeast ? 1 : 0;
      above += gap > wantedGreatest ? 1 : 0;
    }
    double mean = sum / n;
    double squares = 0;
    for (double gap : gaps) {
      squares += (gap - mean) * (gap - mean);
    }
    Arrays.sort(gaps);
    double sigma = StrictMath.sqrt(squares / (n - 1));
    return new TriedGap(
        new Uncertain(mean, sigma / Math.sqrt(n)),
        new Uncertain(sigma, sigma / Math.sqrt(2.0 * n)),
        end(gaps, 0.00135),
        end(gaps, 0.99865),
        gaps[0],
        gaps[n - 1],
        share(below, n, Double.isNaN(wantedLeast) ? "give wanted_least" : ""),
        share(above, n, Double.isNaN(wantedGreatest) ? "give wanted_greatest" : ""),
        share(
            below + above,
            n,
            Double.isNaN(wantedLeast) && Double.isNaN(wantedGreatest)
                ? "give wanted_least, wanted_greatest or both"
                : ""),
        shares);
  }

  /**
   * A share found in n trials; of none found it is known only that there is less than one or so.
   */
  private static Uncertain share(int found, int n, String lacking) {
    if (!lacking.isEmpty()) {
      return Uncertain.absent("a share outside needs the gap that is wanted: " + lacking);
    }
    double share = (double) found / n;
    return new Uncertain(share, Math.max(deviation(share, n), found == 0 ? 1.0 / n : 0));
  }

  /** A quantile, as uncertain as the share that lies below it. */
  private static Uncertain end(double[] sorted, double share) {
    double away = deviation(share, sorted.length);
    double low = quantile(sorted, Math.max(0, share - away));
    double high = quantile(sorted, Math.min(1, share + away));
    return new Uncertain(quantile(sorted, share), (high - low) / 2);
  }

  /** Standard deviation of a share by the binomial distribution. */
  private static double deviation(double share, int n) {
    return Math.sqrt(share * (1 - share) / n);
  }

  /** Between the two nearest of the sorted values. */
  private static double quantile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int i = (int) place;
    return i + 1 == sorted.length
        ? sorted[i]
        : sorted[i] + (place - i) * (sorted[i + 1] - sorted[i]);
  }
}
