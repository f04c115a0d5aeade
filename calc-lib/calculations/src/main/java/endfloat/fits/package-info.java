/**
 * Sizes and how they meet: limits and fits of ISO 286 and ANSI B4.1, the schedule of fits with its
 * permissible worn sizes, and chains of dimensions. Start with {@link endfloat.fits.IsoLimits} or
 * {@link endfloat.fits.DimensionChain}.
 */
package endfloat.fits;
