package endfloat.http.view;

/** An order or choice of rows that cannot be made; says why and what to do. */
public final class RefusedOrderException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String wayOut;

  RefusedOrderException(String message, String wayOut) {
    super(message, null, false, false);
    this.wayOut = wayOut;
  }

  public String wayOut() {
    return wayOut;
  }
}
