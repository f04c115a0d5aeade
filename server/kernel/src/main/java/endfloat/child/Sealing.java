package endfloat.child;

import java.nio.charset.StandardCharsets;
import org.zeromq.ZMQ;

/**
 * Keys by which the sockets between a server and its own child are sealed (CurveZMQ), so that other
 * users of the machine cannot listen to what a kernel publishes. Both keys stay between the two: no
 * one else can even begin to talk. Other clients of the protocol know no sealing; kernels that they
 * start go without.
 *
 * @param publicKey of the child, in Z85
 * @param secretKey of the child, in Z85
 */
public record Sealing(String publicKey, String secretKey) {
  static Sealing fresh() {
    ZMQ.Curve.KeyPair keys = ZMQ.Curve.generateKeyPair();
    return new Sealing(keys.publicKey, keys.secretKey);
  }

  /** Before it is bound. */
  void serve(ZMQ.Socket socket) {
    socket.setAsServerCurve(true);
    socket.setCurvePublicKey(bytes(publicKey));
    socket.setCurveSecretKey(bytes(secretKey));
  }

  /** Before it is connected. */
  void join(ZMQ.Socket socket) {
    ZMQ.Curve.KeyPair own = ZMQ.Curve.generateKeyPair();
    socket.setCurveServerKey(bytes(publicKey));
    socket.setCurvePublicKey(bytes(own.publicKey));
    socket.setCurveSecretKey(bytes(own.secretKey));
  }

  private static byte[] bytes(String z85) {
    return z85.getBytes(StandardCharsets.US_ASCII);
  }
}
