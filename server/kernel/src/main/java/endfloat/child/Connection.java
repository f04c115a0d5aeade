package endfloat.child;

import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import java.security.GeneralSecurityException;
import java.util.Optional;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * Where a kernel is reached and by which keys. Every socket of it is opened here.
 *
 * @param ends ports and the key of signatures
 * @param sealing there is one between a server and its own child only
 */
public record Connection(KernelConnectionProperties ends, Optional<Sealing> sealing) {
  /** For a thread of its own. */
  private HMACGenerator signer() {
    try {
      return ends.createHMACGenerator();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("this Java signs nothing", e);
    }
  }

  private String address(int port) {
    return ends.getTransport() + "://" + ends.getIp() + ":" + port;
  }

  SignedSocket bound(ZContext context, SocketType type, int port) {
    SignedSocket socket = new SignedSocket(context, type, signer());
    bind(socket.socket(), port);
    return socket;
  }

  void bind(ZMQ.Socket socket, int port) {
    sealing.ifPresent(keys -> keys.serve(socket));
    socket.bind(address(port));
  }

  public SignedSocket connected(ZContext context, SocketType type, int port) {
    SignedSocket socket = new SignedSocket(context, type, signer());
    connect(socket.socket(), port);
    return socket;
  }

  public void connect(ZMQ.Socket socket, int port) {
    sealing.ifPresent(keys -> keys.join(socket));
    socket.connect(address(port));
  }
}
