package endfloat.report.pdf;

/** Whether what is being made is still wanted; asked again and again while it is made. */
@FunctionalInterface
public interface Stop {
  /** Nobody stops it. */
  Stop NEVER = () -> false;

  boolean isAsked();

  /** It was not wanted any more. */
  final class StoppedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public StoppedException() {
      super("stopped, because it is not wanted any more");
    }
  }

  /** Ends the work where a stop is asked. */
  default void check() {
    if (isAsked()) {
      throw new StoppedException();
    }
  }
}
