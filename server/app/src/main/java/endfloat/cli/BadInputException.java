package endfloat.cli;

/** A command cannot use what it was given: what is wrong, and what to do. */
final class BadInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String wayOut;

  BadInputException(String message, String wayOut) {
    super(message);
    this.wayOut = wayOut;
  }

  String wayOut() {
    return wayOut;
  }
}
