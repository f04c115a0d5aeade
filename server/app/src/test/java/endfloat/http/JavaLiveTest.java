package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A java clause on a sheet: asked for, run, stopped, and its kernel killed. */
class JavaLiveTest {
  private static final String CHILD = "endfloat.child.Child";

  /**
   * More of them by {@code -Dendfloat.kills=100}, as {@code server/benchmarks/java-clause kills}
   * does.
   */
  private static final int KILLS = Integer.getInteger("endfloat.kills", 5);

  @TempDir Path folder;

  private Path record(String source) throws IOException {
    ObjectNode record = JsonNodeFactory.instance.objectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "java");
    record.putObject("settings");
    var cells = record.putArray("cells");
    cell(cells.addObject(), "c1", "working").put("text", lines(1));
    cell(cells.addObject(), "c2", "java").put("gives", "out [mm]").put("text", source);
    cell(cells.addObject(), "c3", "working").put("text", "after [mm] = 2 * out");
    Path file = folder.resolve("java.json");
    Files.write(file, InvestigationRecord.of(record).write());
    return file;
  }

  private static ObjectNode cell(ObjectNode cell, String id, String kind) {
    return cell.put("id", id).put("kind", kind).put("title", id);
  }

  private static String lines(int length) {
    return "length [mm] = " + length + " mm";
  }

  /** The source is another in every run of the tests, so that nobody has approved it. */
  private static String once(String source) {
    return source + " // " + System.nanoTime();
  }

  private static JsonNode board(JsonNode sheet) {
    for (JsonNode cell : sheet.path("cells")) {
      if (cell.path("id").asText().equals("c2")) {
        return cell.path("board");
      }
    }
    throw new AssertionError(sheet.toString());
  }

  private static void run(LivePage page, String hash) {
    page.say("{'type':'run','cell':'c2','hash':'" + hash + "'}");
  }

  /** Waits until the clause stands so, through whatever else is told. */
  private static JsonNode until(LivePage page, String... states) {
    JsonNode board;
    do {
      board = page.await("changed").at("/heads/c2/board");
    } while (!Arrays.asList(states).contains(board.path("run").asText()));
    return board;
  }

  @Test
  void aRecordFromElsewhereShowsItsJavaAndDoesNotRunIt() throws IOException {
    Path mark = folder.resolve("mark");
    String source =
        once(
            "java.nio.file.Files.writeString(java.nio.file.Path.of(\""
                + mark
                + "\"), \"ran\");"
                + " out = length;");
    try (RunningServer server = RunningServer.start(record(source));
        LivePage page = LivePage.open(server, "java")) {
      JsonNode sheet = page.await("sheet");
      assertEquals("not approved", board(sheet).path("run").asText());
      assertEquals("waiting", sheet.at("/figures/after/state").asText());
      run(page, "0".repeat(64));
      assertTrue(page.await("error").path("message").asText().contains("no longer the source"));
      assertFalse(Files.exists(mark));
      run(page, board(sheet).path("hash").asText());
      JsonNode changed;
      do {
        changed = page.await("changed");
      } while (!changed.at("/figures/after/state").asText().equals("fresh"));
      assertEquals("2", changed.at("/figures/after/value").asText());
      assertTrue(Files.exists(mark));
      page.put("e1", "c2", "/text", source + " ", Long.MAX_VALUE);
      assertEquals("waiting", page.await("changed").at("/figures/after/state").asText());
    }
  }

  @Test
  void aRunIsStoppedByItsPage() throws IOException {
    try (RunningServer server = RunningServer.start(record(once("while (true) { }")));
        LivePage page = LivePage.open(server, "java")) {
      run(page, board(page.await("sheet")).path("hash").asText());
      until(page, "running");
      page.say("{'type':'stop','cell':'c2'}");
      until(page, "failed");
    }
  }

  @Test
  void aKernelKilledAtRandomHarmsNeitherRecordNorFigures() throws Exception {
    String source =
        once("for (int i = 0; i < 50; i++) { progress(i / 50.0); Thread.sleep(2); } out = length;");
    Random random = new Random(7);
    try (RunningServer server = RunningServer.start(record(source))) {
      try (LivePage page = LivePage.open(server, "java")) {
        String hash = board(page.await("sheet")).path("hash").asText();
        run(page, hash);
        until(page, "done", "failed");
        for (int i = 1; i <= KILLS; i++) {
          page.put("e" + i, "c1", "/text", lines(i + 1), Long.MAX_VALUE);
          until(page, "running");
          Thread.sleep(random.nextInt(150));
          kernels().forEach(ProcessHandle::destroyForcibly);
          if (until(page, "done", "failed").path("run").asText().equals("failed")) {
            run(page, hash);
            until(page, "done");
          }
        }
      }
      try (RunningServer again = server.restarted()) {
        InvestigationRecord kept =
            InvestigationRecord.read(Files.readAllBytes(again.shelf().resolve("java.json")));
        assertEquals(lines(KILLS + 1), kept.cell("c1").orElseThrow().text());
        assertEquals(source, kept.cell("c2").orElseThrow().text());
      }
    }
  }

  private static List<ProcessHandle> kernels() {
    return ProcessHandle.current()
        .children()
        .filter(
            child ->
                child.info().arguments().map(a -> Arrays.asList(a).contains(CHILD)).orElse(false))
        .toList();
  }
}
