package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import java.util.Comparator;
import java.util.stream.IntStream;

/** The line through a row of main bearing bores, in one plane. */
public final class BoreLine {
  private BoreLine() {}

  /**
   * A row of bores against two lines. Offsets and deviations have the sign of the readings.
   *
   * @param intercept of the least-squares line at position 0
   * @param slope of the least-squares line, a plain ratio
   * @param angle of the least-squares line
   * @param deviations of the bores from it, in the order given
   * @param greatest largest deviation from it
   * @param least smallest deviation from it
   * @param straightness greatest less least
   * @param scatter standard deviation about it, n − 2 degrees of freedom
   * @param endDeviations deviations from the line through the two end bores, in the order given
   * @param neighbourStep largest change of the end-to-end deviation from one bore to the next along
   *     the shaft
   */
  public record Line(
      @In("mm") double intercept,
      @In("1") double slope,
      @In("deg") double angle,
      @In("mm") double[] deviations,
      @In("mm") double greatest,
      @In("mm") double least,
      @In("mm") double straightness,
      @In("mm") double scatter,
      @In("mm") double[] endDeviations,
      @In("mm") double neighbourStep) {}

  /**
   * Least-squares line through the offsets of the bores, their deviations from it, and the same
   * from the line through the end bores.
   *
   * <p>A least-squares line moves towards a bad bearing and so makes it look better (one bore of
   * five out by 40 um shows 32): read the end-to-end deviations and the neighbour step beside it.
   *
   * @param positions of the bores along the shaft, in any order
   * @param offsets of their centres in one plane, from one datum
   * @return the line and the deviations
   * @throws RefusedException with fewer than three bores, unequal lists or two bores in one place
   */
  @Calculates(
      source =
          "ordinary least squares, y = a + b x: NIST/SEMATECH e-Handbook of Statistical Methods,"
              + " section 4.1; end-to-end line: derived",
      cautions = {
        "The least-squares line moves towards a bad bearing; compare end_deviations.",
        "One plane only: measure up and down and sideways apart, with the caps torqued."
      },
      terms = {"line bore", "crankcase", "main bearing", "straightness", "tunnel"})
  public static Line boreLine(@In("mm") double[] positions, @In("mm") double[] offsets) {
    int n = positions.length;
    if (n != offsets.length) {
      throw new RefusedException(
          "positions and offsets must be equally many: " + n + " against " + offsets.length);
    }
    if (n < 3) {
      throw new RefusedException(
          "a bore line needs three bores at least; two always lie on a line");
    }
    double x0 = mean(positions);
    double y0 = mean(offsets);
    double sxx = 0;
    double sxy = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        if (positions[i] == positions[j]) {
          throw new RefusedException("two bores have the same position");
        }
      }
      sxx += (positions[i] - x0) * (positions[i] - x0);
      sxy += (positions[i] - x0) * (offsets[i] - y0);
    }
    double slope = sxy / sxx;
    double intercept = y0 - slope * x0;
    int[] along =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> positions[i]))
            .mapToInt(i -> i)
            .toArray();
    int first = along[0];
    int last = along[n - 1];
    double endSlope = (offsets[last] - offsets[first]) / (positions[last] - positions[first]);
    double[] deviations = new double[n];
    double[] endDeviations = new double[n];
    double squares = 0;
    double step = 0;
    for (int i = 0; i < n; i++) {
      deviations[i] = offsets[i] - y0 - slope * (positions[i] - x0);
      endDeviations[i] = offsets[i] - offsets[first] - endSlope * (positions[i] - positions[first]);
      squares += deviations[i] * deviations[i];
    }
    for (int k = 1; k < n; k++) {
      step = Math.max(step, Math.abs(endDeviations[along[k]] - endDeviations[along[k - 1]]));
    }
    double greatest = java.util.Arrays.stream(deviations).max().getAsDouble();
    double least = java.util.Arrays.stream(deviations).min().getAsDouble();
    return new Line(
        intercept,
        slope,
        StrictMath.atan(slope),
        deviations,
        greatest,
        least,
        greatest - least,
        StrictMath.sqrt(squares / (n - 2)),
        endDeviations,
        step);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
