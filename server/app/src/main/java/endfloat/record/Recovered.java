package endfloat.record;

import java.util.List;
import java.util.Optional;

/**
 * A record as it is after all acknowledged edits.
 *
 * @param record with every acknowledged edit made
 * @param base the revision its log begins with; clauses without an entry are of this revision
 * @param revision of the record
 * @param saved revision that the file on disk holds
 * @param diskHash SHA-256 of the file's bytes; empty where the file is gone
 * @param entries of the log, oldest first
 * @param journal to go on with
 * @param notices what the reader should know: a torn edit dropped, a change on disk taken over
 * @param theirs the file on disk, where somebody else changed it while edits here were not yet in
 *     it
 */
public record Recovered(
    InvestigationRecord record,
    long base,
    long revision,
    long saved,
    String diskHash,
    List<Entry> entries,
    Journal journal,
    List<String> notices,
    Optional<byte[]> theirs) {}
