/**
 * Round plates and panels pushed along their axis or tilted at the hub. Start with {@link
 * endfloat.plates.RoundPlate}; the solution itself is in {@link endfloat.plates.PlateField}.
 */
package endfloat.plates;
