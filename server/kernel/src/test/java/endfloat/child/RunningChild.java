package endfloat.child;

import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishStatus;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.KernelInfoRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** A kernel in a process of its own, and sockets to it, as any client of the protocol has them. */
final class RunningChild implements AutoCloseable {
  private static final long PATIENCE_MILLISECONDS = 60_000;

  final Path file;
  final Connection connection;
  final Process process;
  final ZContext context = new ZContext();
  final SignedSocket shell;
  final SignedSocket control;
  final SignedSocket published;
  final ZMQ.Socket heartbeat;

  /** One like that of a server, sealed. */
  RunningChild(Path folder) throws Exception {
    this(folder, ConnectionFile.fresh());
  }

  RunningChild(Path folder, Connection connection) throws Exception {
    this(folder, connection, ProcessHandle.current().pid());
  }

  RunningChild(Path folder, Connection connection, long parent) throws Exception {
    this.connection = connection;
    file = Files.createTempDirectory(folder, "kernel").resolve("connection.json");
    ConnectionFile.write(connection, file);
    process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                Child.class.getName(),
                file.toString(),
                Long.toString(parent))
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    KernelConnectionProperties ends = connection.ends();
    shell = connection.connected(context, SocketType.DEALER, ends.getShellPort());
    control = connection.connected(context, SocketType.DEALER, ends.getControlPort());
    published = connection.connected(context, SocketType.SUB, ends.getIopubPort());
    published.subscribe();
    heartbeat = context.createSocket(SocketType.REQ);
    connection.connect(heartbeat, ends.getHbPort());
    untilItPublishes();
  }

  /** A subscription takes its time, so it is asked until something is heard. */
  private void untilItPublishes() throws Exception {
    long end = System.nanoTime() + PATIENCE_MILLISECONDS * 1_000_000;
    while (System.nanoTime() < end) {
      Message<?> asked = ask(shell, MessageType.KERNEL_INFO_REQUEST, new KernelInfoRequest());
      reply(shell, asked);
      ZMQ.Poller poller = context.createPoller(1);
      poller.register(published.socket(), ZMQ.Poller.POLLIN);
      if (poller.poll(200) > 0) {
        idle(asked);
        return;
      }
    }
    throw new AssertionError("the kernel publishes nothing");
  }

  <T> Message<T> ask(SignedSocket socket, MessageType<T> type, T content) {
    Message<T> message = new Message<>(new Header<>(type), content);
    socket.send(message);
    return message;
  }

  Message<?> execute(String code) {
    return execute(code, false, null);
  }

  Message<?> execute(String code, boolean silent, Map<String, Object> metadata) {
    ExecuteRequest request = new ExecuteRequest(code, silent, true, Map.of(), true, true);
    Message<ExecuteRequest> message =
        new Message<>(new Header<>(MessageType.EXECUTE_REQUEST), request, metadata, null);
    shell.send(message);
    return message;
  }

  /** The reply to a request. */
  Message<?> reply(SignedSocket socket, Message<?> request) throws Exception {
    return heard(socket, message -> isOf(request).test(message));
  }

  /** All that is published of a request, up to idle. */
  List<Message<?>> idle(Message<?> request) throws Exception {
    List<Message<?>> all = new ArrayList<>();
    Message<?> one;
    do {
      one = heard(published, isOf(request));
      all.add(one);
    } while (!(one.getContent() instanceof PublishStatus status
        && status.getState() == PublishStatus.State.IDLE));
    return all;
  }

  Message<?> heard(SignedSocket socket, Predicate<Message<?>> wanted) throws Exception {
    try (ZMQ.Poller poller = context.createPoller(1)) {
      poller.register(socket.socket(), ZMQ.Poller.POLLIN);
      long end = System.nanoTime() + PATIENCE_MILLISECONDS * 1_000_000;
      while (System.nanoTime() < end) {
        if (poller.poll(100) > 0) {
          Message<?> message = socket.receive();
          if (wanted.test(message)) {
            return message;
          }
        } else if (!process.isAlive()) {
          throw new AssertionError("the kernel has ended with " + process.exitValue());
        }
      }
    }
    throw new AssertionError("nothing was heard");
  }

  static Predicate<Message<?>> isOf(Message<?> request) {
    return message ->
        message.hasParentHeader()
            && message.getParentHeader().getId().equals(request.getHeader().getId());
  }

  /** Frames signed by another key. */
  void sendWithKey(String key, Message<?> message) throws Exception {
    List<byte[]> frames = Wire.frames(message, new HMACGenerator("HmacSHA256", key));
    for (int i = 0; i < frames.size(); i++) {
      if (i < frames.size() - 1) {
        shell.socket().sendMore(frames.get(i));
      } else {
        shell.socket().send(frames.get(i));
      }
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
    context.close();
  }
}
