package endfloat.kernel;

import endfloat.child.Child;
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
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-XX:+UseSerialGC",
                "-Dslf4j.internal.verbosity=ERROR",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-cp",
                ChildClassPath.text(),
                Child.class.getName(),
                connectionFile.toAbsolutePath().toString(),
                Long.toString(ProcessHandle.current().pid()))
            .inheritIO()
            .start();
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      return 1;
    }
  }
}
