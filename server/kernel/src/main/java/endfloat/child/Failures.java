package endfloat.child;

/** Exceptions of a clause, in words and at their line. */
final class Failures {
  private Failures() {}

  static Problem problem(Throwable thrown) {
    int line = line(thrown);
    return line == 0
        ? new Problem(1, 1, 1, sentence(thrown), "")
        : new Problem(line, 1, 0, sentence(thrown), "");
  }

  /** The innermost line of the clause's own; 0 where it has none. */
  private static int line(Throwable thrown) {
    for (StackTraceElement frame : thrown.getStackTrace()) {
      String name = frame.getClassName();
      if (name.equals(ClauseText.CLASS) || name.startsWith(ClauseText.CLASS + "$")) {
        return Math.max(1, frame.getLineNumber() - ClauseText.HEAD_LINES);
      }
    }
    return 0;
  }

  private static String sentence(Throwable thrown) {
    String said = thrown.getMessage() == null ? "" : thrown.getMessage();
    if (thrown instanceof GivenValues.NotGivenException) {
      return said;
    }
    if (thrown instanceof NullPointerException) {
      return "A value is used here that was never set"
          + (said.isEmpty() ? "." : " (" + said + ").");
    }
    if (thrown instanceof IndexOutOfBoundsException) {
      return "A place is asked for that the list does not have"
          + (said.isEmpty() ? "." : " (" + said + ").");
    }
    if (thrown instanceof StackOverflowError) {
      return "A method calls itself without end.";
    }
    if (thrown instanceof ClassCastException) {
      return "A value is of another kind than it is taken for" + " (" + said + ").";
    }
    if (thrown instanceof NumberFormatException) {
      return "A text is taken for a number that is none (" + said + ").";
    }
    if (thrown instanceof ArithmeticException) {
      return "The arithmetic has no result here (" + said + ").";
    }
    boolean plain =
        thrown instanceof IllegalArgumentException || thrown instanceof IllegalStateException;
    if (!said.isEmpty() && (plain || thrown.getClass().getName().startsWith("endfloat."))) {
      return said;
    }
    return thrown.getClass().getSimpleName() + (said.isEmpty() ? " was thrown." : ": " + said);
  }
}
