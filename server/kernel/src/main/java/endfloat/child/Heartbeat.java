package endfloat.child;

import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** Sends back whatever comes, at once. */
final class Heartbeat {
  private Heartbeat() {}

  static Thread start(ZContext context, Connection connection) {
    ZMQ.Socket socket = context.createSocket(SocketType.REP);
    socket.setLinger(0);
    connection.bind(socket, connection.ends().getHbPort());
    Thread thread =
        new Thread(
            () -> {
              try {
                while (!Thread.currentThread().isInterrupted()) {
                  socket.send(socket.recv());
                }
              } catch (ZMQException e) {
                // The context was closed: the process is ending.
              }
            },
            "heartbeat");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }
}
