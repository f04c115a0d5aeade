package endfloat.instruments;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;

/** Straightness of a profile. */
public final class Straightness {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private Straightness() {}

  /**
   * Reference lines of a profile.
   *
   * @param slope of the least-squares line
   * @param deviation straightness about it, peak to valley
   * @param endPointDeviation about the line through the two end points
   * @param minimumZone least distance, along the heights, of two parallel lines that hold the
   *     profile
   * @param residuals of the points from the least-squares line, in order
   */
  public record Lines(
      @In("um/mm") double slope,
      @In("um") double deviation,
      @In("um") double endPointDeviation,
      @In("um") double minimumZone,
      @In("um") double[] residuals) {}

  /**
   * Straightness of a rail, deck or straight-edge from heights along it.
   *
   * @param places along the length, in any order
   * @param heights at them
   */
  @Calculates(
      source = "ISO 12780-1: least-squares, end-point and minimum-zone reference lines",
      cautions = "Heights from a level or autocollimator are steps: add them up first.",
      terms = {"straightness", "flatness of a deck", "warp", "straight-edge"})
  public static Lines straightness(@In("mm") double[] places, @In("um") double[] heights) {
    int n = places.length;
    if (n != heights.length || n < 3) {
      throw new RefusedException("Give three places at least, and one height for each.");
    }
    double meanPlace = 0;
    double meanHeight = 0;
    for (int i = 0; i < n; i++) {
      meanPlace += places[i] / n;
      meanHeight += heights[i] / n;
    }
    double squares = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      squares += (places[i] - meanPlace) * (places[i] - meanPlace);
      products += (places[i] - meanPlace) * (heights[i] - meanHeight);
    }
    int first = 0;
    int last = 0;
    for (int i = 1; i < n; i++) {
      first = places[i] < places[first] ? i : first;
      last = places[i] > places[last] ? i : last;
    }
    double run = places[last] - places[first];
    if (!(squares > 0)) {
      throw new RefusedException("The places must differ.");
    }
    double slope = products / squares;
    double[] residuals = new double[n];
    for (int i = 0; i < n; i++) {
      residuals[i] = heights[i] - meanHeight - slope * (places[i] - meanPlace);
    }
    double deviation = range(places, heights, slope);
    double endPoint = range(places, heights, (heights[last] - heights[first]) / run);
    double zone = minimumZone(places, heights, slope, deviation / run);
    return new Lines(slope, deviation, endPoint, Math.min(zone, endPoint), residuals);
  }

  private static double range(double[] places, double[] heights, double slope) {
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.length; i++) {
      double above = heights[i] - slope * (places[i] - places[0]);
      most = Math.max(most, above);
      least = Math.min(least, above);
    }
    return most - least;
  }

  /** The range against the slope is a valley; its lowest lies within twice the deviation. */
  private static double minimumZone(double[] places, double[] heights, double slope, double steep) {
    double low = slope - 2 * steep;
    double high = slope + 2 * steep;
    double best = range(places, heights, slope);
    for (int k = 0; k < 90; k++) {
      double a = high - GOLDEN * (high - low);
      double b = low + GOLDEN * (high - low);
      double atA = range(places, heights, a);
      double atB = range(places, heights, b);
      best = Math.min(best, Math.min(atA, atB));
      if (atA <= atB) {
        high = b;
      } else {
        low = a;
      }
    }
    return best;
  }
}
