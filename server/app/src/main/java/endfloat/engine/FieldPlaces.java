package endfloat.engine;

import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.List;

/**
 * Which columns of a line belong to which field of its clause.
 *
 * @param shown what the user entered, for those who cite the line
 */
record FieldPlaces(String shown, List<Stretch> stretches) {

  /**
   * Columns that came from one field.
   *
   * @param at JSON Pointer
   * @param from first column, counted from 1
   * @param to column after the last
   */
  record Stretch(String at, int from, int to) {}

  /** The field that a place lies in; the last before it where it lies in none. */
  private Stretch stretch(Span span) {
    Stretch found = stretches.get(0);
    for (Stretch one : stretches) {
      if (one.from() <= span.from()) {
        found = one;
      }
    }
    return found;
  }

  String at(LineProblem problem) {
    return stretch(problem.span()).at();
  }

  /** The same with columns counted from the start of the field. */
  LineProblem inField(LineProblem problem) {
    Stretch field = stretch(problem.span());
    int most = field.to() - field.from() + 1;
    int from = Math.max(1, Math.min(most, problem.span().from() - field.from() + 1));
    int to = Math.max(from, Math.min(most, problem.span().to() - field.from() + 1));
    return new LineProblem(
        new Span(1, from, to), problem.message(), problem.wayOut(), problem.severity());
  }
}
