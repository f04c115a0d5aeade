package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A bearing that holds a shaft at one place.
 *
 * @param at from the left end of the shaft
 * @param stiffness radial, the same all round; not given = rigid
 * @param tiltStiffness against turning of the shaft in the bearing; 0 = free to tilt
 * @param offset how far the bearing stands out of line, in the direction of the forces
 * @param offsetSide how far it stands out of line sideways
 */
@Part
public record Bearing(
    @In("mm") @Range(">= 0 mm") double at,
    @In("N/mm") @Range("> 0 N/mm") @Default(Default.NOT_GIVEN) double stiffness,
    @In("N.m/rad") @Range(">= 0 N.m/rad") @Default("0 N.m/rad") double tiltStiffness,
    @In("mm") @Default("0 mm") double offset,
    @In("mm") @Default("0 mm") double offsetSide) {

  BeamLine.Support support(ShaftPlane plane) {
    return new BeamLine.Support(
        Double.isNaN(stiffness) ? Double.POSITIVE_INFINITY : stiffness,
        tiltStiffness,
        plane == ShaftPlane.FORCE ? offset : offsetSide);
  }
}
