/**
 * What the evidence for a cause is worth: whether what a cause adds is big enough. Start with
 * {@link endfloat.evidence.BigEnough}.
 */
package endfloat.evidence;
