package endfloat.fits;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/**
 * One dimension of a chain, such as {@code link(80 mm, upper: 0.1 mm, lower: 0 mm)} or {@code
 * link(50 mm, tolerance: 0.05 mm, sense: -1)}.
 *
 * @param nominal size on the drawing
 * @param tolerance plus or minus, where both deviations are alike
 * @param upper upper deviation, with its sign
 * @param lower lower deviation, with its sign
 * @param sense 1 where the dimension opens the gap, -1 where it closes it; another number for a
 *     lever or a half diameter
 * @param distribution how sizes fall inside the tolerance, for chain_monte_carlo
 * @param held 1 where chain_allocate must not touch the tolerance (bought parts), else 0
 */
@Part
public record Link(
    @In("mm") double nominal,
    @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double tolerance,
    @In("mm") @Default(Default.NOT_GIVEN) double upper,
    @In("mm") @Default(Default.NOT_GIVEN) double lower,
    @In("1") @Default("1") double sense,
    @Default("\"normal\"") Distribution distribution,
    @In("1") @Range("0 .. 1") @Default("0") double held) {

  /** How sizes fall inside a tolerance. */
  public enum Distribution {
    /** Bell-shaped about the middle, the tolerance so many standard deviations. */
    NORMAL,
    /** Anywhere alike. */
    RECTANGULAR,
    /** Most in the middle, none at the ends. */
    TRIANGULAR
  }

  /** Half the width of the tolerance, never negative. */
  double half() {
    if (!Double.isNaN(tolerance)) {
      if (!Double.isNaN(upper) || !Double.isNaN(lower)) {
        throw new RefusedException(
            "a link takes tolerance, or upper and lower, not both: which one holds?");
      }
      return tolerance;
    }
    if (Double.isNaN(upper) || Double.isNaN(lower)) {
      throw new RefusedException(
          "a link needs its tolerance, or both upper and lower; write tolerance: 0 mm for an exact"
              + " size");
    }
    if (upper < lower) {
      throw new RefusedException("upper is below lower in a link; upper is the larger deviation");
    }
    return (upper - lower) / 2;
  }

  /** Middle of the limits: where an unequal tolerance is moved to. */
  double middle() {
    return Double.isNaN(tolerance) ? nominal + (upper + lower) / 2 : nominal;
  }
}
