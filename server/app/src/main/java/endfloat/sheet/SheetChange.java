package endfloat.sheet;

import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import java.util.Set;

/**
 * One kept edit, for those who listen. They come in the order of revisions, none left out.
 *
 * @param revision of the record with it
 * @param record with it
 * @param cells ids of clauses changed or new
 * @param removed ids of clauses gone
 * @param order whether clauses stand in another order, or other ones do
 * @param blocks the record's own fields changed: {@code title_block}, {@code settings} ...
 */
public record SheetChange(
    long revision,
    Edit edit,
    InvestigationRecord record,
    Set<String> cells,
    Set<String> removed,
    boolean order,
    Set<String> blocks,
    boolean canUndo,
    boolean canRedo) {}
