package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.units.Scatter;
import java.util.List;

/** The backlash that a mesh itself shows for a change of shim. */
public final class MeasuredRate {
  private MeasuredRate() {}

  /**
   * Straight line through the trials.
   *
   * @param slope backlash for a unit of shim
   * @param nextShim thickness for the target
   * @param change from the last trial to the next shim
   * @param residual standard deviation of the readings about the line; 0 for two trials
   */
  public record Rate(
      @In("1") double slope,
      @In("mm") double nextShim,
      @In("mm") double change,
      @In("mm") double residual) {}

  /**
   * Measured change of backlash with shim thickness from two or more trials, and the next shim.
   *
   * <p>Least squares; it replaces the theoretical rate of the mesh. With three or more trials the
   * scatter about the line adds an uncertainty of its own, of n − 2 degrees of freedom, which slope
   * and next shim share; with two there is none, and the uncertainty is that of the readings.
   *
   * @param trials shim and backlash of each
   * @param target backlash wanted
   * @throws RefusedException for fewer than two different shims, or a slope of nought
   */
  @Calculates(
      source = "least squares; JCGM 100:2008, annex H.3 (uncertainty of a straight line)",
      cautions = {
        "Read the same tooth each time, end floats taken up the same way.",
        "Where the readings state an uncertainty of their own, their share of the scatter about the"
            + " line is counted twice.",
        "A next shim far outside the trials is a guess: try again with it and fit anew."
      },
      terms = {"shim", "lash", "slope", "trial", "mounting distance"},
      scatter = "backlashRateMeasuredScatter")
  public static Rate backlashRateMeasured(List<ShimTrial> trials, @In("mm") double target) {
    Line line = line(trials);
    double next = line.shim() + (target - line.lash()) / line.slope();
    return new Rate(
        line.slope(), next, next - trials.get(trials.size() - 1).shim(), line.residual());
  }

  /** The line at the middle of the trials and its slope have errors that are independent. */
  public static Scatter backlashRateMeasuredScatter(List<ShimTrial> trials, double target) {
    Line line = line(trials);
    double middle = -line.residual() / Math.sqrt(trials.size()) / line.slope();
    double slope = line.residual() / Math.sqrt(line.squares());
    double turned = -(target - line.lash()) / (line.slope() * line.slope()) * slope;
    return new Scatter(
        new double[][] {{0, slope}, {middle, turned}, {middle, turned}, {0, 0}},
        trials.size() > 2 ? trials.size() - 2 : Double.POSITIVE_INFINITY);
  }

  /** A straight line by the middle of its points; squares is the sum of (shim - its middle)^2. */
  private record Line(double shim, double lash, double slope, double squares, double residual) {}

  private static Line line(List<ShimTrial> trials) {
    int n = trials.size();
    double shim = trials.stream().mapToDouble(ShimTrial::shim).sum() / n;
    double lash = trials.stream().mapToDouble(ShimTrial::backlash).sum() / n;
    double squares = 0;
    double products = 0;
    for (ShimTrial trial : trials) {
      squares += (trial.shim() - shim) * (trial.shim() - shim);
      products += (trial.shim() - shim) * (trial.backlash() - lash);
    }
    if (n < 2 || !(squares > 0)) {
      throw new RefusedException("a slope needs trials with at least two different shims");
    }
    double slope = products / squares;
    if (slope == 0) {
      throw new RefusedException("the backlash did not change with the shim: no next shim follows");
    }
    return new Line(shim, lash, slope, squares, residual(trials, shim, lash, slope));
  }

  private static double residual(List<ShimTrial> trials, double shim, double lash, double slope) {
    if (trials.size() < 3) {
      return 0;
    }
    double sum = 0;
    for (ShimTrial trial : trials) {
      double away = trial.backlash() - lash - slope * (trial.shim() - shim);
      sum += away * away;
    }
    return Math.sqrt(sum / (trials.size() - 2));
  }
}
