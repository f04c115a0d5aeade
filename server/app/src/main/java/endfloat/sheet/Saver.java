package endfloat.sheet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Change;
import endfloat.record.EditRefusedException;
import endfloat.record.FileStore;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordHash;
import endfloat.record.RecordJson;
import endfloat.record.RecordPlace;
import endfloat.record.Recovered;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Writes the file of a sheet when it has been quiet, and never over bytes it does not know. The
 * lock of the sheet is held for the marks in the log only, not while the file is made and written.
 */
final class Saver {
  /** How long no edit has come before the file is written. */
  private static final Duration QUIET = Duration.ofSeconds(1);

  /** How long edits may go on without the file being written. */
  private static final Duration LONGEST = Duration.ofSeconds(20);

  private static final Duration LOOK = Duration.ofSeconds(2);
  private static final Duration STATES_APART = Duration.ofMinutes(5);

  private final OpenSheet sheet;
  private final FileStore files;
  private final RecordPlace place;
  private final Clock clock;
  private final Optional<ScheduledExecutorService> timer;

  /** One save at a time; taken before the lock of the sheet. */
  private final ReentrantLock saving = new ReentrantLock();

  // under the lock of the sheet
  private long saved;
  private Optional<DiskConflict> conflict;
  private long firstUnsavedNanos;
  private long lastEditNanos;
  private boolean due;
  private boolean closed;
  private long size;

  // under saving
  private String diskHash;
  private String pendingHash = "";
  private FileStore.Stamp stamp;
  private long stateKeptMillis;

  private volatile ResultsSource results = (record, revision) -> Optional.empty();
  private volatile boolean hasResults;
  private volatile boolean withoutResults;
  private final AtomicLong resultsCame = new AtomicLong();
  private volatile long cameBefore;
  private ScheduledFuture<?> looking;

  Saver(
      OpenSheet sheet,
      FileStore files,
      RecordPlace place,
      Clock clock,
      Recovered found,
      Optional<ScheduledExecutorService> timer) {
    this.sheet = sheet;
    this.files = files;
    this.place = place;
    this.clock = clock;
    this.timer = timer;
    this.saved = found.saved();
    this.diskHash = found.diskHash();
    this.conflict = found.theirs().map(DiskConflict::of);
  }

  void start() throws IOException {
    size = files.stamp(place.file()).map(FileStore.Stamp::size).orElse(0L);
    timer.ifPresent(
        t ->
            looking =
                t.scheduleWithFixedDelay(
                    () -> {
                      lookAtDisk();
                      sheet.deliver();
                    },
                    LOOK.toMillis(),
                    LOOK.toMillis(),
                    TimeUnit.MILLISECONDS));
    sheet.lock().lock();
    try {
      if (saved < sheet.revisionHeld()) {
        lastEditNanos = System.nanoTime();
        firstUnsavedNanos = lastEditNanos;
        schedule(QUIET.toNanos());
      }
    } finally {
      sheet.lock().unlock();
    }
  }

  void resultsFrom(ResultsSource source) {
    results = source;
    hasResults = true;
  }

  /** Figures have come that the file was written without: it is written again, with them. */
  void resultsReady() {
    sheet.lock().lock();
    try {
      resultsCame.incrementAndGet();
      if (withoutResults) {
        saveAgainHeld();
      }
    } finally {
      sheet.lock().unlock();
    }
  }

  /** What is on the disk lacks figures that are to be had; the sheet's lock is held. */
  private void saveAgainHeld() {
    if (saved == sheet.revisionHeld()) {
      saved--;
      lastEditNanos = System.nanoTime();
      firstUnsavedNanos = lastEditNanos;
      schedule(QUIET.toNanos());
    }
  }

  Optional<DiskConflict> conflict() {
    return conflict;
  }

  /**
   * @throws EditRefusedException if the record would grow past what can be read again
   */
  void refuseTooLarge(Change change) {
    long added = change.value() == null ? 0 : change.value().toString().length();
    if (added > 0 && size + added > RecordJson.MOST_BYTES - 1_000_000L) {
      throw new EditRefusedException(
          "the record would become too large", "keep photographs and long tables beside it");
    }
  }

  /** An edit was kept; the sheet's lock is held. */
  void edited(long revision, Change change) {
    size += change.value() == null ? 0 : change.value().toString().length();
    lastEditNanos = System.nanoTime();
    if (revision == saved + 1 || firstUnsavedNanos == 0) {
      firstUnsavedNanos = lastEditNanos;
    }
    schedule(QUIET.toNanos());
  }

  private void schedule(long nanos) {
    if (!due && !closed && timer.isPresent()) {
      due = true;
      timer.get().schedule(this::saveWhenQuiet, nanos, TimeUnit.NANOSECONDS);
    }
  }

  private void saveWhenQuiet() {
    sheet.lock().lock();
    try {
      due = false;
      if (closed || conflict.isPresent() || saved >= sheet.revisionHeld()) {
        return;
      }
      long now = System.nanoTime();
      long wait =
          Math.min(
              lastEditNanos + QUIET.toNanos() - now, firstUnsavedNanos + LONGEST.toNanos() - now);
      if (wait > 0) {
        schedule(wait);
        return;
      }
    } finally {
      sheet.lock().unlock();
    }
    try {
      save();
    } catch (IOException | RecordException e) {
      String message =
          "the file could not be written: "
              + e.getMessage()
              + "; no edit is lost, they are in the log, and it will be tried again";
      sheet.tell(listener -> listener.notice(message));
      sheet.lock().lock();
      try {
        schedule(LONGEST.toNanos());
      } finally {
        sheet.lock().unlock();
      }
    }
    sheet.deliver();
  }

  void save() throws IOException {
    saving.lock();
    try {
      InvestigationRecord record;
      long revision;
      sheet.lock().lock();
      try {
        if (conflict.isPresent() || saved >= sheet.revisionHeld()) {
          return;
        }
        record = sheet.recordHeld();
        revision = sheet.revisionHeld();
      } finally {
        sheet.lock().unlock();
      }
      write(record, revision);
    } finally {
      saving.unlock();
    }
  }

  private void write(InvestigationRecord record, long revision) throws IOException {
    InvestigationRecord computed = withResults(record, revision);
    byte[] bytes = computed.write();
    // every write passes the schema and the strict reader, as every read does
    InvestigationRecord.read(bytes);
    byte[] now = files.read(place.file()).orElse(new byte[0]);
    if (!isOurs(now)) {
      enterConflict(now);
      return;
    }
    keepState(now);
    replace(computed, bytes, revision);
  }

  private void replace(InvestigationRecord computed, byte[] bytes, long revision)
      throws IOException {
    sheet.lock().lock();
    try {
      sheet.journal().saving(revision, bytes);
    } finally {
      sheet.lock().unlock();
    }
    // should what follows fail, either may be on the disk
    pendingHash = RecordHash.ofBytes(bytes);
    files.replace(place.file(), bytes);
    diskHash = pendingHash;
    stamp = files.stamp(place.file()).orElse(null);
    sheet.lock().lock();
    try {
      saved = revision;
      size = bytes.length;
      firstUnsavedNanos = sheet.revisionHeld() > revision ? lastEditNanos : 0;
      if (sheet.revisionHeld() == revision) {
        sheet.computedHeld(computed);
      } else {
        schedule(QUIET.toNanos());
      }
      noteSaved(revision, bytes);
      if (withoutResults && resultsCame.get() > cameBefore) {
        // they came while the file was being written
        saveAgainHeld();
      }
    } finally {
      sheet.lock().unlock();
    }
  }

  private void noteSaved(long revision, byte[] bytes) {
    try {
      sheet.journal().saved(revision, bytes);
    } catch (IOException e) {
      // the mark only spares a question after a later change on disk; the next edit writes it again
    }
  }

  private InvestigationRecord withResults(InvestigationRecord record, long revision) {
    if (!hasResults) {
      ObjectNode tree = record.tree();
      boolean fresh = tree.at("/hashes/source").asText().equals(record.sourceHash());
      return fresh ? record : record.withResults(null);
    }
    cameBefore = resultsCame.get();
    Optional<ObjectNode> figures = results.results(record, revision);
    withoutResults = figures.isEmpty();
    return record.withResults(figures.orElse(null));
  }

  private boolean isOurs(byte[] file) {
    if (file.length == 0) {
      return false;
    }
    String hash = RecordHash.ofBytes(file);
    return hash.equals(diskHash) || hash.equals(pendingHash);
  }

  /** Keeps the file as it was opened, and after that one state every five minutes of work. */
  private void keepState(byte[] file) throws IOException {
    long now = clock.millis();
    if (stateKeptMillis == 0 || now - stateKeptMillis >= STATES_APART.toMillis()) {
      place.keepState(files, clock, file);
      stateKeptMillis = now;
    }
  }

  private void enterConflict(byte[] theirs) {
    DiskConflict found = DiskConflict.of(theirs);
    sheet.lock().lock();
    try {
      conflict = Optional.of(found);
      sheet.tell(listener -> listener.conflict(found));
    } finally {
      sheet.lock().unlock();
    }
  }

  void lookAtDisk() {
    if (!saving.tryLock()) {
      return;
    }
    try {
      if (conflict.isPresent()) {
        return;
      }
      FileStore.Stamp now = files.stamp(place.file()).orElse(null);
      if (now != null && now.equals(stamp)) {
        return;
      }
      byte[] file = files.read(place.file()).orElse(new byte[0]);
      if (isOurs(file)) {
        stamp = now;
      } else {
        enterConflict(file);
      }
    } catch (IOException e) {
      // the disk does not answer just now; every save looks again
    } finally {
      saving.unlock();
    }
  }

  void keepMine() throws IOException {
    saving.lock();
    try {
      Optional<byte[]> theirs = files.read(place.file());
      if (theirs.isPresent()) {
        place.keepState(files, clock, theirs.get());
      }
      InvestigationRecord record;
      long revision;
      sheet.lock().lock();
      try {
        record = sheet.recordHeld();
        revision = sheet.revisionHeld();
      } finally {
        sheet.lock().unlock();
      }
      InvestigationRecord computed = withResults(record, revision);
      replace(computed, computed.write(), revision);
      sheet.lock().lock();
      try {
        conflict = Optional.empty();
      } finally {
        sheet.lock().unlock();
      }
    } finally {
      saving.unlock();
    }
  }

  void takeTheirs() throws IOException {
    saving.lock();
    try {
      byte[] theirs = files.read(place.file()).orElse(new byte[0]);
      InvestigationRecord record =
          DiskConflict.of(theirs)
              .theirs()
              .orElseThrow(
                  () ->
                      new RecordException(
                          RecordException.Reason.NOT_A_RECORD, DiskConflict.of(theirs).reason()));
      sheet.lock().lock();
      try {
        place.keepState(files, clock, sheet.recordHeld().write());
        sheet.journal().restart(theirs, sheet.revisionHeld() + 1);
        conflict = Optional.empty();
        sheet.replaceHeld(record);
        saved = sheet.revisionHeld();
        diskHash = RecordHash.ofBytes(theirs);
        pendingHash = "";
        stamp = null;
      } finally {
        sheet.lock().unlock();
      }
    } finally {
      saving.unlock();
    }
  }

  void close() throws IOException {
    if (looking != null) {
      looking.cancel(false);
    }
    sheet.lock().lock();
    try {
      if (withoutResults) {
        saveAgainHeld();
      }
    } finally {
      sheet.lock().unlock();
    }
    try {
      save();
    } finally {
      sheet.lock().lock();
      try {
        closed = true;
      } finally {
        sheet.lock().unlock();
      }
    }
  }
}
