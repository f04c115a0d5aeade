package endfloat.kernel;

import java.io.IOException;
import java.nio.file.Path;

/** A kernel for a client that is not Endfloat: the same child process, with its class path only. */
public final class KernelServed {
  private KernelServed() {}

  /**
   * Runs one until its client shuts it down.
   *
   * @return its exit code
   */
  public static int until(Path connectionFile, int megabytes) throws IOException {
    Process process = ChildCommand.of(megabytes, connectionFile).inheritIO().start();
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      return 1;
    }
  }
}
