package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The heads of all clauses of a sheet as its pages were told them last, charts among them. */
final class SheetHeads {
  private final Map<String, ClauseHead> told = new HashMap<>();
  private final SheetCharts charts = new SheetCharts();

  /** Takes those of another record. */
  void replace(InvestigationRecord record, ValueGraph graph, Collection<Figure> known) {
    told.clear();
    charts.clear();
    Set<String> all = record.cells().stream().map(Cell::id).collect(Collectors.toSet());
    told.putAll(
        ClauseHead.of(all, record, graph, known, cell -> charts.board(cell, true, record, graph)));
  }

  Map<String, ClauseHead> all() {
    return Collections.unmodifiableMap(told);
  }

  /** Adds the clauses whose heads rest on one of these names. */
  void restingOn(Set<String> names, Set<String> into) {
    told.forEach(
        (id, head) -> {
          if (!Collections.disjoint(head.restsOn(), names)) {
            into.add(id);
          }
        });
  }

  /**
   * State, worst verdict and problems of clauses that are not sent whole but read otherwise now.
   */
  void into(
      ObjectNode message,
      Set<String> clauses,
      Set<String> sentWhole,
      InvestigationRecord record,
      ValueGraph graph,
      Collection<Figure> known) {
    Function<Cell, ClauseBoard> boards =
        cell -> charts.board(cell, sentWhole.contains(cell.id()), record, graph);
    into(message, ClauseHead.of(clauses, record, graph, known, boards), sentWhole, record);
  }

  /** Whether charts are to be drawn anew. */
  boolean isBehindWithCharts() {
    return charts.isBehind();
  }

  /**
   * Draws the charts whose values have changed; their heads go into the message.
   *
   * @param between called over and over; may throw to leave the rest for another time
   */
  void drawCharts(
      ObjectNode message,
      InvestigationRecord record,
      ValueGraph graph,
      Collection<Figure> known,
      Runnable between) {
    charts.draw(record, graph, between);
    Map<String, ClauseHead> now =
        ClauseHead.of(charts.takeDrawn(), record, graph, known, cell -> charts.last(cell.id()));
    into(message, now, Set.of(), record);
  }

  private void into(
      ObjectNode message,
      Map<String, ClauseHead> now,
      Set<String> sentWhole,
      InvestigationRecord record) {
    told.keySet().removeIf(id -> record.cell(id).isEmpty());
    ObjectNode changed = message.putObject("heads");
    now.forEach(
        (id, head) -> {
          ClauseHead before = told.put(id, head);
          if (!head.equals(before) && !sentWhole.contains(id)) {
            changed.set(id, head.view());
          }
        });
  }
}
