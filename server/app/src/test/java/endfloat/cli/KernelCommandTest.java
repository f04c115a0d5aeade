package endfloat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.child.Connection;
import endfloat.child.ConnectionFile;
import endfloat.child.SignedSocket;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteResult;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.KernelInfoRequest;
import io.github.spencerpark.jupyter.messages.request.ShutdownRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** The kernel as another client of the protocol starts it: by a connection file of its own. */
class KernelCommandTest {
  private static final int LOOK_MILLISECONDS = 100;

  @TempDir Path folder;

  /** Growth of 200 mm of steel by 40 K at 11.5e-6 1/K: 0.092 mm, worked by hand. */
  @Test
  @Timeout(value = 2, unit = TimeUnit.MINUTES)
  void anotherClientCalculatesWithTheLibrary() throws Exception {
    Path file = folder.resolve("connection.json");
    Connection connection = new Connection(ConnectionFile.fresh().ends(), Optional.empty());
    ConnectionFile.write(connection, file);
    CompletableFuture<Run> served =
        CompletableFuture.supplyAsync(
            () -> Run.of("", "kernel", "--connection-file", file.toString(), "--memory", "128"));
    try (ZContext context = new ZContext()) {
      SignedSocket shell =
          connection.connected(context, SocketType.DEALER, connection.ends().getShellPort());
      SignedSocket control =
          connection.connected(context, SocketType.DEALER, connection.ends().getControlPort());
      SignedSocket published =
          connection.connected(context, SocketType.SUB, connection.ends().getIopubPort());
      published.subscribe();
      untilItPublishes(context, shell, published);
      Message<ExecuteRequest> asked =
          new Message<>(
              new Header<>(MessageType.EXECUTE_REQUEST),
              new ExecuteRequest(
                  "Thermal.thermalGrowth(Measured.of(200, \"mm\", Length.class),"
                      + " Measured.of(11.5e-6, \"1/K\", Trade.Expansion.class),"
                      + " Measured.of(40, \"K\", Trade.TemperatureDifference.class)).in(\"mm\")",
                  false,
                  true,
                  Map.of(),
                  false,
                  true));
      shell.send(asked);
      Message<?> result;
      do {
        result = published.receive();
      } while (!(result.getContent() instanceof PublishExecuteResult));
      assertEquals(asked.getHeader().getId(), result.getParentHeader().getId());
      String text =
          ((PublishExecuteResult) result.getContent()).getData(MIMEType.TEXT_PLAIN).toString();
      assertEquals(0.092, Double.parseDouble(text), 1e-12);
      control.send(
          new Message<>(new Header<>(MessageType.SHUTDOWN_REQUEST), ShutdownRequest.SHUTDOWN));
    }
    assertEquals(0, served.get(1, TimeUnit.MINUTES).code());
  }

  /** A subscription takes its time to arrive, so it is asked until something is heard. */
  private static void untilItPublishes(
      ZContext context, SignedSocket shell, SignedSocket published) {
    try (ZMQ.Poller poller = context.createPoller(1)) {
      poller.register(published.socket(), ZMQ.Poller.POLLIN);
      do {
        shell.send(
            new Message<>(new Header<>(MessageType.KERNEL_INFO_REQUEST), new KernelInfoRequest()));
      } while (poller.poll(LOOK_MILLISECONDS) <= 0);
    }
  }

  @Test
  void aFileThatIsNoneIsRefusedWithItsWayOut() throws Exception {
    Run none = Run.of("", "kernel", "--connection-file", folder.resolve("none").toString());
    assertEquals(2, none.code());
    assertTrue(none.err().contains("There is no file"), none.err());
    Path empty = Files.writeString(folder.resolve("empty.json"), "{}");
    Run bad = Run.of("", "kernel", "--connection-file", empty.toString());
    assertEquals(2, bad.code());
    assertTrue(bad.err().contains("has no key"), bad.err());
    Run small = Run.of("", "kernel", "--connection-file", empty.toString(), "--memory", "8");
    assertEquals(2, small.code());
    assertTrue(small.err().contains("at least 1 s and 64 MB"), small.err());
  }
}
