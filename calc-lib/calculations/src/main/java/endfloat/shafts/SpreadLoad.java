package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A load spread over a length of a shaft, even or growing evenly.
 *
 * @param load per length where it begins
 * @param from where it begins, from the left end of the shaft
 * @param to where it ends
 * @param loadEnd per length where it ends; not given = the same as where it begins
 * @param direction turned round the shaft, from the forces towards the side
 */
@Part(name = "spread_load")
public record SpreadLoad(
    @In("N/mm") double load,
    @In("mm") @Range(">= 0 mm") double from,
    @In("mm") @Range("> 0 mm") double to,
    @In("N/mm") @Default(Default.NOT_GIVEN) double loadEnd,
    @In("deg") @Default("0 deg") double direction) {

  /** Load per length in a plane at a place; 0 outside its length. */
  double at(ShaftPlane plane, double x, double middleOfSpan) {
    if (middleOfSpan < from || middleOfSpan > to) {
      return 0;
    }
    double end = Double.isNaN(loadEnd) ? load : loadEnd;
    double there = load + (end - load) * (x - from) / (to - from);
    if (direction == 0) {
      return plane == ShaftPlane.FORCE ? there : 0;
    }
    return there
        * (plane == ShaftPlane.FORCE ? StrictMath.cos(direction) : StrictMath.sin(direction));
  }
}
