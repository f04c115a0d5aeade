package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A shaft in a row of shafts geared together.
 *
 * @param stiffness torsional, at the shaft itself
 * @param ratio turns of this shaft for one turn of the first: z₁/z₂ for the second of two
 */
@Part(name = "geared_shaft")
public record GearedShaft(
    @In("N.m/rad") @Range("> 0 N.m/rad") double stiffness,
    @In("1") @Range("> 0") @Default("1") double ratio) {}
