package endfloat.kernel;

import endfloat.child.Connection;
import endfloat.child.ConnectionFile;
import endfloat.child.SignedSocket;
import endfloat.child.Wire;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishStatus;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.InterruptRequest;
import io.github.spencerpark.jupyter.messages.request.KernelInfoRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** A kernel in its process, and the sockets to it. One thread at a time. */
final class KernelProcess implements AutoCloseable {
  private static final long READY_NANOS = TimeUnit.SECONDS.toNanos(60);
  private static final int LOOK_MILLISECONDS = 25;
  private static final long OBEYS_NANOS = TimeUnit.MILLISECONDS.toNanos(400);

  private final Process process;
  private final ZContext context = new ZContext();
  private final SignedSocket shell;
  private final SignedSocket control;
  private final SignedSocket published;
  private final Pulse pulse;

  private KernelProcess(KernelLimits limits, Path file, Connection connection) throws IOException {
    this.process =
        ChildCommand.of(limits.megabytes(), file)
            .redirectInput(ProcessBuilder.Redirect.PIPE)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    KernelConnectionProperties ends = connection.ends();
    this.shell = connection.connected(context, SocketType.DEALER, ends.getShellPort());
    this.control = connection.connected(context, SocketType.DEALER, ends.getControlPort());
    this.published = connection.connected(context, SocketType.SUB, ends.getIopubPort());
    published.subscribe();
    this.pulse = new Pulse(context, connection);
  }

  /**
   * Starts one and waits until it answers. The file with its key is gone by then.
   *
   * @throws KernelException if it cannot be started
   */
  static KernelProcess start(KernelLimits limits) {
    KernelException last = null;
    // A free port may be taken by another program before the child binds it.
    for (int i = 0; i < 3; i++) {
      try {
        return once(limits);
      } catch (KernelException e) {
        last = e;
      }
    }
    throw last;
  }

  private static KernelProcess once(KernelLimits limits) {
    Path folder = null;
    try {
      folder = Files.createTempDirectory("endfloat-kernel");
      Path file = folder.resolve("connection.json");
      Connection connection = ConnectionFile.fresh();
      ConnectionFile.write(connection, file);
      KernelProcess kernel = new KernelProcess(limits, file, connection);
      try {
        kernel.awaitReady();
      } catch (RuntimeException e) {
        kernel.close();
        throw e;
      }
      return kernel;
    } catch (IOException e) {
      throw new KernelException("The process that runs Java cannot be started.", e);
    } finally {
      delete(folder);
    }
  }

  private static void delete(Path folder) {
    try {
      if (folder != null) {
        Files.deleteIfExists(folder.resolve("connection.json"));
        Files.deleteIfExists(folder);
      }
    } catch (IOException e) {
      // It is readable by its owner only, and its key dies with the process.
    }
  }

  /** A subscription takes its time to arrive, so it is asked until something is heard of it. */
  private void awaitReady() {
    long end = System.nanoTime() + READY_NANOS;
    try (ZMQ.Poller poller = context.createPoller(1)) {
      poller.register(published.socket(), ZMQ.Poller.POLLIN);
      while (System.nanoTime() < end && process.isAlive()) {
        shell.send(
            new Message<>(new Header<>(MessageType.KERNEL_INFO_REQUEST), new KernelInfoRequest()));
        if (poller.poll(LOOK_MILLISECONDS) > 0) {
          return;
        }
      }
    }
    throw new KernelException("The process that runs Java does not answer.", null);
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /** Ends it from any thread; the sockets stay to whoever holds them. */
  void kill() {
    process.destroyForcibly();
  }

  long pid() {
    return process.pid();
  }

  /** How an execution ended. */
  enum End {
    REPLIED,
    /** It was told to stop, and did or was ended. */
    STOPPED,
    TOO_LONG,
    DIED,
    /** It was dying when it was asked, and has not taken the request up. */
    NOT_BEGUN,
    /** It lived and no longer answered. */
    HUNG
  }

  /**
   * Runs code and hands on everything that is heard of it.
   *
   * @param heard takes what is published and the reply
   * @param goOn asked forty times a second; its no ends the run
   */
  End execute(
      String code,
      Map<String, Object> metadata,
      int seconds,
      Consumer<Message<?>> heard,
      BooleanSupplier goOn) {
    Message<ExecuteRequest> request =
        new Message<>(
            new Header<>(MessageType.EXECUTE_REQUEST),
            new ExecuteRequest(code, false, false, Map.of(), false, true),
            metadata,
            null);
    shell.send(request);
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    Hearing hearing = new Hearing(request, heard);
    pulse.begin();
    while (!hearing.isOver()) {
      boolean silent = !hearing.once(LOOK_MILLISECONDS);
      if (hearing.isOver()) {
        break;
      }
      if (!process.isAlive()) {
        return hearing.hasBegun() ? End.DIED : End.NOT_BEGUN;
      }
      if (pulse.isLost(silent)) {
        process.destroyForcibly();
        return End.HUNG;
      }
      boolean late = System.nanoTime() > end;
      if (late || !goOn.getAsBoolean()) {
        stop(hearing);
        return late ? End.TOO_LONG : End.STOPPED;
      }
    }
    return End.REPLIED;
  }

  /** Asks it to stop; ends the process where it does not. */
  private void stop(Hearing hearing) {
    control.send(
        new Message<>(new Header<>(MessageType.INTERRUPT_REQUEST), new InterruptRequest()));
    long end = System.nanoTime() + OBEYS_NANOS;
    while (!hearing.isOver() && System.nanoTime() < end && process.isAlive()) {
      hearing.once(LOOK_MILLISECONDS);
    }
    if (!hearing.isOver()) {
      process.destroyForcibly();
    }
  }

  /** Asks something short and waits for its reply; null where none comes. */
  <T> Message<?> ask(MessageType<T> type, T content, int milliseconds) {
    Message<T> request = new Message<>(new Header<>(type), content);
    shell.send(request);
    Message<?>[] reply = {null};
    Hearing hearing =
        new Hearing(
            request,
            message -> {
              if (message.getHeader().getType().getName().endsWith("_reply")) {
                reply[0] = message;
              }
            });
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
    while (reply[0] == null && System.nanoTime() < end && process.isAlive()) {
      hearing.once(LOOK_MILLISECONDS);
    }
    return reply[0];
  }

  /** Its exit code once it has ended; -1 while it lives. */
  int exit() {
    try {
      return process.waitFor(1, TimeUnit.SECONDS) ? process.exitValue() : -1;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
    context.close();
  }

  /** Listens for what belongs to one request, until its reply and its idle are there. */
  private final class Hearing {
    private final String id;
    private final Consumer<Message<?>> heard;
    private boolean begun;
    private boolean replied;
    private boolean idle;

    Hearing(Message<?> request, Consumer<Message<?>> heard) {
      this.id = request.getHeader().getId();
      this.heard = heard;
    }

    boolean isOver() {
      return replied && idle;
    }

    boolean hasBegun() {
      return begun;
    }

    /** Whether anything was heard. */
    boolean once(int milliseconds) {
      try (ZMQ.Poller poller = context.createPoller(2)) {
        poller.register(published.socket(), ZMQ.Poller.POLLIN);
        poller.register(shell.socket(), ZMQ.Poller.POLLIN);
        if (poller.poll(milliseconds) <= 0) {
          return false;
        }
        if (poller.pollin(0)) {
          take(published);
        }
        if (poller.pollin(1)) {
          take(shell);
        }
        return true;
      }
    }

    private void take(SignedSocket socket) {
      Message<?> message;
      try {
        message = socket.receive();
      } catch (Wire.RefusedMessageException e) {
        return;
      }
      if (!message.hasParentHeader() || !id.equals(message.getParentHeader().getId())) {
        return;
      }
      begun = true;
      heard.accept(message);
      replied |= message.getHeader().getType().getName().endsWith("_reply");
      idle |=
          message.getContent() instanceof PublishStatus status
              && status.getState() == PublishStatus.State.IDLE;
    }
  }
}
