/**
 * Java clauses run by child processes over the kernel message protocol: the client, the warmed
 * spare, approvals. Open {@link endfloat.kernel.JavaRuns} first. Nothing of it is loaded before a
 * record with a java clause is opened.
 */
package endfloat.kernel;
