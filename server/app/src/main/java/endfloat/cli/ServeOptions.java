package endfloat.cli;

import endfloat.kernel.KernelLimits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** What {@code serve} can be told. */
final class ServeOptions {
  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port to serve on; 0 takes any free one (default: 8117).")
  int port = 8117;

  @Option(
      names = "--host",
      paramLabel = "ADDRESS",
      description = "Address to listen on; by default this machine only.")
  String host = "127.0.0.1";

  @Option(
      names = "--allow-host",
      paramLabel = "NAME",
      description = "A further name, or origin with scheme, that browsers may use for this server.")
  List<String> allowed = new ArrayList<>();

  @Option(
      names = "--shelf",
      paramLabel = "DIR",
      description = "Folder of the records (default: Endfloat in your home folder).")
  Path shelf;

  @Option(
      names = "--java-time",
      paramLabel = "SECONDS",
      description = "How long a java clause may run (default: 60).")
  int javaSeconds = KernelLimits.USUAL.seconds();

  @Option(
      names = "--java-memory",
      paramLabel = "MB",
      description = "How much memory a java clause may hold (default: 512).")
  int javaMegabytes = KernelLimits.USUAL.megabytes();

  @Option(names = "--no-browser", description = "Only print the link.")
  boolean noBrowser;

  KernelLimits limits() {
    return limits(javaSeconds, javaMegabytes);
  }

  /**
   * @throws BadInputException if nothing can run in so little
   */
  static KernelLimits limits(int seconds, int megabytes) {
    if (seconds < 1 || megabytes < 64) {
      throw new BadInputException(
          "Java cannot do with " + seconds + " s and " + megabytes + " MB.",
          "Give at least 1 s and 64 MB.");
    }
    return new KernelLimits(seconds, megabytes);
  }

  Path shelf() {
    return shelf != null ? shelf : Path.of(System.getProperty("user.home"), "Endfloat");
  }
}
