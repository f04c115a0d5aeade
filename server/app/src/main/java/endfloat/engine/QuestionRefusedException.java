package endfloat.engine;

import endfloat.working.LineProblem;

/** A question that the record cannot answer, for the reason that the problem gives in words. */
public final class QuestionRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final transient LineProblem problem;

  QuestionRefusedException(String field, LineProblem problem) {
    super(problem.message(), null, false, false);
    this.field = field;
    this.problem = problem;
  }

  /** JSON Pointer to what was entered. */
  public String field() {
    return field;
  }

  public LineProblem problem() {
    return problem;
  }
}
