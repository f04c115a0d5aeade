package endfloat.plates;

import endfloat.definition.RefusedException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Exact thin-plate solution of a round plate under loads that are the same all round, in one or two
 * regions joined at a radius.
 *
 * <p>In each region w = A + B r² + C ln r + E r² ln r + particular, of D ∇⁴w = q. Deflection points
 * with the load; M is positive where it would compress the loaded face; the shear Q per length
 * times 2πr is minus the load that acts inside r.
 */
final class PlateField {
  /**
   * A plate and what it carries.
   *
   * @param outer outer radius a [m]
   * @param inner inner radius b, 0 for a plate without a hole [m]
   * @param stiffness D = E t³/(12 (1 − ν²)) [N m]
   * @param poisson ν
   * @param outerEdge how the outer edge is held
   * @param innerEdge how the inner edge is held; FREE is the only choice without a hole
   */
  record Plate(
      double outer,
      double inner,
      double stiffness,
      double poisson,
      Edge outerEdge,
      Edge innerEdge) {}

  /**
   * Loads.
   *
   * @param pressureInside q over the region inside {@code at} [Pa]
   * @param pressureOutside q over the region outside {@code at} [Pa]
   * @param slope rise of the outside pressure per radius beyond {@code at} [Pa/m]
   * @param ring line load on the circle {@code at}, per length [N/m]
   * @param ringCouple line couple on that circle, per length; raises the radial moment beyond it
   *     [N]
   * @param at radius of the join, between inner and outer [m]
   * @param innerForce force carried evenly at the inner edge, or at the centre of a solid plate [N]
   * @param outerForce force carried evenly at the outer edge [N]
   * @param innerCouple radial moment put on the inner edge, per length [N]
   * @param outerCouple radial moment put on the outer edge, per length [N]
   */
  record Loads(
      double pressureInside,
      double pressureOutside,
      double slope,
      double ring,
      double ringCouple,
      double at,
      double innerForce,
      double outerForce,
      double innerCouple,
      double outerCouple) {

    /** A force at the inner edge alone. */
    static Loads hub(double inner, double force) {
      return new Loads(0, 0, 0, 0, 0, inner, force, 0, 0, 0);
    }
  }

  private final Plate plate;
  private final Loads loads;
  private final double[] inside;
  private final double[] outside;

  PlateField(Plate plate, Loads loads) {
    this.plate = plate;
    this.loads = loads;
    double[] all = solve();
    inside = java.util.Arrays.copyOfRange(all, 0, 4);
    outside = java.util.Arrays.copyOfRange(all, 4, 8);
  }

  /** Deflection, slope, radial moment, hoop moment and shear at a radius. */
  record State(
      double deflection, double slope, double radialMoment, double hoopMoment, double shear) {}

  State at(double radius) {
    boolean within = radius < loads.at();
    double r = scaled(radius);
    double[] sum = particular(within, r);
    double[] factors = within ? inside : outside;
    for (int k = 0; k < 4; k++) {
      double[] base = r == 0 ? atCentre(k) : base(k, r);
      for (int i = 0; i < 5; i++) {
        sum[i] += factors[k] * base[i];
      }
    }
    return new State(sum[0], sum[1] / plate.outer(), sum[2], sum[3], sum[4]);
  }

  private double scaled(double radius) {
    return radius / plate.outer();
  }

  /**
   * Deflection, slope (per scaled radius), moments and shear of one base function; radii scaled by
   * a, so all are of order one.
   */
  private double[] base(int k, double r) {
    double ln = StrictMath.log(r);
    return switch (k) {
      case 0 -> quantities(1, 0, 0, 0, r);
      case 1 -> quantities(r * r, 2 * r, 2, 0, r);
      case 2 -> quantities(ln, 1 / r, -1 / (r * r), 0, r);
      default -> quantities(r * r * ln, r * (2 * ln + 1), 2 * ln + 3, 4 / r, r);
    };
  }

  private double[] atCentre(int k) {
    double moment = k == 1 ? -2 * (1 + plate.poisson()) * curvature() : 0;
    return new double[] {k == 0 ? 1 : 0, 0, moment, moment, 0};
  }

  private double curvature() {
    return plate.stiffness() / (plate.outer() * plate.outer());
  }

  /**
   * @param laplacianSlope d(∇²w)/dr in scaled radii
   */
  private double[] quantities(
      double w, double first, double second, double laplacianSlope, double r) {
    double nu = plate.poisson();
    return new double[] {
      w,
      first,
      -curvature() * (second + nu * first / r),
      -curvature() * (first / r + nu * second),
      -curvature() / plate.outer() * laplacianSlope
    };
  }

  /** Pressure q0 + q1 r of a region, as q0 r⁴/64 + q1 r⁵/225 in scaled radii. */
  private double[] particular(boolean within, double r) {
    double fourth =
        plate.outer() * plate.outer() * plate.outer() * plate.outer() / plate.stiffness();
    double q1 = within ? 0 : loads.slope() * plate.outer();
    double q0 = within ? loads.pressureInside() : loads.pressureOutside() - q1 * scaled(loads.at());
    double a = q0 * fourth / 64;
    double b = q1 * fourth / 225;
    if (r == 0) {
      return new double[5];
    }
    double r2 = r * r;
    return quantities(
        a * r2 * r2 + b * r2 * r2 * r,
        4 * a * r2 * r + 5 * b * r2 * r2,
        12 * a * r2 + 20 * b * r2 * r,
        32 * a * r + 75 * b * r2,
        r);
  }

  private double[] solve() {
    double[][] rows = new double[8][8];
    double[] right = new double[8];
    int next = innerRows(rows, right);
    double join = scaled(loads.at());
    for (int quantity : new int[] {0, 1, 2, 4}) {
      double jump = quantity == 4 ? -loads.ring() : quantity == 2 ? loads.ringCouple() : 0;
      equation(rows, right, next, join, quantity, jump);
      next++;
    }
    double outerShear = loads.outerForce() / (2 * StrictMath.PI * plate.outer());
    edge(rows, right, next, 1, plate.outerEdge(), 4, outerShear, loads.outerCouple());
    return solution(rows, right);
  }

  /** Outside less inside at the join equals a jump. */
  private void equation(
      double[][] rows, double[] right, int row, double r, int quantity, double jump) {
    for (int k = 0; k < 4; k++) {
      rows[row][k] = -base(k, r)[quantity];
      rows[row][4 + k] = base(k, r)[quantity];
    }
    right[row] = jump - particular(false, r)[quantity] + particular(true, r)[quantity];
  }

  private int innerRows(double[][] rows, double[] right) {
    if (plate.inner() > 0) {
      double r = scaled(plate.inner());
      edge(
          rows,
          right,
          0,
          r,
          plate.innerEdge(),
          0,
          -loads.innerForce() / (2 * StrictMath.PI * plate.inner()),
          loads.innerCouple());
      return 2;
    }
    // Without a hole there is no ln r; r² ln r carries a force at the centre, 8πD of it a unit.
    rows[0][2] = 1;
    rows[1][3] = 1;
    right[1] =
        loads.innerForce()
            * plate.outer()
            * plate.outer()
            / (8 * StrictMath.PI * plate.stiffness());
    return 2;
  }

  private void edge(
      double[][] rows,
      double[] right,
      int row,
      double r,
      Edge edge,
      int offset,
      double shear,
      double couple) {
    boolean within = offset == 0;
    int[] quantities =
        switch (edge) {
          case FREE -> new int[] {2, 4};
          case SUPPORTED -> new int[] {0, 2};
          case FIXED -> new int[] {0, 1};
          case GUIDED -> new int[] {1, 4};
        };
    for (int i = 0; i < 2; i++) {
      int quantity = quantities[i];
      for (int k = 0; k < 4; k++) {
        rows[row + i][offset + k] = base(k, r)[quantity];
      }
      double given = quantity == 4 ? shear : quantity == 2 ? couple : 0;
      right[row + i] = given - particular(within, r)[quantity];
    }
  }

  private static double[] solution(double[][] rows, double[] right) {
    for (int i = 0; i < rows.length; i++) {
      double largest = 0;
      for (double value : rows[i]) {
        largest = Math.max(largest, Math.abs(value));
      }
      for (int k = 0; k < rows.length; k++) {
        rows[i][k] /= largest;
      }
      right[i] /= largest;
    }
    try {
      return new LUDecomposition(new Array2DRowRealMatrix(rows, false), 1e-14)
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    } catch (SingularMatrixException e) {
      throw new RefusedException(
          "The plate is not held: at least one edge must be supported or fixed.");
    }
  }
}
