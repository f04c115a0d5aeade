package endfloat.sheet;

import endfloat.record.InvestigationRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sheet at one moment.
 *
 * @param revisions of clauses changed since the log began; any other is of revision {@code base}
 * @param conflict the file on disk is another one; empty where all is well
 * @param notices what was found on opening: an edit half written, a change on disk taken over
 */
public record Snapshot(
    InvestigationRecord record,
    long revision,
    long base,
    Map<String, Long> revisions,
    boolean canUndo,
    boolean canRedo,
    List<Presence> present,
    Optional<DiskConflict> conflict,
    List<String> notices) {

  /** Revision of a clause's last change. */
  public long revisionOf(String cell) {
    return revisions.getOrDefault(cell, base);
  }
}
