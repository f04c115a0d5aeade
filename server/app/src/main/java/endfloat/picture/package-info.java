/**
 * Draws what the page and the report show as pictures: limit strips now, charts later. Plain
 * numbers and texts go in, SVG comes out. Start with {@link endfloat.picture.LimitStrip}.
 */
package endfloat.picture;
