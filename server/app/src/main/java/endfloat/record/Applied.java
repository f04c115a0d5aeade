package endfloat.record;

import java.util.Set;

/**
 * A change made.
 *
 * @param record the record after it; shares with the one before it all that did not change
 * @param back the change that takes it back
 * @param cells ids of clauses changed or new
 * @param removed ids of clauses gone
 * @param order whether clauses stand in another order, or other ones do
 * @param blocks the record's own fields changed: {@code title_block}, {@code settings} ...
 * @param touched JSON Pointer of what was changed inside the clause or record, for telling later
 *     edits of the same place
 */
public record Applied(
    InvestigationRecord record,
    Change back,
    Set<String> cells,
    Set<String> removed,
    boolean order,
    Set<String> blocks,
    String touched) {}
