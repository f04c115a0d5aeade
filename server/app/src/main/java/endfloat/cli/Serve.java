package endfloat.cli;

import endfloat.http.MachineState;
import endfloat.http.Server;
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

  /** Serves until the process is told to end. */
  static int serve(ServeOptions options, Streams streams) {
    String token = MachineState.ofUser().token();
    Server server =
        Server.start(new Server.Settings(options.host, options.port, token, options.allowed));
    streams.out().println("Endfloat serves your records at");
    streams.out().println("  " + server.link());
    streams.out().println("Ctrl-C ends it.");
    streams.out().flush();
    Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
    if (!options.noBrowser) {
      BrowserWindow.open(server.link());
    }
    waitForEver();
    return Exit.DONE;
  }

  private static void waitForEver() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
