package endfloat.plates;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A round panel whose rigid hub is tilted: {@code w = (A r + B r³ + C/r + D r ln r) cos φ} for an
 * angle of one, radii scaled by the outer one.
 */
final class TiltField {
  private final double poisson;
  private final double[] factors;

  /**
   * @param hub radius of the hub over that of the rim
   * @param fixed whether the rim is fixed rather than supported
   */
  TiltField(double hub, double poisson, boolean fixed) {
    this.poisson = poisson;
    double ln = StrictMath.log(hub);
    double[] rim =
        fixed
            ? new double[] {1, 3, -1, 1}
            : new double[] {0, 2 * (3 + poisson), 2 * (1 - poisson), 1 + poisson};
    double[][] rows = {
      {hub, hub * hub * hub, 1 / hub, hub * ln},
      {1, 3 * hub * hub, -1 / (hub * hub), ln + 1},
      {1, 1, 1, 0},
      rim
    };
    factors =
        new LUDecomposition(new Array2DRowRealMatrix(rows))
            .getSolver()
            .solve(new ArrayRealVector(new double[] {hub, 1, 0, 0}))
            .toArray();
  }

  /** Couple for an angle of one, over the plate's stiffness: that of the term D r ln r is 4 π D. */
  double couple() {
    return 4 * StrictMath.PI * Math.abs(factors[3]);
  }

  /** Radial and hoop moment in the plane of the tilt for an angle of one, over D/a. */
  double[] moments(double r) {
    double ln = StrictMath.log(r);
    double over = factors[0] + factors[1] * r * r + factors[2] / (r * r) + factors[3] * ln;
    double first =
        factors[0] + 3 * factors[1] * r * r - factors[2] / (r * r) + factors[3] * (ln + 1);
    double second = 6 * factors[1] * r + 2 * factors[2] / (r * r * r) + factors[3] / r;
    double across = (first - over) / r;
    return new double[] {-(second + poisson * across), -(across + poisson * second)};
  }
}
