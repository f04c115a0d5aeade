package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ConformityTest {
  private static Conformity between(double value, double u, double low, double high) {
    return between(value, u, low, high, Double.POSITIVE_INFINITY);
  }

  private static Conformity between(
      double value, double u, double low, double high, double degrees) {
    Conformity conformity = new Conformity();
    if (!Double.isNaN(low)) {
      conformity.side(value - low, u, Math.max(Math.abs(value), Math.abs(low)), 2, degrees);
    }
    if (!Double.isNaN(high)) {
      conformity.side(high - value, u, Math.max(Math.abs(value), Math.abs(high)), 2, degrees);
    }
    return conformity;
  }

  private static final double NONE = Double.NaN;

  /**
   * uncertainty-jcgm106-conformance-probability. Source: JCGM 106:2012, clause 7 examples (0.92 and
   * 66 % as recalled).
   */
  @Test
  void reproducesTheExamplesOfJcgm106() {
    assertEquals(0.9192433408, between(-5.47, 0.05, NONE, -5.4).probability(), 1e-5);
    assertEquals(0.6626297865, between(13.6, 1.8, 12.5, 16.3).probability(), 1e-5);
  }

  @Test
  void theLimitsBelongToTheRange() {
    for (DecisionRule rule : DecisionRule.values()) {
      assertEquals(Verdict.WITHIN, between(0.30, 0, 0.10, 0.30).verdict(rule));
      assertEquals(Verdict.WITHIN, between(0.1 + 0.2, 0, 0.10, 0.30).verdict(rule));
      assertEquals(Verdict.OUTSIDE, between(0.3001, 0, 0.10, 0.30).verdict(rule));
    }
    assertEquals(1.0, between(0.1 + 0.2, 0, 0.10, 0.30).probability());
  }

  /** ILAC-G8:09/2019, 4.2: a guard band of U either side of the limit. */
  @Test
  void guardedAcceptanceKeepsClearOfTheLimitByU() {
    assertEquals(Verdict.WITHIN, between(0.28, 0.01, 0.10, 0.30).verdict(DecisionRule.GUARDED));
    assertEquals(Verdict.NOT_PROVEN, between(0.281, 0.01, 0.1, 0.3).verdict(DecisionRule.GUARDED));
    assertEquals(Verdict.NOT_PROVEN, between(0.319, 0.01, 0.1, 0.3).verdict(DecisionRule.GUARDED));
    assertEquals(Verdict.OUTSIDE, between(0.321, 0.01, 0.1, 0.3).verdict(DecisionRule.GUARDED));
    assertEquals(Verdict.WITHIN, between(0.299, 0.01, 0.1, 0.3).verdict(DecisionRule.SIMPLE));
  }

  /** The 95 % point of one side is 1.6449 u (NIST/SEMATECH e-Handbook, 1.3.6.7.1). */
  @Test
  void ninetyFivePerCentIsOnePointSixFiveUForOneLimit() {
    DecisionRule rule = DecisionRule.PROBABILITY;
    assertEquals(Verdict.WITHIN, between(0.30 - 1.6450e-2, 0.01, NONE, 0.30).verdict(rule));
    assertEquals(Verdict.NOT_PROVEN, between(0.30 - 1.6448e-2, 0.01, NONE, 0.30).verdict(rule));
    assertEquals(Verdict.NOT_PROVEN, between(0.30 + 1.6448e-2, 0.01, NONE, 0.30).verdict(rule));
    assertEquals(Verdict.OUTSIDE, between(0.30 + 1.6450e-2, 0.01, NONE, 0.30).verdict(rule));
  }

  /** Middle of a range of ± 1.65 u: 2 * 0.9505 - 1 = 0.901, although each side alone has 95 %. */
  @Test
  void twoLimitsCloseTogetherAreJudgedTogether() {
    Conformity middle = between(0, 1, -1.65, 1.65);
    assertEquals(0.9011, middle.probability(), 1e-4);
    assertEquals(Verdict.NOT_PROVEN, middle.verdict(DecisionRule.PROBABILITY));
  }

  /**
   * Two repeats leave one degree of freedom: 13.97 u (JCGM 100:2008, table G.2, p = 95.45 %) where
   * twice u would have accepted; Student's t with one degree of freedom is Cauchy's distribution,
   * so the share below 1 is 3/4.
   */
  @Test
  void fewReadingsNeedAWiderGuardBand() {
    DecisionRule rule = DecisionRule.GUARDED;
    assertEquals(Verdict.WITHIN, between(0.27, 0.01, NONE, 0.30).verdict(rule));
    assertEquals(Verdict.NOT_PROVEN, between(0.27, 0.01, NONE, 0.30, 1).verdict(rule));
    assertEquals(Verdict.NOT_PROVEN, between(0.1605, 0.01, NONE, 0.30, 1).verdict(rule));
    assertEquals(Verdict.WITHIN, between(0.1600, 0.01, NONE, 0.30, 1).verdict(rule));
    assertEquals(0.75, between(0.29, 0.01, NONE, 0.30, 1).probability(), 1e-9);
  }
}
