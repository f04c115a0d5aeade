package endfloat.record;

/** An edit cannot be made; the record is as it was. */
public class EditRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String wayOut;

  public EditRefusedException(String message, String wayOut) {
    super(message);
    this.wayOut = wayOut;
  }

  /** What to do about it, a sentence. */
  public String wayOut() {
    return wayOut;
  }
}
