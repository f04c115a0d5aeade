/**
 * Turns annotated methods into catalogue entries at compile time and demands a check file for each.
 * Start with {@link endfloat.processor.CalculationProcessor}.
 */
package endfloat.processor;
