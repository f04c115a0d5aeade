package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.List;

/** The backlash that a mesh itself shows for a change of shim. */
public final class MeasuredRate {
  private MeasuredRate() {}

  /**
   * Straight line through the trials.
   *
   * @param slope backlash for a unit of shim, with its spread from the scatter about the line
   * @param nextShim thickness for the target
   * @param change from the last trial to the next shim
   * @param residual standard deviation of the readings about the line; 0 for two trials
   */
  public record Rate(
      @In("1") Uncertain slope,
      @In("mm") Uncertain nextShim,
      @In("mm") double change,
      @In("mm") double residual) {}

  /**
   * Measured change of backlash with shim thickness from two or more trials, and the next shim.
   *
   * <p>Least squares; it replaces the theoretical rate of the mesh. With three or more trials the
   * scatter about the line gives a spread of its own; with two there is none, and the uncertainty
   * is that of the readings.
   *
   * @param trials shim and backlash of each
   * @param target backlash wanted
   * @throws RefusedException for fewer than two different shims, or a slope of nought
   */
  @Calculates(
      source = "least squares; JCGM 100:2008, annex H.3 (uncertainty of a straight line)",
      cautions = {
        "Read the same tooth each time, end floats taken up the same way.",
        "A next shim far outside the trials is a guess: try again with it and fit anew."
      },
      terms = {"shim", "lash", "slope", "trial", "mounting distance"})
  public static Rate backlashRateMeasured(List<ShimTrial> trials, @In("mm") double target) {
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
    double next = shim + (target - lash) / slope;
    double residual = residual(trials, shim, lash, slope);
    double slopeSpread = residual / Math.sqrt(squares);
    double offset = next - shim;
    double nextSpread = residual / Math.abs(slope) * Math.sqrt(1.0 / n + offset * offset / squares);
    return new Rate(
        new Uncertain(slope, slopeSpread),
        new Uncertain(next, nextSpread),
        next - trials.get(n - 1).shim(),
        residual);
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
