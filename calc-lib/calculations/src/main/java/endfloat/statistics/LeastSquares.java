package endfloat.statistics;

import endfloat.definition.RefusedException;

/**
 * A line by least squares with the sums that it comes from, all taken about the means and the
 * residuals one by one: differences of large sums would lose what a line leaves that is nearly
 * exact, or that lies far from zero.
 */
final class LeastSquares {
  final int points;
  final double meanX;
  final double meanY;

  /** Offsets from the means; of a line through the origin the values themselves. */
  final double[] x;

  final double[] y;
  final double xx;
  final double xy;
  final double yy;
  final double slope;
  final double[] residuals;
  final double squares;
  private final int degrees;

  private LeastSquares(double[] x, double[] y, boolean intercept) {
    points = x.length;
    degrees = points - (intercept ? 2 : 1);
    meanX = intercept ? Columns.mean(x) : 0;
    meanY = intercept ? Columns.mean(y) : 0;
    this.x = about(x, meanX);
    this.y = about(y, meanY);
    xx = sum(this.x, this.x, intercept);
    xy = sum(this.x, this.y, intercept);
    yy = sum(this.y, this.y, intercept);
    slope = xy / xx;
    residuals = new double[points];
    for (int i = 0; i < points; i++) {
      residuals[i] = this.y[i] - slope * this.x[i];
    }
    squares = sum(residuals, residuals, intercept);
  }

  /** {@code y = a + b x} through three points or more, not all above one another. */
  static LeastSquares line(double[] x, double[] y) {
    Columns.holdPairs(x, y, 3);
    if (Columns.isConstant(x)) {
      throw new RefusedException("all points have the same x; a line needs two at least");
    }
    return new LeastSquares(x, y, true);
  }

  /** {@code y = b x} through two points or more, not all at x = 0. */
  static LeastSquares throughOrigin(double[] x, double[] y) {
    Columns.holdPairs(x, y, 2);
    if (Columns.isConstant(x) && x[0] == 0) {
      throw new RefusedException("all x are 0; a line through the origin needs another");
    }
    return new LeastSquares(x, y, false);
  }

  /** Sums of two columns about their means, for how they go together. */
  static LeastSquares together(double[] x, double[] y) {
    if (Columns.isConstant(x) || Columns.isConstant(y)) {
      throw new RefusedException("one of the columns has one value throughout");
    }
    return new LeastSquares(x, y, true);
  }

  private static double[] about(double[] values, double mean) {
    double[] off = new double[values.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = values[i] - mean;
    }
    return off;
  }

  /** The sum of products; about the means, what these were rounded by is taken out. */
  private static double sum(double[] a, double[] b, boolean aboutMeans) {
    double products = 0;
    double left = 0;
    double right = 0;
    for (int i = 0; i < a.length; i++) {
      products += a[i] * b[i];
      left += a[i];
      right += b[i];
    }
    return aboutMeans ? products - left * right / a.length : products;
  }

  double intercept() {
    return meanY - slope * meanX;
  }

  /** Standard deviation of the points about the line. */
  double deviation() {
    return Math.sqrt(Math.max(0, squares) / degrees);
  }

  double slopeUncertainty() {
    return deviation() / Math.sqrt(xx);
  }

  /** Of what is at x = 0, in deviations of one point. */
  double reach() {
    return Math.sqrt(1.0 / points + meanX * meanX / xx);
  }

  /** Share of the variance of y that goes with x; 0 where y does not vary. */
  double shared() {
    return yy > 0 ? Math.min(1, xy * xy / (xx * yy)) : 0;
  }

  /** Pearson's coefficient. */
  double coefficient() {
    return Math.max(-1, Math.min(1, xy / Math.sqrt(xx) / Math.sqrt(yy)));
  }

  /** How the slope moves with y. */
  double slopeByY(int i) {
    return x[i] / xx;
  }

  /** How the slope moves with x. */
  double slopeByX(int i) {
    return (residuals[i] - slope * x[i]) / xx;
  }

  /** How the deviation moves with y; NaN where all points lie on the line. */
  double deviationByY(int i) {
    return deviation() == 0 ? Double.NaN : residuals[i] / (degrees * deviation());
  }

  /** How the deviation moves with x. */
  double deviationByX(int i) {
    return -slope * deviationByY(i);
  }

  /** How the coefficient of correlation moves with y. */
  double coefficientByY(int i) {
    return x[i] / Math.sqrt(xx) / Math.sqrt(yy) - coefficient() * y[i] / yy;
  }

  /** How the coefficient of correlation moves with x. */
  double coefficientByX(int i) {
    return y[i] / Math.sqrt(xx) / Math.sqrt(yy) - coefficient() * x[i] / xx;
  }
}
