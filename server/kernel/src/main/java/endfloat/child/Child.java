package endfloat.child;

import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
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
    } catch (IOException | GeneralSecurityException | RuntimeException e) {
      LOG.println("the kernel cannot start: " + e.getMessage());
      System.exit(2);
    }
  }

  /** Binds all five sockets and starts their threads; they keep the process alive. */
  private static void serve(KernelConnectionProperties connection) throws GeneralSecurityException {
    HMACGenerator signer = connection.createHMACGenerator();
    ZContext context = new ZContext();
    SignedSocket published =
        bound(context, SocketType.PUB, signer, connection, connection.getIopubPort());
    SignedSocket shell =
        bound(context, SocketType.ROUTER, signer, connection, connection.getShellPort());
    SignedSocket control =
        bound(context, SocketType.ROUTER, signer, connection, connection.getControlPort());
    // Bound because the protocol has it; nothing is ever asked over it.
    bound(context, SocketType.ROUTER, signer, connection, connection.getStdinPort());
    Outputs outputs = new Outputs(published);
    CapturedStreams streams = new CapturedStreams(outputs);
    streams.install();
    Execution execution = new Execution(outputs, streams);
    Heartbeat.start(context, ConnectionFile.address(connection, connection.getHbPort()));
    new RequestLoop("control", context, control, new Requests(control, outputs, execution)::take)
        .start();
    new RequestLoop("shell", context, shell, new Requests(shell, outputs, execution)::take).start();
  }

  private static SignedSocket bound(
      ZContext context,
      SocketType type,
      HMACGenerator signer,
      KernelConnectionProperties connection,
      int port) {
    SignedSocket socket = new SignedSocket(context, type, signer);
    socket.bind(ConnectionFile.address(connection, port));
    return socket;
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
