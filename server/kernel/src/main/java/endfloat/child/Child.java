package endfloat.child;

import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.zeromq.SocketType;
import org.zeromq.ZContext;

/**
 * A kernel: {@code Child CONNECTION-FILE [PARENT-PID]}. Serves the protocol until it is told to
 * shut down or its parent ends.
 */
public final class Child {
  /** The real standard error; {@link System#err} becomes a stream of the protocol. */
  private static final PrintStream LOG =
      new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);

  private Child() {}

  public static void main(String[] arguments) {
    if (arguments.length < 1) {
      LOG.println("a kernel needs a connection file");
      System.exit(2);
    }
    try {
      if (arguments.length > 1) {
        dieWith(Long.parseLong(arguments[1]));
      }
      serve(ConnectionFile.read(Path.of(arguments[0])));
    } catch (IOException | RuntimeException e) {
      LOG.println("the kernel cannot start: " + e.getMessage());
      System.exit(2);
    }
  }

  /** Binds all five sockets and starts their threads; they keep the process alive. */
  private static void serve(Connection connection) {
    KernelConnectionProperties ends = connection.ends();
    ZContext context = new ZContext();
    SignedSocket published = connection.bound(context, SocketType.PUB, ends.getIopubPort());
    SignedSocket shell = connection.bound(context, SocketType.ROUTER, ends.getShellPort());
    SignedSocket control = connection.bound(context, SocketType.ROUTER, ends.getControlPort());
    // Bound because the protocol has it; nothing is ever asked over it.
    connection.bound(context, SocketType.ROUTER, ends.getStdinPort());
    Outputs outputs = new Outputs(published);
    CapturedStreams streams = new CapturedStreams(outputs);
    streams.install();
    Execution execution = new Execution(outputs, streams);
    Heartbeat.start(context, connection);
    new RequestLoop("control", context, control, new Requests(control, outputs, execution)::take)
        .start();
    new RequestLoop("shell", context, shell, new Requests(shell, outputs, execution)::take).start();
  }

  private static void dieWith(long parent) {
    ProcessHandle process = ProcessHandle.of(parent).orElse(null);
    if (process == null) {
      Runtime.getRuntime().halt(0);
      return;
    }
    Thread watch =
        new Thread(
            () -> {
              process.onExit().join();
              Runtime.getRuntime().halt(0);
            },
            "parent");
    watch.setDaemon(true);
    watch.start();
  }

  static void log(String line) {
    LOG.println(line);
  }
}
