package endfloat.engine;

import endfloat.working.LineProblem;
import endfloat.working.Span;

/** A line has no value, for the reason that the problem gives in words. */
final class LineFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient LineProblem problem;
  private final Figure.State state;
  private transient java.util.List<LineProblem> further = java.util.List.of();

  LineFailure(Span span, String message, String wayOut) {
    this(LineProblem.error(span, message, wayOut));
  }

  LineFailure(LineProblem problem) {
    this(problem, Figure.State.ERROR);
  }

  private LineFailure(LineProblem problem, Figure.State state) {
    super(problem.message(), null, false, false);
    this.problem = problem;
    this.state = state;
  }

  /** Nothing is wrong, only something still to be done. */
  static LineFailure notYet(Span span, String message, String wayOut) {
    return new LineFailure(
        new LineProblem(span, message, wayOut, LineProblem.Severity.HINT), Figure.State.WAITING);
  }

  /** It takes its time. */
  static LineFailure working(LineProblem hint) {
    return new LineFailure(hint, Figure.State.WORKING);
  }

  /** The same with more that is wrong. */
  LineFailure with(java.util.List<LineProblem> others) {
    further = java.util.List.copyOf(others);
    return this;
  }

  /** What else is wrong. */
  java.util.List<LineProblem> further() {
    return further;
  }

  /** What the line is in. */
  Figure.State state() {
    return state;
  }

  LineProblem problem() {
    return problem;
  }
}
