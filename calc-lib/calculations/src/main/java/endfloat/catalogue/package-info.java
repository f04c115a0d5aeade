/**
 * The catalogue: every calculation of the library as data, generated at compile time from the
 * annotated methods. Start with {@link endfloat.catalogue.Catalogue}.
 */
package endfloat.catalogue;
