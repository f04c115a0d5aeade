package endfloat.http.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.engine.ProgramRunner;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person leaves the sheet, or ends the program, while a java clause runs. */
class ClosingWhileJavaRunsTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final RecordId ID = new RecordId("java");
  private static final Duration LINGER = Duration.ofMillis(1);

  @TempDir Path folder;

  private final BlockingQueue<JsonNode> told = new LinkedBlockingQueue<>();
  private final Page page = new Page("page", text -> told.add(read(text)));

  private static JsonNode read(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private LiveDesk desk(String source) throws IOException {
    ObjectNode record = MAPPER.createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "java");
    var cells = record.putArray("cells");
    cells.addObject().put("id", "c1").put("kind", "working").put("text", "length [mm] = 1 mm");
    cells
        .addObject()
        .put("id", "c2")
        .put("kind", "java")
        .put("gives", "out [mm]")
        .put("text", source);
    Files.write(folder.resolve("java.json"), InvestigationRecord.of(record).write());
    ProgramRunner.get().approve(source);
    return LiveDesk.of(Shelf.open(folder), LINGER);
  }

  /** Something new is typed, and the page waits until the source runs on it. */
  private LiveSheet running(LiveDesk desk) throws Exception {
    LiveSheet sheet = desk.join(ID, page);
    Change change = Change.put("c1", "/text", new TextNode("length [mm] = 2 mm"));
    sheet.edit(page, new Edit("e1", "", "page", "", Long.MAX_VALUE, change));
    while (!told("progress").has("figures")) {}
    return sheet;
  }

  private JsonNode told(String type) throws InterruptedException {
    JsonNode message;
    do {
      message = told.poll(60, TimeUnit.SECONDS);
      assertTrue(message != null, "nothing of type " + type + " was told");
    } while (!message.path("type").asText().equals(type));
    return message;
  }

  private JsonNode file() throws IOException {
    return MAPPER.readTree(folder.resolve("java.json").toFile());
  }

  private void await(String at, String text) {
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          while (!text.equals(file().at(at).asText())) {
            Thread.yield();
          }
        });
  }

  @Test
  void aSheetThatNobodyWatchesAnyMoreWaitsForTheRunAndIsSavedWithItsFigures() throws Exception {
    Path go = folder.resolve("go");
    String source =
        "progress(0.5); while (!java.nio.file.Files.exists(java.nio.file.Path.of(\""
            + go
            + "\"))) { progress(Math.random()); Thread.sleep(5); } out = length;";
    try (LiveDesk desk = desk(source)) {
      LiveSheet sheet = running(desk);
      // what was typed is on the disk, and nothing else is left to be saved
      await("/cells/0/text", "length [mm] = 2 mm");
      desk.leave(ID, sheet, page);
      assertTrue(sheet.isWorking());
      Files.createFile(go);
      await("/results/figures/0/name", "length");
      assertEquals("out", file().at("/results/figures/1/name").asText());
      assertEquals(2, file().at("/results/figures/1/value").asDouble());
    }
  }

  @Test
  void theEndOfTheProgramWaitsForNoRunAndSavesWhatWasTyped() throws Exception {
    LiveDesk desk = desk("while (true) { progress(Math.random()); }");
    running(desk);
    assertTimeoutPreemptively(Duration.ofSeconds(30), desk::close);
    assertEquals("length [mm] = 2 mm", file().at("/cells/0/text").asText());
    assertFalse(file().has("results"), "figures that are not known are not saved");
  }
}
