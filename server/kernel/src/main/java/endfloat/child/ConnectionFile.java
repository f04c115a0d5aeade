package endfloat.child;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Ports and key of one kernel, in the protocol's connection file: only its owner may read it. */
public final class ConnectionFile {
  private static final String ADDRESS = "127.0.0.1";
  private static final InetAddress LOOPBACK = InetAddress.getLoopbackAddress();
  private static final int KEY_BYTES = 32;
  private static final String PUBLIC = "endfloat_sealing_public";
  private static final String SECRET = "endfloat_sealing_secret";

  private ConnectionFile() {}

  /** Free ports of this machine, and new keys. */
  public static Connection fresh() throws IOException {
    List<ServerSocket> held = new ArrayList<>();
    try {
      for (int i = 0; i < 5; i++) {
        held.add(new ServerSocket(0, 1, LOOPBACK));
      }
      byte[] key = new byte[KEY_BYTES];
      new SecureRandom().nextBytes(key);
      int[] ports = held.stream().mapToInt(ServerSocket::getLocalPort).toArray();
      KernelConnectionProperties ends =
          new KernelConnectionProperties(
              ADDRESS,
              ports[0],
              ports[1],
              ports[2],
              ports[3],
              ports[4],
              "tcp",
              "hmac-sha256",
              HexFormat.of().formatHex(key));
      return new Connection(ends, Optional.of(Sealing.fresh()));
    } finally {
      for (ServerSocket socket : held) {
        socket.close();
      }
    }
  }

  /** Writes a file that did not exist before, readable by its owner only. */
  public static void write(Connection connection, Path file) throws IOException {
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] owner =
        posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    try {
      Files.createFile(file, owner);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(file + " is there already", e);
    }
    JsonObject text = JsonParser.parseString(connection.ends().toJsonString()).getAsJsonObject();
    connection
        .sealing()
        .ifPresent(
            keys -> {
              text.addProperty(PUBLIC, keys.publicKey());
              text.addProperty(SECRET, keys.secretKey());
            });
    Files.writeString(
        file, text.toString(), StandardCharsets.UTF_8, StandardOpenOption.TRUNCATE_EXISTING);
  }

  /**
   * Reads what {@link #write} has written, or another client of the protocol.
   *
   * @throws IOException if it cannot be read or is no connection file
   */
  public static Connection read(Path file) throws IOException {
    KernelConnectionProperties connection;
    Optional<Sealing> sealing = Optional.empty();
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      connection = KernelConnectionProperties.parse(text);
      JsonObject all = JsonParser.parseString(text).getAsJsonObject();
      if (all.has(PUBLIC)) {
        sealing =
            Optional.of(new Sealing(all.get(PUBLIC).getAsString(), all.get(SECRET).getAsString()));
      }
    } catch (RuntimeException e) {
      throw new IOException(file + " is no connection file", e);
    }
    if (connection == null || connection.getKey() == null || connection.getKey().isEmpty()) {
      throw new IOException(file + " has no key; an unsigned kernel is not started");
    }
    if (!ADDRESS.equals(connection.getIp()) || !"tcp".equals(connection.getTransport())) {
      throw new IOException(file + " leads outside this machine; only " + ADDRESS + " is served");
    }
    return new Connection(connection, sealing);
  }
}
