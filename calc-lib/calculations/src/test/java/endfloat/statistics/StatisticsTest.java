package endfloat.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What the published checks do not reach: lines that are nearly exact or lie far from zero, columns
 * that never vary, equal values. References marked <i>exact</i> come from the formulas of the
 * NIST/SEMATECH e-Handbook, 4.4.3, in rational arithmetic (Python fractions, the decimals as they
 * stand here); others from SciPy 1.17.1, by the function named.
 */
class StatisticsTest {
  private static final double[] X = {12.1, 12.1, 13.4, 15.0, 15.0, 15.0, 17.2, 18.8, 20.3, 21.1};
  private static final double[] Y = {0.14, 0.16, 0.15, 0.17, 0.21, 0.17, 0.2, 0.19, 0.23, 0.22};

  private static double[] counted(int from, int count) {
    return IntStream.range(from, from + count).asDoubleStream().toArray();
  }

  /** Exact. A difference of sums gives 8.43e-8 here, ten times too much. */
  @Test
  void aLineThatIsNearlyExactKeepsItsScatter() {
    double[] y = {
      1, 3.00000001, 4.99999999, 7.00000001, 9, 10.99999999, 13.00000001, 15, 16.99999999, 19
    };
    StraightLine.Line line = StraightLine.straightLine(counted(0, 10), y);
    // the doubles nearest to these decimals move the residuals by parts in 1e7
    assertEquals(8.438727464026861e-09, line.residualDeviation(), 1e-6 * 8.4e-9);
    assertEquals(9.290733161670237e-10, line.slopeUncertainty(), 1e-6 * 9.3e-10);
    assertEquals(4.95989424929477e-09, line.interceptUncertainty(), 1e-6 * 5e-9);
    assertEquals(1.9999999993939395, line.slope(), 1e-15);
    assertEquals(1.0000000027272726, line.intercept(), 1e-14);
    assertEquals(
        9.290733161670237e-10,
        StraightLine.straightLineScatter(counted(0, 10), y).parts()[0][1],
        1e-15);
  }

  /** Exact. A difference of sums gives 0. */
  @Test
  void aLineThroughTheOriginThatIsNearlyExactKeepsItsScatter() {
    StraightLine.OriginLine line =
        StraightLine.originLine(new double[] {1, 2, 3}, new double[] {2.00000001, 3.99999999, 6});
    assertEquals(9.819805060619657e-09, line.residualDeviation(), 1e-6 * 9.8e-9);
    assertEquals(2.624453295839119e-09, line.slopeUncertainty(), 1e-6 * 2.6e-9);
    assertEquals(1.9999999992857143, line.slope(), 1e-15);
  }

  /** Exact; x are seconds of the calendar. */
  @Test
  void aLineFarFromZeroIsTheSameLine() {
    double[] y = {1.1, 1.9, 3.2, 3.9, 5.1};
    StraightLine.Line line = StraightLine.straightLine(counted(1_000_000_000, 5), y);
    assertEquals(1, line.slope(), 1e-14);
    assertEquals(-999999998.96, line.intercept(), 1e-5);
    assertEquals(0.04898979485566356, line.slopeUncertainty(), 1e-13);
    assertEquals(48989794.95364315, line.interceptUncertainty(), 1e-5);
    assertEquals(0.15491933384829668, line.residualDeviation(), 1e-13);
    assertEquals(0.9928514694201748, line.rSquared(), 1e-14);
  }

  /** scipy.stats.linregress: slope 0, intercept the value; r is not defined there. */
  @Test
  void pointsOfOneHeightLieOnALevelLine() {
    double[] level = new double[4];
    Arrays.fill(level, 0.1);
    StraightLine.Line line = StraightLine.straightLine(counted(1, 4), level);
    assertEquals(0, line.slope(), 1e-17);
    assertEquals(0.1, line.intercept(), 1e-16);
    assertEquals(0, line.residualDeviation(), 1e-16);
    assertEquals(0, line.rSquared());
  }

  /** scipy.stats.linregress, with its intercept_stderr. */
  @Test
  void aLineThroughPointsThatShareTheirX() {
    StraightLine.Line line = StraightLine.straightLine(X, Y);
    assertEquals(0.008226905065985524, line.slope(), 1e-16);
    assertEquals(0.05236951894423161, line.intercept(), 1e-15);
    assertEquals(0.0016637116140129006, line.slopeUncertainty(), 1e-16);
    assertEquals(0.02710349113044067, line.interceptUncertainty(), 1e-15);
    assertEquals(0.8680340603102086 * 0.8680340603102086, line.rSquared(), 1e-14);
  }

  @Test
  void tooFewPointsOrOneXAreRefused() {
    assertRefused("there are 2 points; it takes 3 or more", StraightLine::straightLine, 2, 3);
    assertRefused("all points have the same x", StraightLine::straightLine, 5, 5, 5);
    assertRefused("all x are 0", StraightLine::originLine, 0, 0, 0);
    assertRefused(
        "there are 3 points; it takes 4 or more", Correlation::linearCorrelation, 1, 2, 3);
    assertRefused(
        "one of the columns has one value", Correlation::linearCorrelation, 0.1, 0.1, 0.1, 0.1);
    assertRefused("one of the columns has one value", Correlation::rankCorrelation, 7, 7, 7, 7, 7);
  }

  private static void assertRefused(
      String why, BiFunction<double[], double[], Object> of, double... x) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> of.apply(x, counted(1, x.length)));
    assertTrue(refused.getMessage().startsWith(why), refused.getMessage());
  }

  /** 0.1 added up ten times is not 1; the mean of ten is still no reason for a deviation. */
  @Test
  void aColumnThatNeverVariesHasNoDeviation() {
    for (double value : new double[] {0.1, 1e9 + 0.3, -7e-6}) {
      double[] x = new double[10];
      Arrays.fill(x, value);
      assertEquals(0, Columns.columnSummary(x).deviation());
    }
  }

  /** scipy.stats.pearsonr with confidence_interval(0.95), spearmanr: equal values share ranks. */
  @Test
  void correlationsWithEqualValues() {
    Correlation.Linear linear = Correlation.linearCorrelation(X, Y);
    assertEquals(0.8680340603102088, linear.coefficient(), 1e-14);
    assertEquals(0.0011280764060798171, linear.chance(), 1e-14);
    assertEquals(0.5257491765138818, linear.low(), 1e-9);
    assertEquals(0.968396028697139, linear.high(), 1e-9);
    Correlation.Ranked ranked = Correlation.rankCorrelation(X, Y);
    assertEquals(0.8827833270055707, ranked.coefficient(), 1e-14);
    assertEquals(0.000715321148034312, ranked.chance(), 1e-14);
  }

  /** scipy.stats.pearsonr; the root of a difference of sums would know it to 1e-5 of itself. */
  @Test
  void aCorrelationNearNothingKeepsItsFigures() {
    double[] x = {-3, -2, -1, 1, 2, 3};
    double[] y = {9.001, 4, 1, 1, 4, 9};
    assertEquals(
        -7.013681249426e-05, Correlation.linearCorrelation(x, y).coefficient(), 1e-11 * 7e-5);
  }

  /** Counted out by itertools.permutations over scipy.stats.spearmanr: 172 of 5,040 orders. */
  @Test
  void theChanceOfFewPairsIsCountedOut() {
    double[] a = {1, 2, 3, 4, 5, 6, 7};
    double[] b = {2, 1, 4, 3, 7, 5, 6};
    assertEquals(0.8214285714285715, Correlation.rankCorrelation(a, b).coefficient(), 1e-15);
    assertEquals(0.034126984126984124, Correlation.rankCorrelation(a, b).chance(), 1e-15);
  }

  /** Of 12! orders two are as good; with one pair of equal values in both, 4 of 10!. */
  @Test
  void columnsInOneOrderThroughoutAreUnlikelyAndNotImpossible() {
    double[] a = counted(1, 12);
    double[] falling = Arrays.stream(a).map(v -> -v * v).toArray();
    assertEquals(2 / 479001600.0, Correlation.rankCorrelation(a, falling).chance(), 1e-22);
    double[] tied = {1, 2, 2, 3, 4, 5, 6, 7, 8, 9};
    assertEquals(4 / 3628800.0, Correlation.rankCorrelation(tied, tied).chance(), 1e-19);
  }

  /** Second method: exact derivatives against central differences. */
  @Test
  void derivativesAgreeWithDifferences() {
    derivatives(
        StraightLine.straightLinePartials(X, Y),
        (x, y) -> {
          StraightLine.Line l = StraightLine.straightLine(x, y);
          return new double[] {
            l.slope(),
            l.intercept(),
            l.slopeUncertainty(),
            l.interceptUncertainty(),
            l.residualDeviation(),
            l.rSquared(),
            l.points()
          };
        });
    derivatives(
        StraightLine.originLinePartials(X, Y),
        (x, y) -> {
          StraightLine.OriginLine l = StraightLine.originLine(x, y);
          return new double[] {l.slope(), l.slopeUncertainty(), l.residualDeviation(), l.points()};
        });
    derivatives(
        Correlation.linearCorrelationPartials(X, Y),
        (x, y) -> {
          Correlation.Linear l = Correlation.linearCorrelation(x, y);
          return new double[] {l.coefficient(), l.low(), l.high(), l.chance(), l.pairs()};
        });
  }

  private static void derivatives(
      double[][] exact, BiFunction<double[], double[], double[]> results) {
    int n = X.length;
    for (int i = 0; i < 2 * n; i++) {
      double step = 1e-5 * (i < n ? X[i] : Y[i - n]);
      double[] above = moved(results, i, step);
      double[] below = moved(results, i, -step);
      for (int k = 0; k < exact.length; k++) {
        double slope = (above[k] - below[k]) / (2 * step);
        assertEquals(slope, exact[k][i], 1e-6 * Math.max(1e-3, Math.abs(slope)), k + " by " + i);
      }
    }
  }

  private static double[] moved(
      BiFunction<double[], double[], double[]> results, int i, double by) {
    double[] x = X.clone();
    double[] y = Y.clone();
    if (i < x.length) {
      x[i] += by;
    } else {
      y[i - x.length] += by;
    }
    return results.apply(x, y);
  }

  /** numpy.quantile, method 'weibull': the rank is p (n + 1). */
  @Test
  void quartilesGoByTheRankOfNPlusOne() {
    Columns.Summary s =
        Columns.columnSummary(new double[] {3.1, 2.7, 5.9, 4.4, 4.4, 1.2, 8.0, 6.3, 2.7, 7.7, 5.0});
    assertArrayEquals(
        new double[] {2.7, 4.4, 6.3, 2.167067561979049},
        new double[] {s.lowerQuartile(), s.median(), s.upperQuartile(), s.deviation()},
        1e-14);
  }
}
