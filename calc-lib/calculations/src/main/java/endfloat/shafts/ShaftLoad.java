package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A force and a couple on a shaft at one place.
 *
 * @param at from the left end of the shaft
 * @param force across the shaft; deflection counts positive in its direction
 * @param couple in the plane of bending, positive where it turns the shaft end-up towards the force
 *     (raises the slope)
 */
@Part(name = "shaft_load")
public record ShaftLoad(
    @In("mm") @Range(">= 0 mm") double at,
    @In("N") @Default("0 N") double force,
    @In("N.m") @Default("0 N.m") double couple) {}
