package endfloat.kernel;

import endfloat.child.Child;
import java.nio.file.Path;

/** How the process of a kernel is started. It ends with this one. */
final class ChildCommand {
  private ChildCommand() {}

  /**
   * Loops keep their polls, so that its heartbeat goes on beside a long one that counts.
   *
   * @param file its connection file
   */
  static ProcessBuilder of(int megabytes, Path file) {
    return new ProcessBuilder(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-Xmx" + megabytes + "m",
        "-Xshare:auto",
        "-XX:+UseSerialGC",
        "-XX:+UseCountedLoopSafepoints",
        "-XX:LoopStripMiningIter=1000",
        "-XX:+ExitOnOutOfMemoryError",
        "-XX:-UsePerfData",
        "-Djava.awt.headless=true",
        "-Dslf4j.internal.verbosity=ERROR",
        "-Dfile.encoding=UTF-8",
        "-cp",
        ChildClassPath.text(),
        Child.class.getName(),
        file.toAbsolutePath().toString(),
        Long.toString(ProcessHandle.current().pid()));
  }
}
