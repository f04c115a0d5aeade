/**
 * The record file: what it holds, strict reading and writing, its schema and hashes, the log of
 * edits, the shelf. It knows nothing of what computes or serves records. Start with {@link
 * endfloat.record.InvestigationRecord}.
 */
package endfloat.record;
