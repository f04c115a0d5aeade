package endfloat.fits;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** One line of a schedule of fits and clearances: new limits, worn limit, what was measured. */
public final class FitVerdict {
  private FitVerdict() {}

  /** What the schedule says of a part or fit. */
  public enum Verdict {
    NEW,
    PERMISSIBLE_WORN,
    REJECT
  }

  /** Whether the uncertainty of the measurement could alter the verdict. */
  public enum Proof {
    PROVEN,
    NOT_PROVEN
  }

  /**
   * Where a measurement stands in the schedule.
   *
   * @param verdict new, permissible worn, or reject: by the measured value itself, as makers'
   *     schedules mean it
   * @param proof proven if every value within the uncertainty has the same verdict, else not proven
   * @param serviceable proven if every value within the uncertainty may stay in service, else not
   *     proven; a reject is never serviceable
   * @param left wear left before the worn limit; negative past it
   * @param used share of the wear allowance used; 0 at the new limit, 1 at the worn limit
   * @param reason in words
   */
  public record Standing(
      Verdict verdict,
      Proof proof,
      Proof serviceable,
      @In("mm") double left,
      @In("1") double used,
      String reason) {}

  /**
   * Verdict on a size or clearance against its new limits and its permissible worn limit.
   *
   * <p>The worn limit says which way wear goes: above the new limits for bores and clearances,
   * below them for journals. Limits themselves are within. A value outside the new limits on the
   * unworn side is rejected: too tight, or not the part.
   *
   * @param newLeast least value when new
   * @param newGreatest greatest value when new
   * @param worn permissible worn limit, beyond the new limits on the side of wear
   * @param measured value found
   * @param uncertainty U, expanded uncertainty of the measured value; left out, that of the sheet
   * @return the verdict, whether it is proven, the wear left
   * @throws RefusedException if the limits are crossed, or the worn limit lies between them
   */
  @Calculates(
      source =
          "schedule of fits and clearances as in TM 9-2520-234-35, par. 235 (dimensions new and"
              + " serviceable); decision by simple acceptance with the uncertainty shown, after"
              + " ILAC-G8:09/2019",
      cautions = {
        "Either part may wear while the fit holds only where the schedule says so.",
        "A limit belongs to a condition: cold or hot, free or clamped."
      },
      terms = {"schedule of fits", "table of limits", "service limit", "serviceable", "worn"})
  public static Standing fitVerdict(
      @In("mm") double newLeast,
      @In("mm") double newGreatest,
      @In("mm") double worn,
      @In("mm") double measured,
      @In("mm") @Range(">= 0 mm") @Default("expanded uncertainty of measured") double uncertainty) {
    if (Double.isNaN(uncertainty)) {
      throw new RefusedException("state the uncertainty; 0 where the value is exact");
    }
    if (newLeast > newGreatest) {
      throw new RefusedException("new_least is above new_greatest; the limits are crossed");
    }
    boolean grows = worn >= newGreatest;
    if (!grows && worn > newLeast) {
      throw new RefusedException(
          "the worn limit lies between the new limits; it must be at or beyond one of them");
    }
    double sense = grows ? 1 : -1;
    double start = grows ? newGreatest : newLeast;
    double unworn = grows ? newLeast : newGreatest;
    Verdict verdict = verdict(measured, unworn, start, worn, sense);
    Verdict low = verdict(measured - uncertainty, unworn, start, worn, sense);
    Verdict high = verdict(measured + uncertainty, unworn, start, worn, sense);
    boolean stays = verdict != Verdict.REJECT && low != Verdict.REJECT && high != Verdict.REJECT;
    double allowance = (worn - start) * sense;
    double wear = Math.max(0, (measured - start) * sense);
    boolean proven = low == verdict && high == verdict;
    return new Standing(
        verdict,
        proven ? Proof.PROVEN : Proof.NOT_PROVEN,
        stays ? Proof.PROVEN : Proof.NOT_PROVEN,
        (worn - measured) * sense,
        allowance == 0 ? (wear == 0 ? 0 : 1) : wear / allowance,
        reason(verdict, (measured - unworn) * sense < 0, proven));
  }

  private static Verdict verdict(
      double value, double unworn, double start, double worn, double sense) {
    if ((value - unworn) * sense < 0 || (value - worn) * sense > 0) {
      return Verdict.REJECT;
    }
    return (value - start) * sense > 0 ? Verdict.PERMISSIBLE_WORN : Verdict.NEW;
  }

  private static String reason(Verdict verdict, boolean unwornSide, boolean proven) {
    String reason =
        switch (verdict) {
          case NEW -> "within the new limits";
          case PERMISSIBLE_WORN -> "worn past the new limits, within the permissible worn limit";
          case REJECT ->
              unwornSide
                  ? "outside the new limits on the unworn side"
                  : "past the permissible worn limit";
        };
    return proven ? reason : reason + "; the uncertainty reaches over a limit";
  }
}
