package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/**
 * A length of a round shaft with one outside and one inside diameter.
 *
 * @param length along the shaft
 * @param outer outside diameter
 * @param inner diameter of the hole, 0 for a solid shaft
 */
@Part
public record Segment(
    @In("mm") @Range("> 0 mm") double length,
    @In("mm") @Range("> 0 mm") double outer,
    @In("mm") @Range(">= 0 mm") @Default("0 mm") double inner) {

  /** Refuses a hole that leaves no metal. */
  void holdHollow() {
    if (inner >= outer) {
      throw new RefusedException(
          "A segment's hole is as large as the shaft: inner must be less than outer.");
    }
  }

  double secondMoment() {
    return StrictMath.PI / 64 * (fourth(outer) - fourth(inner));
  }

  double polarMoment() {
    return 2 * secondMoment();
  }

  double area() {
    return StrictMath.PI / 4 * (outer * outer - inner * inner);
  }

  private static double fourth(double d) {
    return d * d * d * d;
  }
}
