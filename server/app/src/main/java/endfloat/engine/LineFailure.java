package endfloat.engine;

import endfloat.working.LineProblem;
import endfloat.working.Span;

/** A line has no value, for the reason that the problem gives in words. */
final class LineFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient LineProblem problem;
  private final boolean notYet;

  LineFailure(Span span, String message, String wayOut) {
    this(LineProblem.error(span, message, wayOut));
  }

  LineFailure(LineProblem problem) {
    this(problem, false);
  }

  private LineFailure(LineProblem problem, boolean notYet) {
    super(problem.message(), null, false, false);
    this.problem = problem;
    this.notYet = notYet;
  }

  /** Nothing is wrong, only something still to be done. */
  static LineFailure notYet(Span span, String message, String wayOut) {
    return new LineFailure(new LineProblem(span, message, wayOut, LineProblem.Severity.HINT), true);
  }

  boolean isNotYet() {
    return notYet;
  }

  LineProblem problem() {
    return problem;
  }
}
