package endfloat.statistics;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.units.Scatter;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/** A straight line through points by least squares, and what the points leave uncertain of it. */
public final class StraightLine {
  private static final String SOURCE =
      "ordinary least squares: NIST/SEMATECH e-Handbook of Statistical Methods, section 4.4.3;"
          + " uncertainty of its parameters: JCGM 100:2008, annex H.3";
  private static final String COUNTED_TWICE =
      "What scatters about the line is counted as its uncertainty; where the values state an"
          + " uncertainty of their own as well, their share of the scatter is counted twice.";
  private static final String NO_CAUSE =
      "A line through points says nothing of what causes what, and nothing of what lies beyond them.";

  private StraightLine() {}

  /**
   * A line through points.
   *
   * @param slope b, change of y with x
   * @param intercept a, y at x = 0
   * @param slopeUncertainty standard uncertainty of the slope by the scatter, n − 2 degrees of
   *     freedom
   * @param interceptUncertainty standard uncertainty of the intercept by the scatter
   * @param residualDeviation standard deviation of the points about the line, n − 2 degrees of
   *     freedom
   * @param rSquared share of the variance of y that goes with x
   * @param points n, how many
   */
  public record Line(
      @In("<y>/<x>") double slope,
      @In("<y>") double intercept,
      @In("<y>/<x>") double slopeUncertainty,
      @In("<y>-<y>") double interceptUncertainty,
      @In("<y>-<y>") double residualDeviation,
      @In("1") double rSquared,
      @In("1") double points) {}

  /**
   * Straight line through points by least squares of y: {@code y = a + b x}.
   *
   * <p>Slope and intercept carry the uncertainty that the scatter of the points leaves in them, and
   * vary together as they must: what is read off the line is most certain in the middle of the
   * points. All error is taken to be in y.
   *
   * @param x values that are known well, such as hours
   * @param y values that scatter, one for each x
   * @return the line and its scatter
   * @throws RefusedException with fewer than three points, unequal lists or one x only
   */
  @Calculates(
      source = SOURCE,
      cautions = {COUNTED_TWICE, NO_CAUSE},
      scatter = "straightLineScatter",
      terms = {"regression", "trend", "fit", "least squares", "slope", "calibration line"})
  public static Line straightLine(@In("<x>") double[] x, @In("<y>") double[] y) {
    SimpleRegression fit = fitted(x, y, true);
    return new Line(
        fit.getSlope(),
        fit.getIntercept(),
        fit.getSlopeStdErr(),
        fit.getInterceptStdErr(),
        Math.sqrt(fit.getMeanSquareError()),
        fit.getRSquare(),
        x.length);
  }

  /** The line at the middle of the points and its slope have errors that are independent. */
  public static Scatter straightLineScatter(double[] x, double[] y) {
    SimpleRegression fit = fitted(x, y, true);
    double deviation = Math.sqrt(fit.getMeanSquareError());
    double middle = deviation / Math.sqrt(x.length);
    double slope = fit.getSlopeStdErr();
    double mean = Columns.mean(x);
    return new Scatter(
        new double[][] {
          {0, slope}, {middle, -mean * slope}, {0, 0}, {0, 0}, {0, 0}, {0, 0}, {0, 0}
        },
        x.length - 2);
  }

  /**
   * A line through the origin.
   *
   * @param slope b, change of y with x
   * @param slopeUncertainty standard uncertainty of the slope by the scatter, n − 1 degrees of
   *     freedom
   * @param residualDeviation standard deviation of the points about the line, n − 1 degrees of
   *     freedom
   * @param points n, how many
   */
  public record OriginLine(
      @In("<y>/<x>") double slope,
      @In("<y>/<x>") double slopeUncertainty,
      @In("<y>-<y>") double residualDeviation,
      @In("1") double points) {}

  /**
   * Straight line through the origin by least squares of y: {@code y = b x}.
   *
   * <p>Only where y must be nothing at x = 0, as a deflection without a load; else it hides an
   * offset in its slope.
   *
   * @param x values that are known well, such as loads
   * @param y values that scatter, one for each x
   * @return the slope and its scatter
   * @throws RefusedException with fewer than two points, unequal lists or x all nothing
   */
  @Calculates(
      source = SOURCE,
      cautions = {COUNTED_TWICE, NO_CAUSE},
      scatter = "originLineScatter",
      terms = {"regression", "stiffness", "fit", "least squares", "proportional"})
  public static OriginLine originLine(@In("<x>") double[] x, @In("<y>") double[] y) {
    SimpleRegression fit = fitted(x, y, false);
    return new OriginLine(
        fit.getSlope(), fit.getSlopeStdErr(), Math.sqrt(fit.getMeanSquareError()), x.length);
  }

  /** Its slope is all that is uncertain. */
  public static Scatter originLineScatter(double[] x, double[] y) {
    SimpleRegression fit = fitted(x, y, false);
    return new Scatter(new double[][] {{fit.getSlopeStdErr()}, {0}, {0}, {0}}, x.length - 1);
  }

  private static SimpleRegression fitted(double[] x, double[] y, boolean intercept) {
    Columns.holdPairs(x, y, intercept ? 3 : 2);
    SimpleRegression fit = new SimpleRegression(intercept);
    for (int i = 0; i < x.length; i++) {
      fit.addData(x[i], y[i]);
    }
    if (!Double.isFinite(fit.getSlope())) {
      throw new RefusedException(
          intercept
              ? "all points have the same x; a line needs two at least"
              : "all x are 0; a line through the origin needs another");
    }
    return fit;
  }
}
