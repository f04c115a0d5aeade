/**
 * Parts held together: press and shrink fits and the temperatures to put them together. Start with
 * {@link endfloat.joints.PressFit}.
 */
package endfloat.joints;
