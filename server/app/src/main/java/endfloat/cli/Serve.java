package endfloat.cli;

import endfloat.engine.ProgramRunner;
import endfloat.http.MachineState;
import endfloat.http.Server;
import endfloat.http.ShelfClaim;
import endfloat.kernel.JavaOnDemand;
import endfloat.record.Shelf;
import java.net.BindException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code endfloat serve}: the shelf in the browser. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Serves your records and opens the shelf in the browser.")
final class Serve implements Callable<Integer> {
  private final Streams streams;
  @Mixin private ServeOptions options = new ServeOptions();

  Serve(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    return serve(options, streams);
  }

  /** Serves until the process is told to end; where the shelf is served already, leads there. */
  static int serve(ServeOptions options, Streams streams) {
    Shelf shelf = Shelf.open(options.shelf());
    String token = MachineState.ofUser().token();
    Optional<ShelfClaim> claim = ShelfClaim.claim(shelf.folder());
    if (claim.isEmpty()) {
      return handOver(shelf, token, options, streams);
    }
    String notebooks = System.getProperty("endfloat.notebooks", "");
    if (!notebooks.isEmpty()) {
      shelf.seedFrom(Path.of(notebooks));
    }
    JavaOnDemand java = new JavaOnDemand(MachineState.ofUser().folder(), options.limits(), true);
    ProgramRunner.set(java);
    Server server = start(shelf, token, options);
    claim.get().servedAt(server.port());
    Runtime.getRuntime()
        .addShutdownHook(
            new Thread(
                () -> {
                  server.close();
                  java.close();
                  claim.get().close();
                },
                "stop"));
    streams.out().println("Endfloat serves the records in " + shelf.folder() + " at");
    streams.out().println("  " + server.link());
    streams.out().println("Ctrl-C ends it.");
    streams.out().flush();
    show(options, server.link());
    waitForEver();
    return Exit.DONE;
  }

  private static Server start(Shelf shelf, String token, ServeOptions options) {
    try {
      return Server.start(
          shelf, new Server.Settings(options.host, options.port, token, options.allowed));
    } catch (RuntimeException e) {
      for (Throwable cause = e; cause != null; cause = cause.getCause()) {
        if (cause instanceof BindException) {
          throw new BadInputException(
              "Port " + options.port + " of " + options.host + " is taken or not allowed.",
              "Give another with --port, or --port 0 for any free one.");
        }
      }
      throw e;
    }
  }

  private static int handOver(Shelf shelf, String token, ServeOptions options, Streams streams) {
    Optional<Integer> port = ShelfClaim.awaitPort(shelf.folder());
    if (port.isEmpty()) {
      throw new BadInputException(
          "The shelf " + shelf.folder() + " is held by another endfloat that does not answer.",
          "End that process, or serve another folder with --shelf.");
    }
    String link = Server.link(port.get(), token);
    streams.out().println("Endfloat serves the records in " + shelf.folder() + " already, at");
    streams.out().println("  " + link);
    show(options, link);
    return Exit.DONE;
  }

  private static void show(ServeOptions options, String link) {
    if (!options.noBrowser) {
      BrowserWindow.open(link);
    }
  }

  private static void waitForEver() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
