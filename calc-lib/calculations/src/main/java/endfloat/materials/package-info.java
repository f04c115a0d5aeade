/**
 * Properties of the materials of the trade, each value with its source and its spread. Start with
 * {@link endfloat.materials.Material}.
 */
package endfloat.materials;
