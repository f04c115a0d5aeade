package endfloat.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Applied;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.EditRefusedException;
import endfloat.record.Entry;
import endfloat.record.FileStore;
import endfloat.record.InvestigationRecord;
import endfloat.record.Journal;
import endfloat.record.RecordChange;
import endfloat.record.RecordPlace;
import endfloat.record.Recovered;
import endfloat.record.Recovery;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;

/**
 * The one writer of a record, for any number of pages at a time.
 *
 * <p>An edit is checked, given its place in the order, and kept on the disk; only then is it
 * acknowledged and told to those who listen. The file follows when it has been quiet for a second.
 * Safe for use by many threads.
 */
public final class OpenSheet implements AutoCloseable {
  private final ReentrantLock lock = new ReentrantLock();
  private final Clock clock;
  private final Journal journal;
  private final Saver saver;
  private final Touches touches;
  private final UndoHistory history = new UndoHistory();
  private final Map<String, Long> kept = new HashMap<>();
  private final List<SheetListener> listeners = new CopyOnWriteArrayList<>();
  private final Map<String, Presence> present = new LinkedHashMap<>();
  private final List<String> notices;
  private final Delivery delivery;
  private InvestigationRecord record;
  private long revision;
  private boolean closed;

  private OpenSheet(
      FileStore files,
      RecordPlace place,
      Clock clock,
      Executor listening,
      Optional<ScheduledExecutorService> timer,
      Recovered found) {
    this.clock = clock;
    this.delivery = new Delivery(listening);
    this.journal = found.journal();
    this.record = found.record();
    this.revision = found.revision();
    this.touches = new Touches(found.base());
    this.notices = found.notices();
    replayHistory(found);
    this.saver = new Saver(this, files, place, clock, found, timer);
  }

  /**
   * Opens a record for editing; it must not be open elsewhere.
   *
   * @param listening runs the listeners
   * @param timer saves by itself; without one the file is written by {@link #save} and {@link
   *     #close}
   * @throws endfloat.record.RecordException if there is no such record or it cannot be read
   * @throws IOException if the file system fails
   */
  public static OpenSheet open(
      FileStore files,
      RecordPlace place,
      Clock clock,
      Executor listening,
      Optional<ScheduledExecutorService> timer)
      throws IOException {
    Recovered found = Recovery.open(files, place, clock);
    OpenSheet sheet = new OpenSheet(files, place, clock, listening, timer, found);
    sheet.saver.start();
    return sheet;
  }

  private void replayHistory(Recovered found) {
    for (Entry entry : found.entries()) {
      history.add(entry);
      kept.put(entry.edit().id(), entry.revision());
      touches.add(entry);
    }
  }

  /** Makes an edit, an undo or a redo. An edit sent again is answered as the first time. */
  public Answer apply(Edit edit) {
    Answer answer;
    lock.lock();
    try {
      answer = answer(edit);
    } finally {
      lock.unlock();
    }
    delivery.start();
    return answer;
  }

  private Answer answer(Edit asked) {
    if (closed) {
      return refused(asked, "this record is being closed", "open it again and repeat the edit");
    }
    Long before = kept.get(asked.id());
    if (before != null) {
      return new Answer.Kept(asked.id(), before);
    }
    Edit edit =
        asked.time().isEmpty()
            ? asked.madeBy(asked.author(), asked.client(), clock.instant().toString())
            : asked;
    try {
      return switch (edit.change().op()) {
        case UNDO -> step(edit, history.undo(), "undo");
        case REDO -> step(edit, history.redo(), "redo");
        default -> change(edit);
      };
    } catch (EditRefusedException e) {
      return refused(edit, e.getMessage(), e.wayOut());
    } catch (IOException e) {
      return refused(
          edit,
          "the edit could not be kept on the disk: " + e.getMessage(),
          "see that the disk is there and not full, then repeat it; all before it is safe");
    }
  }

  private Answer step(Edit edit, Optional<UndoHistory.Step> step, String word) throws IOException {
    if (step.isEmpty()) {
      return refused(edit, "there is nothing to " + word, "make an edit first");
    }
    Change did = step.get().change();
    return keep(edit, did, step.get().of(), RecordChange.apply(record, did));
  }

  private Answer change(Edit edit) throws IOException {
    Change change = edit.change();
    Applied applied = RecordChange.apply(record, change);
    JsonNode now = applied.back().value();
    boolean same =
        (change.op() == Change.Op.PUT || change.op() == Change.Op.SET)
            && change.value() != null
            && change.value().equals(now);
    if (same) {
      return new Answer.Kept(edit.id(), revision);
    }
    Optional<Touches.Touch> later = later(edit, applied);
    boolean several = change.op() == Change.Op.TOGETHER || change.op() == Change.Op.ROWS;
    if (later.isPresent() && several) {
      return refused(
          edit, "one of these places was changed since you saw it", "look at it and repeat it");
    }
    if (later.isPresent()) {
      return stale(edit, later.get(), now);
    }
    saver.refuseTooLarge(change);
    return keep(edit, change, List.of(), applied);
  }

  /** What another page changed in the same place since, if anything. */
  private Optional<Touches.Touch> later(Edit edit, Applied applied) {
    return switch (edit.change().op()) {
      case PUT, SET, ROWS -> touches.later(edit.change().cell(), applied.touched(), edit);
      case TOGETHER ->
          edit.change().parts().stream()
              .flatMap(part -> touches.later(part.cell(), part.at(), edit).stream())
              .findFirst();
      case DELETE ->
          applied.removed().stream()
              .flatMap(cell -> touches.later(cell, "", edit).stream())
              .findFirst();
      default -> Optional.empty();
    };
  }

  private Answer keep(Edit edit, Change did, List<Long> of, Applied applied) throws IOException {
    Entry entry = new Entry(revision + 1, edit, did, applied.back(), of);
    journal.append(entry);
    record = applied.record();
    revision = entry.revision();
    kept.put(edit.id(), revision);
    history.add(entry);
    touches.add(entry);
    applied.cells().forEach(cell -> touches.changed(cell, revision));
    SheetChange change =
        new SheetChange(
            revision,
            edit,
            record,
            applied.cells(),
            applied.removed(),
            applied.order(),
            applied.blocks(),
            history.canUndo(),
            history.canRedo());
    tell(listener -> listener.changed(change));
    saver.edited(revision, did);
    return new Answer.Kept(edit.id(), revision);
  }

  private Answer stale(Edit edit, Touches.Touch later, JsonNode theirs) {
    String who = later.author().isEmpty() ? "somebody else" : later.author();
    return new Answer.Refused(
        edit.id(),
        who + " changed this place since you saw it",
        "choose one of the two, or put them together",
        Optional.of(text(edit.change().value())),
        Optional.of(text(theirs)),
        revision);
  }

  private static String text(JsonNode value) {
    return value == null ? "" : value.isTextual() ? value.textValue() : value.toString();
  }

  private Answer refused(Edit edit, String reason, String wayOut) {
    return new Answer.Refused(
        edit.id(), reason, wayOut, Optional.empty(), Optional.empty(), revision);
  }

  /** The sheet as it is now. */
  public Snapshot snapshot() {
    lock.lock();
    try {
      return snapshotHeld();
    } finally {
      lock.unlock();
    }
  }

  private Snapshot snapshotHeld() {
    return new Snapshot(
        record,
        revision,
        touches.base(),
        touches.revisions(),
        history.canUndo(),
        history.canRedo(),
        List.copyOf(present.values()),
        saver.conflict(),
        notices);
  }

  /**
   * Listens from now on.
   *
   * @return the sheet as it is now: every later change is told, none before it
   */
  public Snapshot listen(SheetListener listener) {
    lock.lock();
    try {
      // in the order of the deliveries, so that none from before the snapshot reaches the listener
      delivery.add(() -> listeners.add(listener));
      return snapshotHeld();
    } finally {
      lock.unlock();
      delivery.start();
    }
  }

  /** Listens no more. A call that is under way may still come. */
  public void forget(SheetListener listener) {
    delivery.add(() -> listeners.remove(listener));
    delivery.start();
  }

  /** Says which clause somebody is in. */
  public void here(Presence who) {
    lock.lock();
    try {
      present.put(who.client(), who);
      tellPresent();
    } finally {
      lock.unlock();
    }
    delivery.start();
  }

  /** Says that a page is closed. */
  public void gone(String client) {
    lock.lock();
    try {
      if (present.remove(client) != null) {
        tellPresent();
      }
    } finally {
      lock.unlock();
    }
    delivery.start();
  }

  private void tellPresent() {
    List<Presence> all = List.copyOf(present.values());
    tell(listener -> listener.present(all));
  }

  /** Where the figures come from that are saved with the record. */
  public void saveResultsOf(ResultsSource source) {
    saver.resultsFrom(source);
  }

  /** The figures are to be had that were not when the file was last written. */
  public void resultsReady() {
    saver.resultsReady();
  }

  /**
   * Writes the file now, if anything is not in it yet: before a report or a re-run.
   *
   * @throws IOException if it cannot be written; nothing is lost, the edits are in the log
   */
  public void save() throws IOException {
    saver.save();
    delivery.start();
  }

  /** Looks whether something else changed the file; listeners are told of it. */
  public void lookAtDisk() {
    saver.lookAtDisk();
    delivery.start();
  }

  /**
   * Ends a conflict: this sheet is written over the file on disk, which is kept as an earlier
   * state.
   */
  public void keepMine() throws IOException {
    saver.keepMine();
    delivery.start();
  }

  /**
   * Ends a conflict: the file on disk becomes the sheet, which is kept as an earlier state. Undo
   * begins anew.
   *
   * @throws endfloat.record.RecordException if the file on disk is no record
   */
  public void takeTheirs() throws IOException {
    saver.takeTheirs();
    delivery.start();
  }

  /** Saves and lets the record go. */
  @Override
  public void close() throws IOException {
    lock.lock();
    try {
      closed = true;
    } finally {
      lock.unlock();
    }
    try {
      saver.close();
    } finally {
      lock.lock();
      try {
        journal.close();
      } finally {
        lock.unlock();
      }
      delivery.start();
    }
  }

  // for the saver, which is part of this class in all but length

  ReentrantLock lock() {
    return lock;
  }

  Journal journal() {
    return journal;
  }

  InvestigationRecord recordHeld() {
    return record;
  }

  long revisionHeld() {
    return revision;
  }

  /** The record has been saved with these results. */
  void computedHeld(InvestigationRecord computed) {
    record = computed;
  }

  /** The record on disk takes the place of this one. */
  void replaceHeld(InvestigationRecord other) {
    record = other;
    revision++;
    touches.restart(revision);
    history.clear();
    Snapshot now = snapshotHeld();
    tell(listener -> listener.replaced(now));
  }

  void tell(Consumer<SheetListener> call) {
    delivery.add(
        () -> {
          for (SheetListener listener : new ArrayList<>(listeners)) {
            call.accept(listener);
          }
        });
  }

  void deliver() {
    delivery.start();
  }
}
