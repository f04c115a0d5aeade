/**
 * Line drawings of what arguments and signs of a calculation mean, for the reference page. Open
 * {@link Drawings} first: it says which calculation has which.
 */
package endfloat.picture.drawing;
