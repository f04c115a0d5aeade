package endfloat.report;

import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The readings of a record in the order in which they are taken at the bench: one instrument after
 * the other, with each one part after the other. Each keeps the number of its turn on the page.
 */
final class FormOrder {
  /**
   * A reading on the form.
   *
   * @param turn from 1, in the order of the page, by which it is entered afterwards
   */
  record Asked(int turn, Cell clause, Reading reading) {}

  private FormOrder() {}

  /** By instrument and by part, each in the order in which it is first named. */
  static Map<String, Map<String, List<Asked>>> of(InvestigationRecord record) {
    Map<String, Map<String, List<Asked>>> order = new LinkedHashMap<>();
    int turn = 0;
    for (Cell cell : record.cells()) {
      for (Reading reading : cell.readings()) {
        turn++;
        order
            .computeIfAbsent(reading.instrument(), mark -> new LinkedHashMap<>())
            .computeIfAbsent(reading.part(), part -> new ArrayList<>())
            .add(new Asked(turn, cell, reading));
      }
    }
    return order;
  }
}
