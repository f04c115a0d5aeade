/**
 * Records seen again: run once more with other readings, saved figures against figures recomputed.
 * Start with {@link endfloat.review.Rerun}.
 */
package endfloat.review;
