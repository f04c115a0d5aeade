package endfloat.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** One page's end of the live connection. */
final class LivePage implements AutoCloseable {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final BlockingQueue<JsonNode> received = new LinkedBlockingQueue<>();
  private final WebSocket socket;
  private volatile int closeCode;

  private LivePage(HttpClient client, URI uri, String cookie, String origin) {
    WebSocket.Builder builder = client.newWebSocketBuilder().header("Cookie", cookie);
    if (!origin.isEmpty()) {
      builder.header("Origin", origin);
    }
    this.socket = builder.buildAsync(uri, new Listener()).join();
  }

  static LivePage open(RunningServer server, String record) {
    return open(server, record, "", server.cookie());
  }

  static LivePage open(RunningServer server, String record, String origin, String cookie) {
    URI uri = URI.create("ws://127.0.0.1:" + server.port() + "/api/records/" + record + "/live");
    return new LivePage(HttpClient.newHttpClient(), uri, cookie, origin);
  }

  void send(String text) {
    socket.sendText(text, true).join();
  }

  /** Sends JSON written with single quotes. */
  void say(String json) {
    send(json.replace('\'', '"'));
  }

  void edit(String id, String rest) {
    say("{'type':'edit','edit':{'id':'" + id + "'," + rest + "}}");
  }

  void put(String id, String cell, String at, String text, long seen) {
    ObjectNode message = MAPPER.createObjectNode().put("type", "edit");
    ObjectNode edit = message.putObject("edit");
    edit.put("id", id).put("op", "put").put("cell", cell).put("at", at).put("value", text);
    edit.put("seen", seen);
    send(message.toString());
  }

  /** The next message of this type; others before it are passed over. */
  JsonNode await(String type) {
    return awaitAny(type);
  }

  /** The next message of any of these types. */
  JsonNode awaitAny(String... types) {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    try {
      while (true) {
        JsonNode message = received.poll(end - System.nanoTime(), TimeUnit.NANOSECONDS);
        if (message == null) {
          throw new AssertionError("no message of type " + List.of(types) + " came");
        }
        if (List.of(types).contains(message.path("type").asText())) {
          return message;
        }
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Waits for the end of the connection and gives its code. */
  int awaitClose() throws TimeoutException, InterruptedException {
    for (int i = 0; i < 1000; i++) {
      if (closeCode != 0) {
        return closeCode;
      }
      Thread.sleep(10);
    }
    throw new TimeoutException("still open");
  }

  @Override
  public void close() {
    socket.sendClose(WebSocket.NORMAL_CLOSURE, "");
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder part = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
      part.append(data);
      if (last) {
        try {
          received.add(MAPPER.readTree(part.toString()));
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
        part.setLength(0);
      }
      from.request(1);
      return null;
    }

    @Override
    public CompletionStage<?> onClose(WebSocket from, int code, String reason) {
      closeCode = code;
      return null;
    }

    @Override
    public void onError(WebSocket from, Throwable error) {
      closeCode = 1006;
    }
  }
}
