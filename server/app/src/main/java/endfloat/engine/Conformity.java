package endfloat.engine;

/**
 * Verdict and probability of conformity of a value between limits (JCGM 106:2012, clause 7 and 8).
 *
 * <p>Where the uncertainty rests on a few readings, guard band and probability are those of
 * Student's t for its degrees of freedom (JCGM 100:2008, G.3).
 *
 * <p>A limit may itself be uncertain: then the margin between value and limit carries the
 * uncertainty of both. Limits are included. A margin that differs from 0 by rounding only is 0.
 */
final class Conformity {
  private double probability = 1;
  private boolean inside = true;
  private boolean proven = true;
  private boolean refuted;

  /**
   * One side of a limit.
   *
   * @param margin by which the value keeps inside the limit; negative beyond it
   * @param u standard uncertainty of the margin
   * @param scale size of the value and the limit, against which rounding is seen
   * @param coverage k of the guard band
   * @param degrees effective degrees of freedom of u
   */
  void side(double margin, double u, double scale, double coverage, double degrees) {
    double clear = Math.abs(margin) <= ConditionTerms.EQUAL * scale ? 0 : margin;
    inside &= clear >= 0;
    double guard = Coverage.factor(coverage, degrees) * u;
    double slack = ConditionTerms.EQUAL * scale;
    proven &= clear >= guard - slack;
    refuted |= clear < -guard - (u == 0 ? 0 : slack);
    probability -= u == 0 ? (clear >= 0 ? 0 : 1) : Coverage.below(-clear / u, degrees);
  }

  double probability() {
    return Math.max(0, Math.min(1, probability));
  }

  Verdict verdict(DecisionRule rule) {
    return switch (rule) {
      case SIMPLE -> inside ? Verdict.WITHIN : Verdict.OUTSIDE;
      case GUARDED -> proven ? Verdict.WITHIN : refuted ? Verdict.OUTSIDE : Verdict.NOT_PROVEN;
      case PROBABILITY -> {
        double p = probability();
        yield p >= DecisionRule.REQUIRED
            ? Verdict.WITHIN
            : p <= 1 - DecisionRule.REQUIRED ? Verdict.OUTSIDE : Verdict.NOT_PROVEN;
      }
    };
  }
}
