/**
 * Dimensions, units and decimal-exact reading and printing of quantities. Start with {@link
 * endfloat.units.UnitTable}.
 */
package endfloat.units;
