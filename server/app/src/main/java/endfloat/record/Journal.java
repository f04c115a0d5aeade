package endfloat.record;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.Closeable;
import java.io.IOException;

/**
 * The log of one record: edits, and marks that say which bytes on disk hold which revision. It
 * begins with the first edit, beside a copy of the file as it then was.
 */
public final class Journal implements Closeable {
  private final FileStore files;
  private final RecordPlace place;
  private EditLog log;
  private byte[] base;
  private long baseRevision;

  Journal(FileStore files, RecordPlace place, EditLog log) {
    this.files = files;
    this.place = place;
    this.log = log;
  }

  /** A journal that is yet to begin, on a file of these bytes at this revision. */
  static Journal unbegun(FileStore files, RecordPlace place, byte[] file, long revision) {
    Journal journal = new Journal(files, place, null);
    journal.base = file;
    journal.baseRevision = revision;
    return journal;
  }

  /** Keeps an edit: when this returns, it is on the disk. */
  public void append(Entry entry) throws IOException {
    begin();
    log.append(entry.toJson());
  }

  /** Says that the file is about to become these bytes, which hold this revision. */
  public void saving(long revision, byte[] file) throws IOException {
    if (log != null) {
      log.append(mark("saving", revision, RecordHash.ofBytes(file)));
    }
  }

  /** Says that the file has become these bytes. */
  public void saved(long revision, byte[] file) throws IOException {
    if (log != null) {
      log.note(mark("saved", revision, RecordHash.ofBytes(file)));
    } else {
      base = file;
      baseRevision = revision;
    }
  }

  /**
   * Begins anew on another file; the log so far is kept as the previous one. Where the disk does
   * not take the beginning now, the next edit waits for it.
   */
  public void restart(byte[] file, long revision) {
    try {
      close();
    } catch (IOException e) {
      // what was acknowledged is on the disk, and nothing more is written there
    }
    log = null;
    base = file;
    baseRevision = revision;
    try {
      begin();
    } catch (IOException e) {
      // should the program end now, the choice is put to the reader again
    }
  }

  private void begin() throws IOException {
    if (log != null) {
      return;
    }
    place.createFolders(files);
    String hash = RecordHash.ofBytes(base);
    files.replace(place.base(hash), base);
    if (files.stamp(place.log()).isPresent()) {
      files.rename(place.log(), place.folder().resolve("edits.previous.jsonl"));
    }
    log = EditLog.begin(files, place.log(), mark("begun", baseRevision, hash));
    base = null;
    dropOldBases(hash);
  }

  private void dropOldBases(String hash) {
    try {
      String current = place.base(hash).getFileName().toString();
      for (String name : files.list(place.folder())) {
        if (name.startsWith("base-") && !name.equals(current)) {
          files.delete(place.folder().resolve(name));
        }
      }
    } catch (IOException e) {
      // an old base is only room on the disk; the next beginning tries again
    }
  }

  static ObjectNode mark(String what, long revision, String hash) {
    ObjectNode mark = JsonNodeFactory.instance.objectNode();
    mark.put("mark", what);
    mark.put("revision", revision);
    mark.put("hash", hash);
    return mark;
  }

  @Override
  public void close() throws IOException {
    if (log != null) {
      log.close();
    }
  }
}
