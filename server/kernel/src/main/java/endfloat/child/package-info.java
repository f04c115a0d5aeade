/**
 * The child process that runs java clauses: the loops of the open kernel message protocol, and the
 * compiler of clauses in {@code clause}. It knows the calculation library and nothing of the
 * server. Open {@link endfloat.child.Child} first.
 */
package endfloat.child;
