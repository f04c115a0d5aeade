/**
 * Choices made at the bench: which shims make a pack. Start with {@link endfloat.bench.ShimPack}.
 */
package endfloat.bench;
