package endfloat.sheet;

import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.Entry;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * What can be undone and redone: the log, read as one line of edits of everyone. Steps of typing in
 * one place, one after the other without a pause, are undone together.
 */
final class UndoHistory {
  private static final Duration PAUSE = Duration.ofMillis(1500);

  private final Deque<Entry> done = new ArrayDeque<>();
  private final Deque<List<Entry>> undone = new ArrayDeque<>();

  /**
   * What an undo or redo comes to.
   *
   * @param of revisions it takes back or makes again, oldest first
   */
  record Step(Change change, List<Long> of) {}

  void add(Entry entry) {
    if (entry.isOrdinary()) {
      done.push(entry);
      undone.clear();
    } else if (entry.edit().change().op() == Change.Op.UNDO) {
      List<Entry> taken = new ArrayList<>();
      for (int i = 0; i < entry.of().size() && !done.isEmpty(); i++) {
        taken.add(0, done.pop());
      }
      undone.push(taken);
    } else {
      undone.poll();
      done.push(entry);
    }
  }

  void clear() {
    done.clear();
    undone.clear();
  }

  boolean canUndo() {
    return !done.isEmpty();
  }

  boolean canRedo() {
    return !undone.isEmpty();
  }

  Optional<Step> undo() {
    if (done.isEmpty()) {
      return Optional.empty();
    }
    List<Entry> together = new ArrayList<>();
    for (Entry entry : done) {
      if (!together.isEmpty() && !isTyping(entry, together.get(0))) {
        break;
      }
      together.add(0, entry);
    }
    return Optional.of(new Step(together.get(0).back(), revisions(together)));
  }

  Optional<Step> redo() {
    if (undone.isEmpty()) {
      return Optional.empty();
    }
    List<Entry> together = undone.peek();
    return Optional.of(new Step(together.get(together.size() - 1).did(), revisions(together)));
  }

  private static List<Long> revisions(List<Entry> entries) {
    return entries.stream().map(Entry::revision).toList();
  }

  private static boolean isTyping(Entry before, Entry after) {
    return before.isOrdinary()
        && after.isOrdinary()
        && isText(before.did())
        && isText(after.did())
        && isText(before.back())
        && before.did().cell().equals(after.did().cell())
        && before.did().at().equals(after.did().at())
        && before.edit().author().equals(after.edit().author())
        && before.edit().client().equals(after.edit().client())
        && soonAfter(before.edit(), after.edit());
  }

  private static boolean isText(Change change) {
    return change.op() == Change.Op.PUT && change.value() != null && change.value().isTextual();
  }

  private static boolean soonAfter(Edit before, Edit after) {
    try {
      Duration between =
          Duration.between(Instant.parse(before.time()), Instant.parse(after.time()));
      return !between.isNegative() && between.compareTo(PAUSE) <= 0;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
