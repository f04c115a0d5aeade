package endfloat.cli;

import endfloat.child.ConnectionFile;
import endfloat.kernel.KernelLimits;
import endfloat.kernel.KernelServed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code endfloat kernel --connection-file FILE}: Java for any client of the kernel protocol. */
@Command(
    name = "kernel",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Serves Java with the calculation library over the open kernel message protocol.")
final class KernelCommand implements Callable<Integer> {
  @Option(
      names = "--connection-file",
      required = true,
      paramLabel = "FILE",
      description = "Ports and key, written by the client.")
  private Path file;

  @Option(
      names = "--memory",
      paramLabel = "MB",
      description = "Memory of the process (default: 512).")
  private int megabytes = KernelLimits.USUAL.megabytes();

  @Override
  public Integer call() {
    if (!Files.isReadable(file)) {
      throw new BadInputException("There is no file " + file + ".", "Check the name.");
    }
    ServeOptions.limits(KernelLimits.USUAL.seconds(), megabytes);
    try {
      ConnectionFile.read(file);
      return KernelServed.until(file, megabytes) == 0 ? Exit.DONE : Exit.BAD_INPUT;
    } catch (IOException e) {
      throw new BadInputException(
          "The kernel cannot be started: " + e.getMessage(), "See that a JDK runs Endfloat.");
    }
  }
}
