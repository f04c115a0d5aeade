package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.working.Span;

/** What may take too long for an edit. */
interface SlowTerm {
  Span span();

  /** What it is, in words, behind an article: {@code calculation thin_plate}. */
  String called();

  /** Whether another process does the work, so that it needs no thread of those for heavy work. */
  default boolean runsElsewhere() {
    return false;
  }

  /**
   * Its value, in any thread.
   *
   * @param values that it rests on
   * @param identity what it is known by
   * @param frame what holds for the record
   * @throws LineFailure if it has none
   */
  Value run(Value[] values, String identity, Frame frame, Progress progress);
}
