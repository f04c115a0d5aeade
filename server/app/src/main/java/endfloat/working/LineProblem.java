package endfloat.working;

/**
 * What is wrong with a line, in the trade's words.
 *
 * @param span where
 * @param message what is wrong, a sentence
 * @param wayOut what to do, a sentence; never a formula that the units merely allow
 * @param severity an ERROR leaves the line without a result; a HINT does not
 */
public record LineProblem(Span span, String message, String wayOut, Severity severity) {

  public LineProblem {
    message = sentence(message);
    wayOut = sentence(wayOut);
  }

  private static String sentence(String text) {
    return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
  }

  /** How much it matters. */
  public enum Severity {
    ERROR,
    WARNING,
    HINT
  }

  public static LineProblem error(Span span, String message, String wayOut) {
    return new LineProblem(span, message, wayOut, Severity.ERROR);
  }
}
