/**
 * Gear pairs from their geometry: ratio, contact, sliding, forces, stress and backlash. Start with
 * {@link endfloat.gears.Backlash}.
 */
package endfloat.gears;
