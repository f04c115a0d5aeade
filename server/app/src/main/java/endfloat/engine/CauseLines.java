package endfloat.engine;

import endfloat.engine.FieldLine.Entered;
import endfloat.record.CauseBoard;
import endfloat.record.Cell;
import java.util.ArrayList;
import java.util.List;

/** What the causes of a board add, the size needed and what is left unexplained, as values. */
final class CauseLines {
  private CauseLines() {}

  static String observed(String clause) {
    return clause + ".observed";
  }

  static String needed(String clause) {
    return clause + ".needed";
  }

  static String remainder(String clause) {
    return clause + ".unexplained";
  }

  static String contribution(String clause, CauseBoard.Cause cause) {
    return clause + ".adds." + cause.key();
  }

  static List<FieldLine> of(Cell cell) {
    CauseBoard board = cell.causes();
    String id = cell.id();
    List<FieldLine> lines = new ArrayList<>();
    Entered unit = new Entered("/unit", board.unit());
    boolean hasNeeded = !board.needed().isBlank();
    if (!board.observed().isBlank()) {
      lines.add(
          new FieldLine.Stated(
              observed(id), "effect observed", unit, new Entered("/observed", board.observed())));
    }
    if (hasNeeded) {
      lines.add(
          new FieldLine.Stated(
              needed(id), "size needed", unit, new Entered("/needed", board.needed())));
    }
    List<String> explained = new ArrayList<>();
    for (int i = 0; i < board.causes().size(); i++) {
      CauseBoard.Cause cause = board.causes().get(i);
      if (cause.contribution().isBlank()) {
        continue;
      }
      String at = "/causes/" + i + "/contribution";
      String name = contribution(id, cause);
      String title = "what is added by: " + cause.name();
      lines.add(new FieldLine.Stated(name, title, unit, new Entered(at, cause.contribution())));
      if (hasNeeded) {
        lines.add(new FieldLine.Reaches(name, needed(id), at));
      }
      if (cause.isOpen()) {
        explained.add(name);
      }
    }
    if (!board.observed().isBlank() && !explained.isEmpty()) {
      lines.add(
          new FieldLine.Remainder(
              remainder(id), "remainder unexplained", unit, observed(id), explained));
    }
    return List.copyOf(lines);
  }
}
