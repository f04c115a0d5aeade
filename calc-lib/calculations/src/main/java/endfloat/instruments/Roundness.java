package endfloat.instruments;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Roundness of a profile of radii. */
public final class Roundness {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private Roundness() {}

  /**
   * Reference circles of a profile.
   *
   * @param deviation roundness about the least-squares circle, peak to valley
   * @param centreX of the least-squares circle
   * @param centreY of it
   * @param radius of it
   * @param minimumZone least distance of two circles about one centre that hold the profile
   * @param circumscribed radius of the smallest circle around it
   * @param inscribed radius of the largest circle within it
   * @param limaconX centre by the first harmonic, 2/n Σ r cos φ
   * @param limaconY centre by the first harmonic, 2/n Σ r sin φ
   * @param limaconRadius mean radius
   */
  public record Circles(
      @In("mm") double deviation,
      @In("mm") double centreX,
      @In("mm") double centreY,
      @In("mm") double radius,
      @In("mm") double minimumZone,
      @In("mm") double circumscribed,
      @In("mm") double inscribed,
      @In("mm") double limaconX,
      @In("mm") double limaconY,
      @In("mm") double limaconRadius) {}

  /**
   * Roundness of a profile of radii about any centre near its own: least-squares, minimum-zone,
   * circumscribed and inscribed circle.
   *
   * <p>The least-squares circle is that of the distances from its centre, not its first-order form.
   * The others are found by closing in on the best centre; it must lie within the profile's own
   * deviation of the least-squares centre, which holds for all that is near a circle.
   *
   * @param radii evenly spaced round the turn from angle 0, or at the angles given
   * @param angles of the radii, where they are not evenly spaced
   * @throws RefusedException if half a turn or more is without a radius, or the profile is more
   *     than a hundredth of its radius out of round
   */
  @Calculates(
      source =
          "ISO 12181-1: least squares, minimum zone, minimum circumscribed and maximum inscribed reference circles",
      cautions =
          "No filter is applied: a standard roundness goes with a number of undulations per revolution.",
      terms = {"roundness", "circularity", "out-of-round", "LSC", "MZC", "MCC", "MIC"})
  public static Circles roundness(
      @In("mm") @Range("> 0 mm") double[] radii, @In("deg") @Default("[]") double[] angles) {
    int n = radii.length;
    if (n < 4) {
      throw new RefusedException("A form needs four radii at least.");
    }
    if (angles.length != 0 && angles.length != n) {
      throw new RefusedException("Give as many angles as radii, or none.");
    }
    double[] x = new double[n];
    double[] y = new double[n];
    double sumX = 0;
    double sumY = 0;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double angle = angles.length == 0 ? 2 * StrictMath.PI * i / n : angles[i];
      x[i] = radii[i] * StrictMath.cos(angle);
      y[i] = radii[i] * StrictMath.sin(angle);
      sumX += x[i];
      sumY += y[i];
      sum += radii[i];
    }
    holdAllRound(angles);
    double[] circle = leastSquares(x, y, sumX / n, sumY / n, sum / n);
    double greatest = greatest(x, y, circle[0], circle[1]);
    double least = least(x, y, circle[0], circle[1]);
    if (greatest - least > circle[2] / 100) {
      throw new RefusedException(
          "This profile is more than a hundredth of its radius out of round: no circle fits it. Are"
              + " these radii, not readings?");
    }
    double reach = 2 * (greatest - least);
    return new Circles(
        greatest - least,
        circle[0],
        circle[1],
        circle[2],
        lowest((a, b) -> greatest(x, y, a, b) - least(x, y, a, b), circle, reach),
        lowest((a, b) -> greatest(x, y, a, b), circle, reach),
        -lowest((a, b) -> -least(x, y, a, b), circle, reach),
        2 * sumX / n,
        2 * sumY / n,
        sum / n);
  }

  /** A circle through part of a turn only has no inscribed one and hardly a centre. */
  private static void holdAllRound(double[] angles) {
    double turn = 2 * StrictMath.PI;
    double[] round =
        Arrays.stream(angles).map(a -> a - turn * StrictMath.floor(a / turn)).sorted().toArray();
    for (int i = 0; i < round.length; i++) {
      double next = i + 1 < round.length ? round[i + 1] : round[0] + turn;
      if (next - round[i] > StrictMath.PI * (1 - 1e-9)) {
        throw new RefusedException(
            "The radii do not go round the circle: half a turn or more is without one.");
      }
    }
  }

  /** Centre and radius by Gauss and Newton on the distances. */
  private static double[] leastSquares(
      double[] x, double[] y, double startX, double startY, double startRadius) {
    double cx = startX;
    double cy = startY;
    double radius = startRadius;
    for (int pass = 0; pass < 50; pass++) {
      double[][] a = new double[3][4];
      for (int i = 0; i < x.length; i++) {
        double away = StrictMath.hypot(x[i] - cx, y[i] - cy);
        double[] row = {(x[i] - cx) / away, (y[i] - cy) / away, 1, away - radius};
        for (int j = 0; j < 3; j++) {
          for (int k = 0; k < 4; k++) {
            a[j][k] += row[j] * row[k];
          }
        }
      }
      double[] step = solved(a);
      cx += step[0];
      cy += step[1];
      radius += step[2];
      if (Math.abs(step[0]) + Math.abs(step[1]) + Math.abs(step[2]) < 1e-15 * radius) {
        break;
      }
    }
    return new double[] {cx, cy, radius};
  }

  private static double[] solved(double[][] a) {
    for (int p = 0; p < 3; p++) {
      if (!(a[p][p] > 1e-12 * a[2][2])) {
        throw new RefusedException("The radii do not go round the circle: no centre follows.");
      }
      for (int r = p + 1; r < 3; r++) {
        double factor = a[r][p] / a[p][p];
        for (int c = p; c < 4; c++) {
          a[r][c] -= factor * a[p][c];
        }
      }
    }
    double[] step = new double[3];
    for (int p = 2; p >= 0; p--) {
      double right = a[p][3];
      for (int c = p + 1; c < 3; c++) {
        right -= a[p][c] * step[c];
      }
      step[p] = right / a[p][p];
    }
    return step;
  }

  private interface OfCentre {
    double at(double x, double y);
  }

  /** Lowest value over the centres, one golden section within another; the function is a valley. */
  private static double lowest(OfCentre quantity, double[] circle, double reach) {
    return golden(
        x -> golden(y -> quantity.at(x, y), circle[1] - reach, circle[1] + reach),
        circle[0] - reach,
        circle[0] + reach);
  }

  private static double golden(DoubleUnaryOperator quantity, double from, double to) {
    double low = from;
    double high = to;
    double a = high - GOLDEN * (high - low);
    double b = low + GOLDEN * (high - low);
    double atA = quantity.applyAsDouble(a);
    double atB = quantity.applyAsDouble(b);
    double best = Math.min(atA, atB);
    for (int k = 0; k < 70; k++) {
      if (atA <= atB) {
        high = b;
        b = a;
        atB = atA;
        a = high - GOLDEN * (high - low);
        atA = quantity.applyAsDouble(a);
        best = Math.min(best, atA);
      } else {
        low = a;
        a = b;
        atA = atB;
        b = low + GOLDEN * (high - low);
        atB = quantity.applyAsDouble(b);
        best = Math.min(best, atB);
      }
    }
    return best;
  }

  private static double greatest(double[] x, double[] y, double cx, double cy) {
    double most = 0;
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - cx;
      double dy = y[i] - cy;
      most = Math.max(most, dx * dx + dy * dy);
    }
    return Math.sqrt(most);
  }

  private static double least(double[] x, double[] y, double cx, double cy) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double dx = x[i] - cx;
      double dy = y[i] - cy;
      least = Math.min(least, dx * dx + dy * dy);
    }
    return Math.sqrt(least);
  }
}
