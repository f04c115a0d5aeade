package endfloat.kernel;

import endfloat.child.Connection;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * Whether a kernel at work is well, by its heartbeat. Counted in looks, not in time: a machine that
 * was asleep has not lost its kernel.
 */
final class Pulse {
  /** Looks without a word of it, after which its heartbeat is asked for. */
  private static final int LOOKS_TO_BEAT = 40;

  /** The same, after which it is given up. */
  private static final int LOOKS_TO_HANG = 400;

  private static final byte[] BEAT = {'b', 'e', 'a', 't'};

  private final ZMQ.Socket heartbeat;
  private boolean awaited;
  private int looks;

  Pulse(ZContext context, Connection connection) {
    heartbeat = context.createSocket(SocketType.REQ);
    heartbeat.setLinger(0);
    connection.connect(heartbeat, connection.ends().getHbPort());
  }

  /** A run begins. */
  void begin() {
    looks = 0;
  }

  /**
   * After a look.
   *
   * @param silent whether nothing was heard
   */
  boolean isLost(boolean silent) {
    boolean beats = awaited && heartbeat.recv(ZMQ.DONTWAIT) != null;
    awaited &= !beats;
    looks = silent && !beats ? looks + 1 : 0;
    if (looks == LOOKS_TO_BEAT && !awaited) {
      awaited = heartbeat.send(BEAT, ZMQ.DONTWAIT);
    }
    return looks >= LOOKS_TO_HANG;
  }
}
