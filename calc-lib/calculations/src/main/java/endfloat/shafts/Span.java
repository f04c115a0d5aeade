package endfloat.shafts;

/**
 * A stretch of a beam with one section and one distributed load.
 *
 * @param length [m]
 * @param bending E I [N m²]
 * @param shear k G A [N]; infinite where shear is left out
 * @param distributed load per length, positive in the direction of positive deflection [N/m]
 */
record Span(double length, double bending, double shear, double distributed) {}
