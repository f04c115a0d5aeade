package endfloat.sheet;

import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * What a sheet ought to hold, kept in the simplest way that can be: a list of clauses and their
 * texts, and whole lists for undo. Shares no code with the sheet.
 */
final class SheetModel {
  /** A clause and its text. */
  record Line(String id, String text) {}

  private final Deque<List<Line>> done = new ArrayDeque<>();
  private final Deque<List<Line>> undone = new ArrayDeque<>();
  private List<Line> lines;
  private long revision;

  SheetModel(List<Line> lines, long revision) {
    this.lines = List.copyOf(lines);
    this.revision = revision;
  }

  static List<Line> of(InvestigationRecord record) {
    return record.cells().stream().map(SheetModel::line).toList();
  }

  private static Line line(Cell cell) {
    return new Line(cell.id(), cell.text());
  }

  List<Line> lines() {
    return lines;
  }

  long revision() {
    return revision;
  }

  SheetModel copy() {
    SheetModel copy = new SheetModel(lines, revision);
    copy.done.addAll(done);
    copy.undone.addAll(undone);
    return copy;
  }

  /** Makes an edit that the sheet took; false where the model could not have. */
  boolean make(Edit edit) {
    Change change = edit.change();
    if (change.op() == Change.Op.UNDO || change.op() == Change.Op.REDO) {
      boolean undo = change.op() == Change.Op.UNDO;
      Deque<List<Line>> from = undo ? done : undone;
      if (from.isEmpty()) {
        return false;
      }
      (undo ? undone : done).push(lines);
      lines = from.pop();
      revision++;
      return true;
    }
    List<Line> next = new ArrayList<>(lines);
    int index = index(next, change.cell());
    switch (change.op()) {
      case PUT -> next.set(index, new Line(change.cell(), change.value().textValue()));
      case ADD ->
          next.add(
              place(next, change.after()),
              new Line(change.cell(), change.value().path("text").asText()));
      case DELETE -> next.remove(index);
      case MOVE -> {
        Line moved = next.remove(index);
        next.add(place(next, change.after()), moved);
      }
      default -> throw new IllegalArgumentException(change.op().name());
    }
    if (change.op() == Change.Op.PUT && next.equals(lines)) {
      return true;
    }
    done.push(lines);
    undone.clear();
    lines = List.copyOf(next);
    revision++;
    return true;
  }

  private static int index(List<Line> lines, String id) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  private static int place(List<Line> lines, String after) {
    if (after.isEmpty()) {
      return 0;
    }
    int before = index(lines, after);
    return before < 0 ? lines.size() : before + 1;
  }
}
