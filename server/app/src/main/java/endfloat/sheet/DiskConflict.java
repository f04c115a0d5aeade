package endfloat.sheet;

import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import java.util.Optional;

/**
 * Somebody else changed the file while it was open here. Edits go on and are kept in the log; the
 * file is not written until a person has chosen.
 *
 * @param theirs the record on disk; empty where the file is gone or no record
 * @param reason a sentence for the reader
 */
public record DiskConflict(Optional<InvestigationRecord> theirs, String reason) {
  static DiskConflict of(byte[] file) {
    if (file.length == 0) {
      return new DiskConflict(
          Optional.empty(), "the file of this record was deleted while it was open here");
    }
    try {
      return new DiskConflict(
          Optional.of(InvestigationRecord.read(file)),
          "the file of this record was changed by something else while it was open here");
    } catch (RecordException e) {
      return new DiskConflict(
          Optional.empty(),
          "the file of this record was changed by something else, and is no longer a record: "
              + e.getMessage());
    }
  }
}
