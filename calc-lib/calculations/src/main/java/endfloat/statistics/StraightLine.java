package endfloat.statistics;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.units.Scatter;

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
   * @param rSquared share of the variance of y that goes with x; 0 where y does not vary
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
   * @throws endfloat.definition.RefusedException with fewer than three points, unequal lists or one
   *     x only
   */
  @Calculates(
      source = SOURCE,
      cautions = {COUNTED_TWICE, NO_CAUSE},
      partials = "straightLinePartials",
      scatter = "straightLineScatter",
      terms = {"regression", "trend", "fit", "least squares", "slope", "calibration line"})
  public static Line straightLine(@In("<x>") double[] x, @In("<y>") double[] y) {
    LeastSquares fit = LeastSquares.line(x, y);
    return new Line(
        fit.slope,
        fit.intercept(),
        fit.slopeUncertainty(),
        fit.deviation() * fit.reach(),
        fit.deviation(),
        fit.shared(),
        x.length);
  }

  /** How each of the results moves with each x and each y. */
  public static double[][] straightLinePartials(double[] x, double[] y) {
    LeastSquares fit = LeastSquares.line(x, y);
    int n = x.length;
    double[][] partials = new double[7][2 * n];
    double root = Math.sqrt(fit.xx);
    for (int i = 0; i < n; i++) {
      double slopeByX = fit.slopeByX(i);
      double deviationByX = fit.deviationByX(i);
      double reachByX =
          fit.meanX / fit.reach() / fit.xx * (1.0 / n - fit.meanX * fit.x[i] / fit.xx);
      partials[0][i] = slopeByX;
      partials[1][i] = -fit.slope / n - fit.meanX * slopeByX;
      partials[2][i] = deviationByX / root - fit.slopeUncertainty() * fit.x[i] / fit.xx;
      partials[3][i] = deviationByX * fit.reach() + fit.deviation() * reachByX;
      partials[4][i] = deviationByX;
      partials[5][i] = 2 * fit.coefficient() * fit.coefficientByX(i);
      double slopeByY = fit.slopeByY(i);
      double deviationByY = fit.deviationByY(i);
      partials[0][n + i] = slopeByY;
      partials[1][n + i] = 1.0 / n - fit.meanX * slopeByY;
      partials[2][n + i] = deviationByY / root;
      partials[3][n + i] = deviationByY * fit.reach();
      partials[4][n + i] = deviationByY;
      partials[5][n + i] = 2 * fit.coefficient() * fit.coefficientByY(i);
    }
    return partials;
  }

  /** The line at the middle of the points and its slope have errors that are independent. */
  public static Scatter straightLineScatter(double[] x, double[] y) {
    LeastSquares fit = LeastSquares.line(x, y);
    double middle = fit.deviation() / Math.sqrt(x.length);
    double slope = fit.slopeUncertainty();
    double mean = fit.meanX;
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
   * @throws endfloat.definition.RefusedException with fewer than two points, unequal lists or x all
   *     nothing
   */
  @Calculates(
      source = SOURCE,
      cautions = {COUNTED_TWICE, NO_CAUSE},
      partials = "originLinePartials",
      scatter = "originLineScatter",
      terms = {"regression", "stiffness", "fit", "least squares", "proportional"})
  public static OriginLine originLine(@In("<x>") double[] x, @In("<y>") double[] y) {
    LeastSquares fit = LeastSquares.throughOrigin(x, y);
    return new OriginLine(fit.slope, fit.slopeUncertainty(), fit.deviation(), x.length);
  }

  /** How each of the results moves with each x and each y. */
  public static double[][] originLinePartials(double[] x, double[] y) {
    LeastSquares fit = LeastSquares.throughOrigin(x, y);
    int n = x.length;
    double[][] partials = new double[4][2 * n];
    double root = Math.sqrt(fit.xx);
    for (int i = 0; i < n; i++) {
      partials[0][i] = fit.slopeByX(i);
      partials[1][i] = fit.deviationByX(i) / root - fit.slopeUncertainty() * x[i] / fit.xx;
      partials[2][i] = fit.deviationByX(i);
      partials[0][n + i] = fit.slopeByY(i);
      partials[1][n + i] = fit.deviationByY(i) / root;
      partials[2][n + i] = fit.deviationByY(i);
    }
    return partials;
  }

  /** Its slope is all that is uncertain. */
  public static Scatter originLineScatter(double[] x, double[] y) {
    LeastSquares fit = LeastSquares.throughOrigin(x, y);
    return new Scatter(new double[][] {{fit.slopeUncertainty()}, {0}, {0}, {0}}, x.length - 1);
  }
}
