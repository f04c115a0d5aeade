package endfloat.cli;

import endfloat.http.Server;
import endfloat.record.Shelf;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;

/**
 * {@code endfloat prepare}: does once what a start and a first edit need, over a shelf that is
 * thrown away, so that the virtual machine can write down the classes it loaded. The start script
 * runs it after a build.
 */
@Command(
    name = "prepare",
    hidden = true,
    mixinStandardHelpOptions = true,
    description = "Runs a server for a moment, to record what quick starts need.")
final class Prepare implements Callable<Integer> {
  private static final String LINES =
      "a [mm] = 12 thou ± 1 thou -- given\nb [mm] = 2 * a + 1 mm\nlimit b: 0.10 .. 0.30 mm \"sheet 3\"\n";

  @Override
  public Integer call() throws IOException {
    Path folder = Files.createTempDirectory("endfloat-prepare");
    try {
      work();
      serve(folder);
      return Exit.DONE;
    } finally {
      delete(folder);
    }
  }

  private static void work() {
    InputStream in = new ByteArrayInputStream(LINES.getBytes(StandardCharsets.UTF_8));
    PrintStream out = new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
    Endfloat.run(new Streams(in, out, out), "work");
    Endfloat.run(new Streams(new ByteArrayInputStream(new byte[0]), out, out), "work", "--json");
  }

  private static void serve(Path folder) throws IOException {
    Shelf shelf = Shelf.open(folder);
    String notebooks = System.getProperty("endfloat.notebooks", "");
    if (!notebooks.isEmpty()) {
      shelf.seedFrom(Path.of(notebooks));
    }
    try (Server server =
        Server.start(shelf, new Server.Settings("127.0.0.1", 0, "prepare", List.of()))) {
      for (String path : List.of("/?token=prepare", "/", "/api/shelf", "/favicon.svg")) {
        ask(server.port(), path);
      }
      // One sheet loads all that sheets need; a slow one must not cost the archive.
      for (Shelf.Listed one : shelf.list().subList(0, Math.min(1, shelf.list().size()))) {
        ask(server.port(), "/sheet/" + one.name());
        try {
          talk(server.port(), one.name());
        } catch (SocketTimeoutException e) {
          // what was loaded until now is recorded all the same
        }
      }
    }
  }

  private static String head(int port, String path) {
    return "GET "
        + path
        + " HTTP/1.1\r\nHost: 127.0.0.1:"
        + port
        + "\r\nCookie: endfloat-"
        + port
        + "=prepare\r\nAccept: text/html\r\nAccept-Encoding: gzip\r\n";
  }

  private static void ask(int port, String path) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      OutputStream out = socket.getOutputStream();
      out.write((head(port, path) + "Connection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
      socket.getInputStream().readAllBytes();
    }
  }

  /** Opens the live connection, makes an edit and waits for what comes of it. */
  private static void talk(int port, String record) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.setSoTimeout(5_000);
      OutputStream out = socket.getOutputStream();
      String upgrade =
          head(port, "/api/records/" + record + "/live")
              + "Connection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\n"
              + "Sec-WebSocket-Key: cHJlcGFyZS1lbmRmbG9hdA==\r\n\r\n";
      out.write(upgrade.getBytes(StandardCharsets.UTF_8));
      out.write(
          frame(
              "{\"type\":\"edit\",\"edit\":{\"id\":\"p\",\"op\":\"set\",\"at\":\"/settings/units\",\"value\":\"imperial\"}}"));
      out.flush();
      byte[] buffer = new byte[1 << 16];
      StringBuilder seen = new StringBuilder();
      int count;
      while (seen.indexOf("\"changed\"") < 0
          && (count = socket.getInputStream().read(buffer)) >= 0) {
        seen.append(new String(buffer, 0, count, StandardCharsets.ISO_8859_1));
      }
    }
  }

  /** A text frame of a client (RFC 6455, 5.2), its mask all zeros. */
  private static byte[] frame(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream frame = new ByteArrayOutputStream();
    frame.write(0x81);
    frame.write(0x80 | 126);
    frame.write(bytes.length >> 8);
    frame.write(bytes.length & 0xff);
    frame.writeBytes(new byte[4]);
    frame.writeBytes(bytes);
    return frame.toByteArray();
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
