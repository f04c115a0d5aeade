package endfloat.units;

/**
 * A library value with its own spread, such as a handbook expansion coefficient.
 *
 * @param value in SI
 * @param standardUncertainty in SI, 0 or more
 */
public record Uncertain(double value, double standardUncertainty) {}
