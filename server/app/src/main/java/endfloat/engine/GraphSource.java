package endfloat.engine;

import endfloat.record.EnteredMaterial;
import endfloat.record.Instrument;
import java.util.List;

/**
 * All that figures come from. Clauses that did not change are best handed over as they were.
 *
 * @param materials of the record, before those of the library
 * @param date of the record, ISO 8601, by which an instrument is overdue; empty for none
 */
public record GraphSource(
    List<Clause> clauses,
    List<Instrument> instruments,
    List<EnteredMaterial> materials,
    GraphSettings settings,
    String date) {
  public static final GraphSource EMPTY =
      new GraphSource(List.of(), List.of(), GraphSettings.STANDARD);

  public GraphSource(List<Clause> clauses, List<Instrument> instruments, GraphSettings settings) {
    this(clauses, instruments, settings, "");
  }

  public GraphSource(
      List<Clause> clauses, List<Instrument> instruments, GraphSettings settings, String date) {
    this(clauses, instruments, List.of(), settings, date);
  }

  /** Workings alone, each its own clause. */
  public static GraphSource ofWorkings(String... texts) {
    List<Clause> clauses = new java.util.ArrayList<>();
    for (String text : texts) {
      String label = Integer.toString(clauses.size() + 1);
      clauses.add(new Clause.Working("w" + label, label, text));
    }
    return new GraphSource(clauses, List.of(), GraphSettings.STANDARD);
  }

  /** The same with one clause put in the place of the one of its id, or added at the end. */
  public GraphSource with(Clause clause) {
    List<Clause> others = new java.util.ArrayList<>(clauses);
    for (int i = 0; i < others.size(); i++) {
      if (others.get(i).id().equals(clause.id())) {
        others.set(i, clause);
        return new GraphSource(others, instruments, materials, settings, date);
      }
    }
    others.add(clause);
    return new GraphSource(others, instruments, materials, settings, date);
  }
}
