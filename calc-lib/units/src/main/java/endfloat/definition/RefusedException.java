package endfloat.definition;

/**
 * A calculation says no, in the trade's words: what is wrong and what to do. The message stands
 * alone in a report.
 */
public class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RefusedException(String message) {
    super(message);
  }
}
