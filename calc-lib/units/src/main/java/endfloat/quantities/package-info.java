/**
 * Typed quantities for Java: a length cannot be handed over where a mass is wanted. Kinds of
 * quantity are the marker interfaces of JSR 385 and those of {@link Trade} beside them. Open {@link
 * Measured} first.
 */
package endfloat.quantities;
