package endfloat.evidence;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.numerics.Normal;

/** Whether what a cause adds reaches the size that the damage needs. */
public final class BigEnough {
  /** Probability from which the answer is yes, and below whose rest it is no. */
  private static final double REQUIRED = 0.95;

  private BigEnough() {}

  /** Whether it is big enough. */
  public enum Answer {
    YES,
    NOT_PROVEN,
    NO
  }

  /**
   * Whether a contribution is big enough.
   *
   * @param answer yes from 95 % probability up, no from 5 % down, not proven between
   * @param probability that the contribution reaches the size needed; not the probability of the
   *     cause
   */
  public record Size(Answer answer, @In("1") double probability) {}

  /**
   * Whether what a cause adds is big enough: {@code P = Φ((c - n) / √(u_c² + u_n² - 2 r u_c u_n))}.
   *
   * <p>Contribution and size needed are the same quantity and count in the same sense. Their
   * uncertainties may share roots, one instrument or one coefficient: r says how much. All three
   * are taken from the sheet where they are left out. Where the uncertainties leave no doubt the
   * contribution reaches the size or it does not; equal is enough.
   *
   * @param contribution c, what the cause adds
   * @param needed n, the size needed, above zero in the sense of the effect
   * @param contributionUncertainty u_c, standard uncertainty of the contribution
   * @param neededUncertainty u_n, standard uncertainty of the size needed
   * @param correlation r of the two, -1 to 1
   * @return the answer and the probability behind it
   * @throws RefusedException if the size needed is not above zero or an uncertainty is negative
   */
  @Calculates(
      source =
          "derived: distribution of the difference of two normal values, JCGM 100:2008, 5.2.2 for"
              + " its variance; 95 % as the default of ISO 14253-1:2017 asks",
      cautions = {
        "It is not the probability of the cause: it says only whether the size would do.",
        "Weigh it beside timing, pattern and mechanism; show the remainder that nothing explains."
      },
      terms = {"cause", "failure", "contribution", "evidence", "size needed", "cause weight"},
      partials = "bigEnoughPartials")
  public static Size bigEnough(
      @In("<x>") double contribution,
      @In("<x>") double needed,
      @In("<x>") @Default("standard uncertainty of contribution") double contributionUncertainty,
      @In("<x>") @Default("standard uncertainty of needed") double neededUncertainty,
      @In("1") @Range("-1 .. 1") @Default("correlation of contribution and needed")
          double correlation) {
    if (!(needed > 0)) {
      throw new RefusedException(
          "the size needed is not above zero; count the effect positive in the sense in which it"
              + " was found");
    }
    if (Double.isNaN(contributionUncertainty + neededUncertainty + correlation)) {
      throw new RefusedException(
          "state both standard uncertainties and their correlation; 0 where there is none");
    }
    if (!(contributionUncertainty >= 0) || !(neededUncertainty >= 0)) {
      throw new RefusedException("a standard uncertainty is not negative");
    }
    double variance =
        contributionUncertainty * contributionUncertainty
            + neededUncertainty * neededUncertainty
            - 2 * correlation * contributionUncertainty * neededUncertainty;
    double difference = contribution - needed;
    double probability =
        variance > 0 ? Normal.below(difference / Math.sqrt(variance)) : difference >= 0 ? 1 : 0;
    return new Size(answer(probability), probability);
  }

  /** The probability is what the uncertainties come to; it has none of its own beside it. */
  public static double[][] bigEnoughPartials(
      double contribution,
      double needed,
      double contributionUncertainty,
      double neededUncertainty,
      double correlation) {
    return new double[][] {{0, 0, 0, 0, 0}};
  }

  private static Answer answer(double probability) {
    if (probability >= REQUIRED) {
      return Answer.YES;
    }
    return probability <= 1 - REQUIRED ? Answer.NO : Answer.NOT_PROVEN;
  }
}
