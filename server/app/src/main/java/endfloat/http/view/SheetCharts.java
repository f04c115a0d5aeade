package endfloat.http.view;

import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The charts of a sheet. A picture takes as long as a hundred edits, so one that only its values
 * have moved stands as it is until {@link #draw} is called, after the edit has been told.
 */
final class SheetCharts {
  private final Map<String, ClauseBoard> drawn = new HashMap<>();
  private final Set<String> stale = new LinkedHashSet<>();
  private final Set<String> untold = new LinkedHashSet<>();

  void clear() {
    drawn.clear();
    stale.clear();
    untold.clear();
  }

  /**
   * The board of a clause: of a chart the last one drawn.
   *
   * @param now whether its own fields may have changed, so that the last one is of another chart
   */
  ClauseBoard board(Cell cell, boolean now, InvestigationRecord record, ValueGraph graph) {
    if (!cell.kind().equals("chart")) {
      return ClauseBoard.of(cell, record, graph, () -> {});
    }
    ClauseBoard last = drawn.get(cell.id());
    if (last != null && !now) {
      stale.add(cell.id());
      return last;
    }
    ClauseBoard fresh = ClauseBoard.of(cell, record, graph, () -> {});
    stale.remove(cell.id());
    drawn.put(cell.id(), fresh);
    return fresh;
  }

  /** Whether pictures are behind their values. */
  boolean isBehind() {
    return !stale.isEmpty() || !untold.isEmpty();
  }

  /**
   * Draws what is behind.
   *
   * @param between called over and over; may throw, and then the rest stays behind
   */
  void draw(InvestigationRecord record, ValueGraph graph, Runnable between) {
    for (String id : List.copyOf(stale)) {
      if (record.cell(id).isPresent()) {
        drawn.put(id, ClauseBoard.of(record.cell(id).get(), record, graph, between));
        untold.add(id);
      } else {
        drawn.remove(id);
      }
      stale.remove(id);
    }
  }

  /** Clauses whose pictures were drawn since this was last asked. */
  Set<String> takeDrawn() {
    Set<String> all = Set.copyOf(new ArrayList<>(untold));
    untold.clear();
    return all;
  }

  /** The last board drawn of a clause that {@link #takeDrawn} gave. */
  ClauseBoard last(String clause) {
    return drawn.get(clause);
  }
}
