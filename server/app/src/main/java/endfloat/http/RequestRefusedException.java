package endfloat.http;

/**
 * A request that is not carried out: what is wrong and what to do, with the status that says so.
 */
final class RequestRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final String wayOut;

  /**
   * @param status of HTTP, 400 to 499
   * @param message what is wrong, a sentence
   * @param wayOut what to do, a sentence
   */
  RequestRefusedException(int status, String message, String wayOut) {
    super(message);
    this.status = status;
    this.wayOut = wayOut;
  }

  int status() {
    return status;
  }

  String wayOut() {
    return wayOut;
  }
}
