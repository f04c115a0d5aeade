package endfloat.gears;

import endfloat.definition.In;
import endfloat.definition.Part;

/**
 * One trial of a mesh: a shim and the backlash it gave.
 *
 * @param shim thickness fitted
 * @param backlash read with it, at the same tooth each time
 */
@Part
public record ShimTrial(@In("mm") double shim, @In("mm") double backlash) {}
