package endfloat.units;

/** A unit or a number in a unit that cannot be read, with what to do about it. */
public final class UnitException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String wayOut;

  public UnitException(String message, String wayOut) {
    super(message);
    this.wayOut = wayOut;
  }

  public String wayOut() {
    return wayOut;
  }
}
