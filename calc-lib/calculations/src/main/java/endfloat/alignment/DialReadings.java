package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.numerics.Nought;
import endfloat.units.Uncertain;

/** What a dial gauge says round a shaft or across a coupling. */
public final class DialReadings {
  private DialReadings() {}

  /**
   * A round surface running out.
   *
   * @param eccentricity amplitude of the first harmonic: half the run-out it causes
   * @param direction of the high reading, counted as the angles are; none where the readings show
   *     no eccentricity
   * @param runOut full indicator reading, greatest less least, with everything in it
   * @param unexplained greatest part of a reading that the eccentricity does not explain
   */
  public record Eccentricity(
      @In("mm") double eccentricity,
      @In("deg") Uncertain direction,
      @In("mm") double runOut,
      @In("mm") double unexplained) {}

  /**
   * Eccentricity and its direction from dial readings round a turn: least-squares fit of {@code r =
   * r₀ + e cos(θ − φ)}; for four readings a quarter apart {@code e_x = (r₀ − r₁₈₀)/2, e_y = (r₉₀ −
   * r₂₇₀)/2}.
   *
   * @param readings plunger in counts positive
   * @param angles at which they were taken
   * @return eccentricity, direction, run-out
   * @throws RefusedException with fewer than three readings, or angles that do not tell
   */
  @Calculates(
      source = "derived: first harmonic by least squares; run-out = 2 x eccentricity (ISO 1101)",
      cautions =
          "A bow and a bend look alike in one plane: measure along the shaft. Out-of-roundness"
              + " stays in unexplained.",
      terms = {"run-out", "TIR", "FIM", "bow", "bent shaft", "eccentric"})
  public static Eccentricity eccentricityFromDial(
      @In("mm") double[] readings, @In("deg") double[] angles) {
    int n = readings.length;
    if (n != angles.length) {
      throw new RefusedException(
          "readings and angles must be equally many: " + n + " against " + angles.length);
    }
    if (n < 3) {
      throw new RefusedException("an eccentricity needs three readings round the turn at least");
    }
    double[] solution = harmonic(readings, angles);
    double greatest = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    double unexplained = 0;
    for (int i = 0; i < n; i++) {
      greatest = Math.max(greatest, readings[i]);
      least = Math.min(least, readings[i]);
      double fitted =
          solution[0]
              + solution[1] * StrictMath.cos(angles[i])
              + solution[2] * StrictMath.sin(angles[i]);
      unexplained = Math.max(unexplained, Math.abs(readings[i] - fitted));
    }
    double largest = Math.max(Math.abs(greatest), Math.abs(least));
    return new Eccentricity(
        Nought.snapped(StrictMath.hypot(solution[1], solution[2]), largest),
        Dowels.directionOf(
            solution[1], solution[2], largest, "the readings show no eccentricity: no direction"),
        greatest - least,
        Nought.snapped(unexplained, largest));
  }

  /** Normal equations for 1, cos, sin, solved by Cramer's rule. */
  private static double[] harmonic(double[] readings, double[] angles) {
    double[][] a = new double[3][3];
    double[] b = new double[3];
    for (int i = 0; i < readings.length; i++) {
      double[] row = {1, StrictMath.cos(angles[i]), StrictMath.sin(angles[i])};
      for (int j = 0; j < 3; j++) {
        b[j] += row[j] * readings[i];
        for (int k = 0; k < 3; k++) {
          a[j][k] += row[j] * row[k];
        }
      }
    }
    double whole = determinant(a);
    if (Math.abs(whole) < 1e-9 * readings.length * readings.length * readings.length) {
      throw new RefusedException(
          "the angles lie too close together to tell an eccentricity; read all round the turn");
    }
    double[] solution = new double[3];
    for (int k = 0; k < 3; k++) {
      double[][] swapped = new double[3][];
      for (int j = 0; j < 3; j++) {
        swapped[j] = a[j].clone();
        swapped[j][k] = b[j];
      }
      solution[k] = determinant(swapped) / whole;
    }
    return solution;
  }

  private static double determinant(double[][] a) {
    return a[0][0] * (a[1][1] * a[2][2] - a[1][2] * a[2][1])
        - a[0][1] * (a[1][0] * a[2][2] - a[1][2] * a[2][0])
        + a[0][2] * (a[1][0] * a[2][1] - a[1][1] * a[2][0]);
  }

  /**
   * Angle between two coupling faces from the difference of the gaps across a diameter: {@code θ =
   * atan(g/D)}.
   *
   * @param gapDifference g, gap on one side less gap on the other
   * @param diameter D, on which the gaps were taken
   * @return angle, positive where the first gap is the larger
   */
  @Calculates(
      source = "derived: tangent = difference of gaps over diameter",
      cautions =
          "Take the gaps at two places half a turn apart with both shafts turned together, or faces"
              + " that run out count as an angle.",
      terms = {"coupling", "feeler", "angularity", "face"},
      partials = "gapAnglePartials")
  @In("deg")
  public static double gapAngle(
      @In("mm") double gapDifference, @In("mm") @Range("> 0 mm") double diameter) {
    return StrictMath.atan(gapDifference / diameter);
  }

  /** Of {@link #gapAngle}. */
  public static double[][] gapAnglePartials(double gapDifference, double diameter) {
    double squares = diameter * diameter + gapDifference * gapDifference;
    return new double[][] {{diameter / squares, -gapDifference / squares}};
  }
}
