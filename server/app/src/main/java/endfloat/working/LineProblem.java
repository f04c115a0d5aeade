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
    if (text.isEmpty()) {
      return text;
    }
    String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? begun : begun + ".";
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
