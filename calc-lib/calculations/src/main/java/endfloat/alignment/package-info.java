/**
 * Shafts and bores in line, covers and dowels back in place: bore line, rim and face alignment,
 * coupling misalignment, offset and oversize dowels. Start with {@link
 * endfloat.alignment.ShaftAlignment} or {@link endfloat.alignment.Dowels}.
 */
package endfloat.alignment;
