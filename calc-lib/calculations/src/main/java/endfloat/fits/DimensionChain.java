package endfloat.fits;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.numerics.Normal;
import java.util.List;

/**
 * A gap that closes a chain of dimensions: its limits, the share of each link, and the way back
 * from a wanted gap to sizes and tolerances. Unequal tolerances are first moved to the middle of
 * their limits.
 */
public final class DimensionChain {
  private static final String SCHOLZ =
      "F. Scholz, Tolerance Stack Analysis Methods, Boeing Information and Support Services,"
          + " December 1995";

  private DimensionChain() {}

  /**
   * Limits of a gap.
   *
   * @param nominal gap at the nominal sizes
   * @param mean gap at the middles of all limits
   * @param tolerance half the width of the gap's limits
   * @param low least gap; negative is interference
   * @param high greatest gap
   * @param contributions of the links in order: their part of the tolerance
   */
  public record Gap(
      @In("mm") double nominal,
      @In("mm") double mean,
      @In("mm") double tolerance,
      @In("mm") double low,
      @In("mm") double high,
      @In("mm") double[] contributions) {}

  /**
   * Worst case of a chain: every link at its worst end at once, {@code T = Σ |s_i| t_i}.
   *
   * @param links dimensions with their tolerance and sense
   * @return limits that no part within its own limits can break
   * @throws RefusedException if there is no link, or a link's tolerance is not clear
   */
  @Calculates(
      source =
          "arithmetical tolerance chain: Shigley's Mechanical Engineering Design, 9th ed., Example"
              + " 1-3; "
              + SCHOLZ,
      cautions = "Form and position are not in the sizes: give them links of their own.",
      terms = {"tolerance stack", "stack-up", "tolerance build-up", "gap", "arithmetic"})
  public static Gap chainWorstCase(List<Link> links) {
    needLinks(links);
    double[] contributions = contributions(links);
    double sum = 0;
    for (double contribution : contributions) {
      sum += contribution;
    }
    double mean = mean(links);
    return new Gap(nominal(links), mean, sum, mean - sum, mean + sum, contributions);
  }

  /**
   * Limits of a gap by root sum square.
   *
   * @param nominal gap at the nominal sizes
   * @param mean gap at the middles of all limits
   * @param tolerance half the width of the gap's limits
   * @param low least gap expected
   * @param high greatest gap expected
   * @param contributions of the links in order: their share of the variance, 1 in all
   */
  public record LikelyGap(
      @In("mm") double nominal,
      @In("mm") double mean,
      @In("mm") double tolerance,
      @In("mm") double low,
      @In("mm") double high,
      @In("1") double[] contributions) {}

  /**
   * Root sum square of a chain: {@code T = factor √(Σ (s_i t_i)²)}.
   *
   * @param links dimensions with their tolerance and sense
   * @param factor inflation for processes off their middle; 1 for none, 1.5 after Bender
   * @return limits that hold for most assemblies, not for all
   * @throws RefusedException if there is no link, or a link's tolerance is not clear
   */
  @Calculates(
      source = "root sum square: " + SCHOLZ + "; factor 1.5: A. Bender, SAE paper 680490 (1968)",
      cautions = {
        "Holds for sizes that vary independently about the middle of their limits; a tool that"
            + " wears, or one batch, does not.",
        "Some assemblies lie outside: chain_reject says how many."
      },
      terms = {"tolerance stack", "RSS", "statistical tolerancing", "inflated", "Bender"})
  public static LikelyGap chainRss(
      List<Link> links, @In("1") @Range(">= 1") @Default("1") double factor) {
    needLinks(links);
    double[] contributions = contributions(links);
    double variance = 0;
    for (double contribution : contributions) {
      variance += contribution * contribution;
    }
    for (int i = 0; i < contributions.length; i++) {
      contributions[i] = variance == 0 ? 0 : contributions[i] * contributions[i] / variance;
    }
    double mean = mean(links);
    double tolerance = factor * StrictMath.sqrt(variance);
    return new LikelyGap(
        nominal(links), mean, tolerance, mean - tolerance, mean + tolerance, contributions);
  }

  /**
   * Assemblies outside the wanted gap.
   *
   * @param sigma standard deviation of the gap
   * @param margin standard deviations from the mean to the nearer limit; negative if past it
   * @param below share below the least gap
   * @param above share above the greatest gap
   * @param reject share outside
   */
  public record Reject(
      @In("mm") double sigma,
      @In("1") double margin,
      @In("1") double below,
      @In("1") double above,
      @In("1") double reject) {}

  /**
   * Share of assemblies outside a wanted gap when each tolerance is so many standard deviations of
   * a normal distribution: {@code σ = T/n}, {@code P = Φ((least − mean)/σ)}.
   *
   * @param links dimensions with their tolerance and sense
   * @param least least gap wanted
   * @param greatest greatest gap wanted
   * @param sigmas n, standard deviations in a tolerance; 3 where processes just hold it
   * @param factor inflation of the root sum square
   * @return shares outside
   * @throws RefusedException if neither limit is given, they are crossed, or the chain does not
   *     vary
   */
  @Calculates(
      source = "derived: normal distribution, sigma = root sum square / sigmas; " + SCHOLZ,
      cautions = "The tails are those of a normal distribution; real ones are seldom known so far.",
      terms = {"reject rate", "yield", "ppm", "tolerance stack"})
  public static Reject chainReject(
      List<Link> links,
      @In("mm") @Default(Default.NOT_GIVEN) double least,
      @In("mm") @Default(Default.NOT_GIVEN) double greatest,
      @In("1") @Range("> 0") @Default("3") double sigmas,
      @In("1") @Range(">= 1") @Default("1") double factor) {
    LikelyGap gap = chainRss(links, factor);
    if (Double.isNaN(least) && Double.isNaN(greatest)) {
      throw new RefusedException("give the least gap wanted, the greatest, or both");
    }
    refuseCrossed(least, greatest);
    if (gap.tolerance() == 0) {
      throw new RefusedException("no link of the chain varies: there is nothing to reckon");
    }
    double sigma = gap.tolerance() / sigmas;
    double toLeast = Double.isNaN(least) ? Double.POSITIVE_INFINITY : (gap.mean() - least) / sigma;
    double toGreatest =
        Double.isNaN(greatest) ? Double.POSITIVE_INFINITY : (greatest - gap.mean()) / sigma;
    double below = tail(toLeast);
    double above = tail(toGreatest);
    return new Reject(sigma, Math.min(toLeast, toGreatest), below, above, below + above);
  }

  /** Share of a normal distribution beyond z standard deviations. */
  private static double tail(double z) {
    return Double.isInfinite(z) ? 0 : Normal.above(z);
  }

  /** How the tolerances of a chain add up. */
  public enum Method {
    WORST,
    RSS
  }

  /**
   * Nominal size of one link that puts the gap where it is wanted, all tolerances as they are.
   *
   * <p>With only the least gap wanted the gap just reaches it, likewise with only the greatest;
   * with both the gap lies in the middle.
   *
   * @param links dimensions with their tolerance and sense, the wanted one with any nominal
   * @param link which one, counted from 1
   * @param least least gap wanted
   * @param greatest greatest gap wanted
   * @param method how tolerances add: worst (every link at its worst end) or rss
   * @return nominal size of that link
   * @throws RefusedException if both limits are given and the tolerances do not fit between them
   */
  @Calculates(
      source =
          "derived from the chain; Shigley's Mechanical Engineering Design, 9th ed., Example 1-3",
      terms = {"tolerance stack", "basic size", "gap", "inverse"})
  @In("mm")
  public static double chainNominal(
      List<Link> links,
      @In("1") @Range(">= 1") double link,
      @In("mm") @Default(Default.NOT_GIVEN) double least,
      @In("mm") @Default(Default.NOT_GIVEN) double greatest,
      @Default("\"worst\"") Method method) {
    needLinks(links);
    int which = (int) Math.rint(link) - 1;
    if (which != link - 1 || which >= links.size()) {
      throw new RefusedException(
          "link counts the links from 1: there are " + links.size() + " of them");
    }
    if (Double.isNaN(least) && Double.isNaN(greatest)) {
      throw new RefusedException("give the least gap wanted, the greatest, or both");
    }
    refuseCrossed(least, greatest);
    double sense = links.get(which).sense();
    if (sense == 0) {
      throw new RefusedException("that link has sense 0: its size does not move the gap");
    }
    double tolerance =
        method == Method.WORST ? chainWorstCase(links).tolerance() : chainRss(links, 1).tolerance();
    double wanted;
    if (Double.isNaN(greatest)) {
      wanted = least + tolerance;
    } else if (Double.isNaN(least)) {
      wanted = greatest - tolerance;
    } else {
      wanted = (least + greatest) / 2;
      if (2 * tolerance > (greatest - least) * (1 + 1e-9)) {
        throw new RefusedException(
            "the tolerances of the links are wider than the wanted gap allows; tighten them with"
                + " chain_allocate");
      }
    }
    return links.get(which).nominal() + (wanted - mean(links)) / sense;
  }

  /**
   * Tolerances that keep a gap.
   *
   * @param scale by which the tolerances that may change are multiplied; below 1 they get tighter
   * @param tolerances half widths of all links in order, about the middle of their limits
   * @param low least gap with them
   * @param high greatest gap with them
   */
  public record Allocation(
      @In("1") double scale,
      @In("mm") double[] tolerances,
      @In("mm") double low,
      @In("mm") double high) {}

  /**
   * Scales the tolerances of a chain, all alike but those held, so that the gap just stays within
   * the wanted limits; the nominal sizes stay. Give the links tolerances in the proportion in which
   * they are hard to make.
   *
   * @param links dimensions with their tolerance and sense; held: 1 where it must stay
   * @param least least gap wanted
   * @param greatest greatest gap wanted
   * @param method how tolerances add: worst (every link at its worst end) or rss
   * @return tolerances and the limits they give
   * @throws RefusedException if the mean gap is not inside, or the held tolerances alone are too
   *     wide
   */
  @Calculates(
      source = "derived: proportional scaling of the chain; " + SCHOLZ,
      cautions =
          "A gap whose mean is off the middle wastes tolerance: shift a nominal with"
              + " chain_nominal first.",
      terms = {"tolerance allocation", "tolerance synthesis", "inverse", "stack"})
  public static Allocation chainAllocate(
      List<Link> links,
      @In("mm") double least,
      @In("mm") double greatest,
      @Default("\"worst\"") Method method) {
    needLinks(links);
    refuseCrossed(least, greatest);
    double mean = mean(links);
    double room = Math.min(mean - least, greatest - mean);
    if (!(room > 0)) {
      throw new RefusedException(
          "the mean gap does not lie inside the wanted limits; shift a nominal with chain_nominal"
              + " first");
    }
    double free = 0;
    double held = 0;
    for (Link link : links) {
      double part = Math.abs(link.sense()) * link.half();
      double term = method == Method.WORST ? part : part * part;
      if (link.held() == 1) {
        held += term;
      } else if (link.held() == 0) {
        free += term;
      } else {
        throw new RefusedException("held is 1 (keep the tolerance) or 0 (may change)");
      }
    }
    double left = method == Method.WORST ? room - held : room * room - held;
    if (left < 0) {
      throw new RefusedException(
          "the held tolerances alone are wider than the wanted gap allows; free one of them");
    }
    if (free == 0) {
      throw new RefusedException("no link has a tolerance that may change");
    }
    double scale = method == Method.WORST ? left / free : StrictMath.sqrt(left / free);
    double[] tolerances = new double[links.size()];
    double sum = 0;
    for (int i = 0; i < tolerances.length; i++) {
      Link link = links.get(i);
      tolerances[i] = link.half() * (link.held() == 1 ? 1 : scale);
      double part = Math.abs(link.sense()) * tolerances[i];
      sum += method == Method.WORST ? part : part * part;
    }
    double tolerance = method == Method.WORST ? sum : StrictMath.sqrt(sum);
    return new Allocation(scale, tolerances, mean - tolerance, mean + tolerance);
  }

  static void needLinks(List<Link> links) {
    if (links.isEmpty()) {
      throw new RefusedException("a chain needs one link at least: link(80 mm, tolerance: 0.1 mm)");
    }
  }

  /** An assembly cannot be outside at both ends; one that is not given is NaN. */
  static void refuseCrossed(double least, double greatest) {
    if (least > greatest) {
      throw new RefusedException("the least gap wanted is above the greatest; the two are crossed");
    }
  }

  private static double nominal(List<Link> links) {
    double sum = 0;
    for (Link link : links) {
      sum += link.sense() * link.nominal();
    }
    return sum;
  }

  static double mean(List<Link> links) {
    double sum = 0;
    for (Link link : links) {
      sum += link.sense() * link.middle();
    }
    return sum;
  }

  private static double[] contributions(List<Link> links) {
    double[] contributions = new double[links.size()];
    for (int i = 0; i < contributions.length; i++) {
      contributions[i] = Math.abs(links.get(i).sense()) * links.get(i).half();
    }
    return contributions;
  }
}
