/**
 * How shafts and beams bend and twist under load. Start with {@link endfloat.shafts.SteppedShaft};
 * the solution itself is in {@link endfloat.shafts.BeamLine}.
 */
package endfloat.shafts;
