package endfloat.child;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.zeromq.ZMQ;

/**
 * The kernel as a client sees it that shares no code with it: frames, signatures and JSON are
 * written and read here by hand. Source of the names of fields: the published specification of the
 * kernel message protocol, version 5.3, from memory.
 */
class WireFormatTest {
  private static final int PATIENCE_MILLISECONDS = 60_000;
  private static final Set<String> HEADER =
      Set.of("msg_id", "session", "username", "date", "msg_type", "version");

  @TempDir static Path folder;
  private static RunningChild child;

  @BeforeAll
  static void starts() throws Exception {
    child = new RunningChild(folder, unsealed());
  }

  /** As another client would start it. */
  private static Connection unsealed() throws Exception {
    return new Connection(ConnectionFile.fresh().ends(), Optional.empty());
  }

  @AfterAll
  static void ends() {
    child.close();
  }

  /** A message of the kernel, as it lies in the frames. */
  private record Frames(
      JsonObject header, JsonObject parent, JsonObject metadata, JsonObject content) {
    String type() {
      return header.get("msg_type").getAsString();
    }
  }

  private static String signed(String... parts) throws Exception {
    Mac mac = Mac.getInstance("HmacSHA256");
    mac.init(
        new SecretKeySpec(
            child.connection.ends().getKey().getBytes(StandardCharsets.US_ASCII), "x"));
    for (String part : parts) {
      mac.update(part.getBytes(StandardCharsets.UTF_8));
    }
    return HexFormat.of().formatHex(mac.doFinal());
  }

  /** Sends a request and returns its id. */
  private static String send(ZMQ.Socket socket, String type, String content) throws Exception {
    String id = UUID.randomUUID().toString();
    String header =
        "{\"msg_id\":\"%s\",\"session\":\"s1\",\"username\":\"fitter\",\"date\":\"2026-11-25T10:00:00.000000Z\",\"msg_type\":\"%s\",\"version\":\"5.3\"}"
            .formatted(id, type);
    socket.sendMore("<IDS|MSG>");
    socket.sendMore(signed(header, "{}", "{}", content));
    socket.sendMore(header);
    socket.sendMore("{}");
    socket.sendMore("{}");
    socket.send(content);
    return id;
  }

  /** The next message that answers the request; its signature and heads are right. */
  private static Frames next(ZMQ.Socket socket, String id) throws Exception {
    socket.setReceiveTimeOut(PATIENCE_MILLISECONDS);
    while (true) {
      List<String> frames = new ArrayList<>();
      do {
        byte[] frame = socket.recv();
        assertNotNull(frame, "a message came within a minute");
        frames.add(new String(frame, StandardCharsets.UTF_8));
      } while (socket.hasReceiveMore());
      int at = frames.indexOf("<IDS|MSG>");
      assertTrue(at >= 0, "a message has its mark: " + frames);
      assertEquals(
          signed(frames.get(at + 2), frames.get(at + 3), frames.get(at + 4), frames.get(at + 5)),
          frames.get(at + 1));
      Frames read =
          new Frames(
              json(frames.get(at + 2)),
              json(frames.get(at + 3)),
              json(frames.get(at + 4)),
              json(frames.get(at + 5)));
      if (read.parent.has("msg_id") && read.parent.get("msg_id").getAsString().equals(id)) {
        assertTrue(read.header.keySet().containsAll(HEADER), read.header.toString());
        OffsetDateTime.parse(read.header.get("date").getAsString());
        assertEquals("s1", read.parent.get("session").getAsString());
        assertEquals("2026-11-25T10:00:00.000000Z", read.parent.get("date").getAsString());
        assertEquals("fitter", read.parent.get("username").getAsString());
        return read;
      }
    }
  }

  private static JsonObject json(String text) {
    return JsonParser.parseString(text).getAsJsonObject();
  }

  private static Frames answer(ZMQ.Socket socket, String type, String content) throws Exception {
    return next(socket, send(socket, type, content));
  }

  private static JsonObject shell(String type, String content) throws Exception {
    Frames reply = answer(child.shell.socket(), type, content);
    assertEquals(type.replace("_request", "_reply"), reply.type());
    assertEquals("ok", reply.content.get("status").getAsString());
    return reply.content;
  }

  private static List<Frames> published(String id) throws Exception {
    List<Frames> all = new ArrayList<>();
    do {
      all.add(next(child.published.socket(), id));
    } while (!all.get(all.size() - 1).content.toString().equals("{\"execution_state\":\"idle\"}"));
    return all;
  }

  private static String code(String code) {
    return "{\"code\":\"%s\",\"silent\":false,\"store_history\":true,\"user_expressions\":{},\"allow_stdin\":false,\"stop_on_error\":true}"
        .formatted(code);
  }

  @Test
  void theKernelTellsItsLanguageInTheFieldsOfTheProtocol() throws Exception {
    JsonObject info = shell("kernel_info_request", "{}");
    assertTrue(
        info.keySet()
            .containsAll(
                Set.of(
                    "protocol_version",
                    "implementation",
                    "implementation_version",
                    "language_info",
                    "banner",
                    "help_links")),
        info.toString());
    assertTrue(
        info.getAsJsonObject("language_info")
            .keySet()
            .containsAll(Set.of("name", "version", "mimetype", "file_extension")),
        info.toString());
  }

  @Test
  void aRunIsToldAsBusyInputStreamResultAndIdle() throws Exception {
    ZMQ.Socket shell = child.shell.socket();
    String id = send(shell, "execute_request", code("System.out.println(7); 6 * 7"));
    Frames reply = next(shell, id);
    assertEquals("ok", reply.content.get("status").getAsString());
    assertTrue(reply.content.has("user_expressions"), reply.content.toString());
    int count = reply.content.get("execution_count").getAsInt();
    List<Frames> told = published(id);
    assertEquals(
        List.of("status", "execute_input", "stream", "execute_result", "status"),
        told.stream().map(Frames::type).toList());
    assertEquals("busy", told.get(0).content.get("execution_state").getAsString());
    assertEquals(count, told.get(1).content.get("execution_count").getAsInt());
    assertTrue(told.get(1).content.has("code"));
    assertEquals("stdout", told.get(2).content.get("name").getAsString());
    assertEquals("7\n", told.get(2).content.get("text").getAsString());
    JsonObject result = told.get(3).content;
    assertEquals("42", result.getAsJsonObject("data").get("text/plain").getAsString());
    assertTrue(result.has("metadata"), result.toString());
    assertEquals(count, result.get("execution_count").getAsInt());
  }

  @Test
  void whatIsNotToBeStoredIsNotCounted() throws Exception {
    ZMQ.Socket shell = child.shell.socket();
    int before = count(answer(shell, "execute_request", code("1")));
    String unstored = code("2").replace("\"store_history\":true", "\"store_history\":false");
    assertEquals(before, count(answer(shell, "execute_request", unstored)));
    assertEquals(before + 1, count(answer(shell, "execute_request", code("3"))));
  }

  private static int count(Frames reply) {
    return reply.content.get("execution_count").getAsInt();
  }

  @Test
  void afterAFailureWhatWaitsIsAbortedAndWhatComesLaterIsRun() throws Exception {
    ZMQ.Socket shell = child.shell.socket();
    String fails =
        send(
            shell, "execute_request", code("Thread.sleep(1000); throw new Exception(\\\"no\\\");"));
    String waits = send(shell, "execute_request", code("int reached = 1;"));
    String asks = send(shell, "is_complete_request", "{\"code\":\"1 + 1\"}");
    JsonObject failed = next(shell, fails).content;
    assertEquals("error", failed.get("status").getAsString());
    assertTrue(failed.keySet().containsAll(Set.of("ename", "evalue", "traceback")));
    assertEquals("aborted", next(shell, waits).content.get("status").getAsString());
    assertEquals("complete", next(shell, asks).content.get("status").getAsString());
    List<Frames> told = published(fails);
    assertTrue(told.stream().anyMatch(one -> one.type().equals("error")));
    assertEquals(List.of("status", "status"), published(waits).stream().map(Frames::type).toList());
    Frames later = answer(shell, "execute_request", code("reached"));
    assertEquals("error", later.content.get("status").getAsString());
    assertEquals(
        "ok", answer(shell, "execute_request", code("1")).content.get("status").getAsString());
  }

  @Test
  void everyOtherRequestHasItsFields() throws Exception {
    JsonObject found = shell("complete_request", "{\"code\":\"Math.ab\",\"cursor_pos\":7}");
    assertTrue(
        found.keySet().containsAll(Set.of("matches", "cursor_start", "cursor_end", "metadata")));
    JsonObject seen =
        shell("inspect_request", "{\"code\":\"Math.abs(\",\"cursor_pos\":9,\"detail_level\":0}");
    assertTrue(seen.keySet().containsAll(Set.of("found", "data", "metadata")), seen.toString());
    JsonElement none =
        shell(
                "history_request",
                "{\"output\":false,\"raw\":true,\"hist_access_type\":\"tail\",\"n\":3}")
            .get("history");
    assertTrue(none.isJsonArray(), "history");
    assertTrue(shell("comm_info_request", "{}").get("comms").isJsonObject(), "comms");
    Frames stopped = answer(child.control.socket(), "interrupt_request", "{}");
    assertEquals("interrupt_reply", stopped.type());
    assertEquals("ok", stopped.content.get("status").getAsString());
  }

  @Test
  void anUnknownRequestEndsIdleAndHarmsNothing() throws Exception {
    String id = send(child.shell.socket(), "no_such_request", "{}");
    assertEquals(List.of("status", "status"), published(id).stream().map(Frames::type).toList());
    assertFalse(shell("kernel_info_request", "{}").keySet().isEmpty());
  }

  @Test
  void aRestartIsSaidInItsReply() throws Exception {
    try (RunningChild other = new RunningChild(folder, unsealed())) {
      RunningChild mine = child;
      child = other;
      try {
        Frames reply = answer(other.control.socket(), "shutdown_request", "{\"restart\":true}");
        assertEquals("shutdown_reply", reply.type());
        assertEquals("ok", reply.content.get("status").getAsString());
        assertTrue(reply.content.get("restart").getAsBoolean(), reply.content.toString());
      } finally {
        child = mine;
      }
    }
  }
}
