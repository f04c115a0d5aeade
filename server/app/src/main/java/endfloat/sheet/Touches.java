package endfloat.sheet;

import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.Entry;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Who last changed which place of which clause: tells an edit that was made on an older sight. */
final class Touches {
  private final Map<String, Map<String, Touch>> places = new HashMap<>();
  private final Map<String, Long> revisions = new HashMap<>();
  private long base;

  /** A change of a place. */
  record Touch(long revision, String author, String client) {}

  Touches(long base) {
    this.base = base;
  }

  void restart(long newBase) {
    places.clear();
    revisions.clear();
    base = newBase;
  }

  long base() {
    return base;
  }

  /** Revisions of clauses changed since the base. */
  Map<String, Long> revisions() {
    return Map.copyOf(revisions);
  }

  /** Notes what an entry changed, and by whom. */
  void add(Entry entry) {
    Change did = entry.did();
    did.parts().forEach(part -> revisions.put(part.cell(), entry.revision()));
    if (did.op() == Change.Op.MOVE) {
      return;
    }
    Touch touch = new Touch(entry.revision(), entry.edit().author(), entry.edit().client());
    if (did.op() == Change.Op.TOGETHER) {
      entry.back().parts().forEach(back -> note(back.cell(), back.at(), touch));
      return;
    }
    // the way back points at what is another thing now: the whole list where an element was taken
    // out
    note(did.cell(), entry.back().at(), touch);
  }

  private void note(String cell, String pointer, Touch touch) {
    places.computeIfAbsent(cell, any -> new HashMap<>()).put(pointer, touch);
  }

  /** Notes a clause as changed without a place of its own: moved, or brought back. */
  void changed(String cell, long revision) {
    revisions.put(cell, revision);
  }

  /** The latest change by another page, after {@code seen}, of a place that overlaps this one. */
  Optional<Touch> later(String cell, String pointer, Edit edit) {
    if (edit.seen() < base) {
      return Optional.of(new Touch(base, "", ""));
    }
    Touch latest = null;
    for (Map.Entry<String, Touch> place : places.getOrDefault(cell, Map.of()).entrySet()) {
      Touch touch = place.getValue();
      boolean own = !edit.client().isEmpty() && edit.client().equals(touch.client());
      boolean later = touch.revision() > edit.seen() && !own;
      if (later && overlap(place.getKey(), pointer)) {
        latest = latest == null || touch.revision() > latest.revision() ? touch : latest;
      }
    }
    return Optional.ofNullable(latest);
  }

  private static boolean overlap(String one, String other) {
    return one.equals(other) || one.startsWith(other + "/") || other.startsWith(one + "/");
  }
}
