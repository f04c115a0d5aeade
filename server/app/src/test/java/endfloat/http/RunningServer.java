package endfloat.http;

import endfloat.record.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** A real server on a free port, and a client that was let in. */
public final class RunningServer implements AutoCloseable {
  static final String TOKEN = "key-of-the-test";

  /** The record that ships for a first look. */
  public static final Path DEMONSTRATION = Path.of("../../notebooks/w6-bevel-mesh.json");

  private final Server server;
  private final Path shelf;
  private final HttpClient client = HttpClient.newHttpClient();

  private RunningServer(Server server, Path shelf) {
    this.server = server;
    this.shelf = shelf;
  }

  /** Serves a new shelf that holds the records given as files of the test. */
  public static RunningServer start(Path... records) {
    try {
      Path shelf = Files.createTempDirectory("endfloat-shelf");
      for (Path record : records) {
        Files.copy(record, shelf.resolve(record.getFileName()));
      }
      return on(shelf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static RunningServer on(Path shelf) {
    Server.Settings settings = new Server.Settings("127.0.0.1", 0, TOKEN, List.of("bench.example"));
    return new RunningServer(Server.start(Shelf.open(shelf), settings), shelf);
  }

  /** Stops this server and starts another on the same shelf. */
  RunningServer restarted() {
    close();
    return on(shelf);
  }

  public Path shelf() {
    return shelf;
  }

  public int port() {
    return server.port();
  }

  /** The opening link. */
  public String link() {
    return server.link();
  }

  public String address(String path) {
    return "http://127.0.0.1:" + port() + path;
  }

  /** A request of a browser that was let in. */
  HttpResponse<String> send(String path, UnaryOperator<HttpRequest.Builder> request) {
    return bare(path, b -> request.apply(b.header("Cookie", cookie())));
  }

  HttpResponse<String> get(String path) {
    return send(path, b -> b);
  }

  HttpResponse<String> post(String path, String json) {
    return send(
        path,
        b ->
            b.header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)));
  }

  /** A request without the cookie. */
  HttpResponse<String> bare(String path, UnaryOperator<HttpRequest.Builder> request) {
    try {
      return client.send(
          request.apply(HttpRequest.newBuilder(URI.create(address(path)))).build(),
          HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A request word by word, for what no decent client sends. */
  String raw(String... lines) {
    try (Socket socket = new Socket("127.0.0.1", port())) {
      socket.setSoTimeout(10_000);
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String cookie() {
    return String.format(Locale.ROOT, "endfloat-%d=%s", port(), TOKEN);
  }

  @Override
  public void close() {
    server.close();
  }
}
