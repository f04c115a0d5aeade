package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Opens a record: its file, and the acknowledged edits that are not in the file yet.
 *
 * <p>The marks of the log tell which bytes hold which revision, so edits are never made twice and
 * never forgotten, wherever a crash came. Bytes that no mark knows were written by somebody else.
 */
public final class Recovery {
  /**
   * A log of this size, all in the file, is put aside on opening; undo then begins anew [bytes].
   */
  private static final long LONG_LOG = 16_000_000;

  private final FileStore files;
  private final RecordPlace place;
  private final Clock clock;
  private final List<String> notices = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /** Bytes with this hash hold this revision. */
  private record Mark(String what, long revision, String hash) {}

  private Recovery(FileStore files, RecordPlace place, Clock clock) {
    this.files = files;
    this.place = place;
    this.clock = clock;
  }

  /**
   * Opens the record at a place.
   *
   * @throws RecordException if there is no such record or it cannot be read
   * @throws IOException if the file system fails
   */
  public static Recovered open(FileStore files, RecordPlace place, Clock clock) throws IOException {
    return new Recovery(files, place, clock).open();
  }

  private Recovered open() throws IOException {
    Optional<byte[]> file = files.read(place.file());
    Optional<EditLog.Opened> opened = EditLog.open(files, place.log());
    if (opened.isEmpty() || !understand(opened.get())) {
      byte[] bytes = file.orElseThrow(this::notFound);
      return fresh(bytes, 0);
    }
    opened.get().dropped().ifPresent(notices::add);
    Mark known = file.map(this::markOf).orElse(null);
    if (known == null) {
      return changedByOthers(file, opened.get());
    }
    byte[] bytes = file.orElseThrow();
    InvestigationRecord record = replay(InvestigationRecord.read(bytes), known.revision());
    if (opened.get().damaged()) {
      return putAside(bytes, record);
    }
    if (opened.get().log().size() > LONG_LOG && known.revision() == revision()) {
      files.rename(place.log(), place.folder().resolve("edits.previous.jsonl"));
      return fresh(bytes, revision());
    }
    return recovered(record, known.revision(), bytes, opened.get(), Optional.empty());
  }

  /** Somebody else wrote or deleted the file since the log last knew it. */
  private Recovered changedByOthers(Optional<byte[]> file, EditLog.Opened opened)
      throws IOException {
    Mark begun = marks.get(0);
    Optional<byte[]> base = files.read(place.base(begun.hash()));
    if (base.isEmpty() || !RecordHash.ofBytes(base.get()).equals(begun.hash())) {
      notices.add("the log of edits cannot be used: the file it began with is gone");
      return fresh(file.orElseThrow(this::notFound), revision() + 1);
    }
    InvestigationRecord mine = replay(InvestigationRecord.read(base.get()), begun.revision());
    long confirmed =
        marks.stream()
            .filter(m -> !m.what().equals("saving"))
            .mapToLong(Mark::revision)
            .max()
            .orElse(0);
    if (file.isPresent() && confirmed == revision() && isRecord(file.get())) {
      place.keepState(files, clock, mine.write());
      notices.add(
          "the file was changed outside Endfloat since it was last open here; it was taken as it is"
              + " now, and the earlier state is kept");
      return fresh(file.get(), revision() + 1);
    }
    return recovered(
        mine, confirmed, file.orElse(new byte[0]), opened, Optional.of(file.orElse(new byte[0])));
  }

  private static boolean isRecord(byte[] file) {
    try {
      InvestigationRecord.read(file);
      return true;
    } catch (RecordException e) {
      return false;
    }
  }

  /** A log with a hole is kept aside, and what it still gives goes into the file at once. */
  private Recovered putAside(byte[] file, InvestigationRecord record) throws IOException {
    place.keepState(files, clock, file);
    byte[] bytes = record.write();
    files.replace(place.file(), bytes);
    String name = "edits.damaged-" + clock.millis() + ".jsonl";
    files.rename(place.log(), place.folder().resolve(name));
    notices.add("the damaged log is kept as " + name);
    return fresh(bytes, revision() + 1);
  }

  private Recovered fresh(byte[] bytes, long revision) {
    return new Recovered(
        InvestigationRecord.read(bytes),
        revision,
        revision,
        revision,
        RecordHash.ofBytes(bytes),
        List.of(),
        Journal.unbegun(files, place, bytes, revision),
        List.copyOf(notices),
        Optional.empty());
  }

  private Recovered recovered(
      InvestigationRecord record,
      long saved,
      byte[] disk,
      EditLog.Opened opened,
      Optional<byte[]> theirs) {
    return new Recovered(
        record,
        marks.get(0).revision(),
        revision(),
        saved,
        disk.length == 0 ? "" : RecordHash.ofBytes(disk),
        List.copyOf(entries),
        new Journal(files, place, opened.log()),
        List.copyOf(notices),
        theirs);
  }

  /** Sorts the lines; false where there is nothing to go by. */
  private boolean understand(EditLog.Opened opened) {
    for (JsonNode line : opened.lines()) {
      if (line.has("mark")) {
        marks.add(
            new Mark(
                line.path("mark").asText(),
                line.path("revision").longValue(),
                line.path("hash").asText()));
      } else {
        entries.add(Entry.fromJson(line));
      }
    }
    return !marks.isEmpty();
  }

  private Mark markOf(byte[] file) {
    String hash = RecordHash.ofBytes(file);
    Mark last = null;
    for (Mark mark : marks) {
      last = mark.hash().equals(hash) ? mark : last;
    }
    return last;
  }

  private long revision() {
    return entries.isEmpty() ? marks.get(0).revision() : entries.get(entries.size() - 1).revision();
  }

  private InvestigationRecord replay(InvestigationRecord from, long revision) {
    InvestigationRecord record = from;
    for (Entry entry : entries) {
      if (entry.revision() > revision) {
        record = RecordChange.apply(record, entry.did()).record();
      }
    }
    return record;
  }

  private RecordException notFound() {
    return new RecordException(
        Reason.NOT_FOUND, "there is no record " + place.id().text() + " on this shelf");
  }
}
