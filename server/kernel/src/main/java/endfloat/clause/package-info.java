/**
 * What the source of a java clause may call beside the calculation library: progress, and things to
 * show. Open {@link endfloat.clause.Body} first.
 */
package endfloat.clause;
