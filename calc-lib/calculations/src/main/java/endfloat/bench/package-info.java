/**
 * What is worked out at the bench: shim packs, end float, wear of bores and journals, timing by a
 * vernier coupling. Start with {@link endfloat.bench.EndFloat} or {@link endfloat.bench.ShimPack}.
 */
package endfloat.bench;
