package endfloat.engine;

import endfloat.record.Reading;
import java.util.List;

/** A clause of a record as the graph takes it: one that gives values. */
public sealed interface Clause {
  /** Never shown, never changed. */
  String id();

  /** As people cite it, such as {@code 2.1}; may be empty. */
  String label();

  /** Lines of the working language. */
  record Working(String id, String label, String text) implements Clause {}

  /** Values and limits that are entered by fields: a schedule of fits, a board of causes. */
  record Fields(String id, String label, List<FieldLine> lines) implements Clause {}

  /** Rows and columns. */
  record Table(String id, String label, List<TablePart> parts) implements Clause {}

  /**
   * Source in Java, run by a {@link CellRunner}.
   *
   * @param gives its head, as typed
   */
  record Java(String id, String label, String gives, String text) implements Clause {}

  /** Measured quantities. */
  record Readings(String id, String label, List<Reading> readings) implements Clause {}
}
