package endfloat.working;

/** A line whose kinds do not agree. */
final class KindException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient LineProblem problem;

  KindException(Span span, String message, String wayOut) {
    super(message, null, false, false);
    problem = LineProblem.error(span, message, wayOut);
  }

  LineProblem problem() {
    return problem;
  }
}
