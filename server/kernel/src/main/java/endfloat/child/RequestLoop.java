package endfloat.child;

import io.github.spencerpark.jupyter.messages.Message;
import java.util.function.Consumer;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;
import org.zeromq.ZMQException;

/** Takes the messages of one socket, one after the other, with no pause between looks. */
final class RequestLoop {
  private final String name;
  private final ZContext context;
  private final SignedSocket socket;
  private final Consumer<Message<?>> handler;

  RequestLoop(String name, ZContext context, SignedSocket socket, Consumer<Message<?>> handler) {
    this.name = name;
    this.context = context;
    this.socket = socket;
    this.handler = handler;
  }

  Thread start() {
    Thread thread = new Thread(this::run, name);
    thread.start();
    return thread;
  }

  private void run() {
    try (ZMQ.Poller poller = context.createPoller(1)) {
      poller.register(socket.socket(), ZMQ.Poller.POLLIN);
      while (!context.isClosed()) {
        if (poller.poll(-1) < 0) {
          return;
        }
        take();
      }
    } catch (ZMQException e) {
      // The context was closed: the process is ending.
    }
  }

  /** A bad message is dropped; the loop lives. */
  private void take() {
    try {
      handler.accept(socket.receive());
    } catch (Wire.RefusedMessageException e) {
      Child.log(name + ": " + e.getMessage());
    } catch (ZMQException e) {
      throw e;
    } catch (RuntimeException e) {
      Child.log(name + ": " + e);
    }
  }
}
