package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A calculation of seconds in a record: the sheet goes on meanwhile. */
class SlowWorkTest {
  private static final String RECORD = "w6-bevel-mesh";
  private static final String LINES =
      "other [mm] = OTHER mm\nchain = chain_monte_carlo([link(10 mm, 0.1 mm, sense: 1),"
          + " link(9 mm, 0.1 mm, sense: -1), link(LINK mm, 0.1 mm, sense: 1)"
          + ", link(1 mm, 0.1 mm), link(1 mm, 0.1 mm, sense: -1)".repeat(4)
          + "], trials: TRIALS)\n"
          + "gap [mm] = chain.mean + 1 mm";

  private RunningServer server;

  @BeforeEach
  void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static String lines(String other, String link, String trials) {
    return LINES.replace("OTHER", other).replace("LINK", link).replace("TRIALS", trials);
  }

  @Test
  void anEditElsewhereIsAnsweredWhileTheTrialsRunAndTheirOutcomeFollows() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c10", "/text", lines("1", "1", "1e7"), Long.MAX_VALUE);
      JsonNode first = page.await("changed").path("figures");
      assertEquals("working", first.at("/chain/state").asText(), first::toString);
      assertEquals("waiting", first.at("/gap/state").asText());
      page.put("e2", "c10", "/text", lines("2", "1", "1e7"), Long.MAX_VALUE);
      String progress = "";
      boolean answered = false;
      JsonNode message;
      do {
        message = page.awaitAny("progress", "changed");
        progress += message.at("/figures/chain").asText();
        if (message.path("edit").asText().equals("e2")) {
          answered = true;
          assertEquals("2", message.at("/figures/other/value").asText());
          assertFalse(message.path("figures").has("chain"), "the trials were begun anew");
        }
      } while (!message.path("figures").has("gap"));
      JsonNode done = message;
      assertTrue(answered, "the edit had to wait for the trials");
      assertTrue(progress.matches("(\\d+ %)+"), progress);
      assertEquals("", done.path("edit").asText());
      assertEquals("fresh", done.at("/figures/chain/state").asText());
      // middle of the chain: 10 - 9 + 1 mm, four links there and back, and 1 mm more
      assertEquals(3, done.at("/figures/gap/value").asDouble(), 0.001);
      assertEquals("fresh", freshSheet().at("/figures/gap/state").asText());
    }
  }

  @Test
  void anEditOfWhatTheyRestOnEndsTheTrialsAndBeginsThemAnew() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c10", "/text", lines("1", "1", "1e7"), Long.MAX_VALUE);
      page.await("changed");
      page.put("e2", "c10", "/text", lines("1", "5", "1000"), Long.MAX_VALUE);
      page.await("changed");
      JsonNode done = page.await("changed");
      assertEquals("", done.path("edit").asText());
      assertEquals(7, done.at("/figures/gap/value").asDouble(), 0.05);
    }
  }

  @Test
  void aPreviewOfAnotherValueDoesNotEndThem() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c10", "/text", lines("1", "1", "1e6"), Long.MAX_VALUE);
      page.await("changed");
      String preview = lines("1", "5", "1e6").replace("\n", "\\n");
      page.say("{'type':'preview','cell':'c10','seq':1,'text':'" + preview + "'}");
      JsonNode shown = page.await("preview");
      assertEquals("working", shown.at("/figures/chain/state").asText(), shown::toString);
      assertEquals(3, page.await("changed").at("/figures/gap/value").asDouble(), 0.01);
    }
  }

  /** The file says no figures that were not there, and has them all once nobody works any more. */
  @Test
  void theRecordIsSavedWithTheFiguresThoughItsPageCloses() throws Exception {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c10", "/text", lines("1", "1", "1e6"), Long.MAX_VALUE);
      page.await("kept");
    }
    for (int i = 0; i < 1000 && !file().contains("\"gap\""); i++) {
      Thread.sleep(20);
    }
    assertTrue(file().contains("\"gap\""), "the figure is not in the file");
  }

  private String file() throws IOException {
    return Files.readString(server.shelf().resolve(RECORD + ".json"));
  }

  private JsonNode freshSheet() {
    try (LivePage fresh = LivePage.open(server, RECORD)) {
      return fresh.await("sheet");
    }
  }
}
