package endfloat.child;

import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Message;
import java.util.ArrayList;
import java.util.List;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * A socket that sends and takes signed messages. Receiving belongs to one thread; sending may come
 * from several, one at a time.
 */
public final class SignedSocket implements AutoCloseable {
  private static final int RECONNECT_MILLISECONDS = 5;

  private final ZMQ.Socket socket;
  private final HMACGenerator signer;

  SignedSocket(ZContext context, SocketType type, HMACGenerator signer) {
    this.socket = context.createSocket(type);
    this.signer = signer;
    socket.setLinger(0);
    socket.setReconnectIVL(RECONNECT_MILLISECONDS);
  }

  public void subscribe() {
    socket.subscribe(ZMQ.SUBSCRIPTION_ALL);
  }

  /** For a poller. */
  public ZMQ.Socket socket() {
    return socket;
  }

  /** Whether a message waits. */
  boolean hasMore() {
    return (socket.getEvents() & ZMQ.Poller.POLLIN) != 0;
  }

  /**
   * The next message, whole.
   *
   * @throws Wire.RefusedMessageException if it is not to be trusted or read; the socket goes on
   */
  public Message<?> receive() throws Wire.RefusedMessageException {
    List<byte[]> frames = new ArrayList<>();
    do {
      frames.add(socket.recv());
    } while (socket.hasReceiveMore());
    return Wire.message(frames, signer);
  }

  public void send(Message<?> message) {
    List<byte[]> frames = Wire.frames(message, signer);
    synchronized (this) {
      for (int i = 0; i < frames.size() - 1; i++) {
        socket.sendMore(frames.get(i));
      }
      socket.send(frames.get(frames.size() - 1));
    }
  }

  @Override
  public void close() {
    socket.close();
  }
}
