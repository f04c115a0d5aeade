package endfloat.engine;

import endfloat.working.LineProblem;
import endfloat.working.Span;

/** Spans of a line, counted from the first line of its clause. */
final class Places {
  private Places() {}

  static Span moved(Span span, int lines) {
    return lines == 0 ? span : new Span(span.line() + lines, span.from(), span.to());
  }

  static LineProblem moved(LineProblem problem, int lines) {
    return lines == 0
        ? problem
        : new LineProblem(
            moved(problem.span(), lines), problem.message(), problem.wayOut(), problem.severity());
  }

  /** {@code clause 2.1 line 3}. */
  static String words(String label, int line) {
    return label.isEmpty() ? "line " + line : "clause " + label + " line " + line;
  }
}
