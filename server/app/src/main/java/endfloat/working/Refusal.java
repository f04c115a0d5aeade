package endfloat.working;

/** Something in a line that cannot be read or checked, between two offsets of the working. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int from;
  private final int to;
  private final String wayOut;

  /**
   * @param from offset of its first letter
   * @param to offset after its last
   */
  Refusal(int from, int to, String message, String wayOut) {
    super(message, null, false, false);
    this.from = from;
    this.to = to;
    this.wayOut = wayOut;
  }

  int from() {
    return from;
  }

  int to() {
    return to;
  }

  String wayOut() {
    return wayOut;
  }
}
