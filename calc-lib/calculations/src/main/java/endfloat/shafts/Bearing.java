package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A bearing that holds a shaft at one place.
 *
 * @param at from the left end of the shaft
 * @param stiffness radial; not given = rigid
 * @param tiltStiffness against turning of the shaft in the bearing; 0 = free to tilt
 */
@Part
public record Bearing(
    @In("mm") @Range(">= 0 mm") double at,
    @In("N/mm") @Range("> 0 N/mm") @Default(Default.NOT_GIVEN) double stiffness,
    @In("N.m/rad") @Range(">= 0 N.m/rad") @Default("0 N.m/rad") double tiltStiffness) {

  BeamLine.Support support() {
    return new BeamLine.Support(
        Double.isNaN(stiffness) ? Double.POSITIVE_INFINITY : stiffness, tiltStiffness);
  }
}
