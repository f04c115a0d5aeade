package endfloat.kernel;

/** A kernel cannot be started or has ended. */
final class KernelException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  KernelException(String message, Throwable cause) {
    super(message, cause);
  }
}
