package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Edits over the live connection, by one page and by two. */
class LiveTest {
  private static final String RECORD = "w6-bevel-mesh";
  private RunningServer server;

  @BeforeEach
  void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void aPageGetsTheSheetThenIsToldThatItsEditIsKeptThenWhatItChanged() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      JsonNode sheet = page.await("sheet");
      JsonNode note = sheet.path("cells").path(0).path("cells").path(0);
      assertEquals("note", note.path("kind").asText());
      assertEquals("1.1", note.path("number").asText());
      page.put("e1", "c2", "/text", "Withdrawn.", note.path("revision").asLong());
      JsonNode kept = page.await("kept");
      assertEquals("e1", kept.path("edit").asText());
      JsonNode changed = page.await("changed");
      assertEquals(kept.path("revision"), changed.path("revision"));
      assertEquals("Withdrawn.", changed.at("/cells/0/source/text").asText());
      assertTrue(changed.path("canUndo").asBoolean());
    }
  }

  /** A finding that names a value that is not there would be issued with a hole in it. */
  @Test
  void aNoteThatRefersToNothingIsInErrorUntilItsValueIsDefined() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c2", "/text", "Opens to {hot_loosst}, see {#2.1} and {wear}.", 0);
      JsonNode note = page.await("changed").at("/cells/0");
      assertEquals("error", note.path("state").asText());
      assertEquals(
          "{hot_loosst} names no value of this record.", note.at("/problems/0/message").asText());
      assertTrue(
          note.at("/problems/0/wayOut").asText().startsWith("Nearest: hot_loosest"),
          note.toString());
      assertEquals(
          "For the number of clause 2.1 write {#c6}.", note.at("/problems/1/wayOut").asText());
      page.put("e2", "c2", "/text", "Wears by {wear}.", Long.MAX_VALUE);
      assertEquals(1, page.await("changed").at("/cells/0/problems").size());
      page.put("e3", "c14", "/text", "wear [mm] = 0.1 mm", Long.MAX_VALUE);
      assertEquals("fresh", page.await("changed").at("/heads/c2/state").asText());
    }
  }

  @Test
  void aChartOfNothingYetIsNoError() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c20", "/of", " ", Long.MAX_VALUE);
      JsonNode chart = page.await("changed").at("/cells/0");
      assertEquals("fresh", chart.path("state").asText(), chart.toString());
      page.put("e2", "c20", "/of", "nothing_so_called", Long.MAX_VALUE);
      assertEquals("error", page.await("changed").at("/cells/0/state").asText());
    }
  }

  @Test
  void anEditSentTwiceIsMadeOnce() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c2", "/text", "One.", 0);
      long revision = page.await("kept").path("revision").asLong();
      page.put("e1", "c2", "/text", "One.", 0);
      assertEquals(revision, page.await("kept").path("revision").asLong());
    }
  }

  @Test
  void anEditMadeOnAnOlderSightIsPutToItsAuthorWithBothTexts() {
    try (LivePage one = LivePage.open(server, RECORD);
        LivePage other = LivePage.open(server, RECORD)) {
      one.await("sheet");
      other.await("sheet");
      one.put("e1", "c2", "/text", "Mine.", 0);
      one.await("kept");
      assertEquals("Mine.", other.await("changed").at("/cells/0/source/text").asText());
      other.put("e2", "c2", "/text", "Theirs.", 0);
      JsonNode refused = other.await("refused");
      assertEquals("Theirs.", refused.path("mine").asText());
      assertEquals("Mine.", refused.path("theirs").asText());
      other.put("e3", "c2", "/text", "Theirs.", refused.path("revision").asLong());
      other.await("kept");
      one.await("changed");
      assertEquals("Theirs.", one.await("changed").at("/cells/0/source/text").asText());
    }
  }

  @Test
  void twoPagesThatTypeAtOnceEndWithTheSameSheet() {
    try (LivePage one = LivePage.open(server, RECORD);
        LivePage other = LivePage.open(server, RECORD)) {
      one.await("sheet");
      other.await("sheet");
      int edits = 40;
      for (int i = 0; i < edits; i++) {
        one.put("a" + i, "c2", "/text", "one " + i, i == 0 ? 0 : Long.MAX_VALUE);
        other.put("b" + i, "c1", "/title", "other " + i, i == 0 ? 0 : Long.MAX_VALUE);
      }
      StringBuilder seenByOne = new StringBuilder();
      StringBuilder seenByOther = new StringBuilder();
      for (int i = 0; i < 2 * edits; i++) {
        seenByOne.append(one.await("changed").path("revision").asLong()).append(' ');
        seenByOther.append(other.await("changed").path("revision").asLong()).append(' ');
      }
      assertEquals(seenByOne.toString(), seenByOther.toString());
      JsonNode left = freshSheet();
      assertEquals("one 39", left.at("/cells/0/cells/0/source/text").asText());
      assertEquals("other 39", left.at("/cells/0/title").asText());
    }
  }

  private JsonNode freshSheet() {
    try (LivePage fresh = LivePage.open(server, RECORD)) {
      return fresh.await("sheet");
    }
  }

  @Test
  void undoAndRedoOutliveTheServer() throws IOException {
    String before;
    try (LivePage page = LivePage.open(server, RECORD)) {
      before = page.await("sheet").at("/cells/0/cells/0/source/text").asText();
      page.put("e1", "c2", "/text", "Changed.", 0);
      page.await("kept");
    }
    server = server.restarted();
    try (LivePage page = LivePage.open(server, RECORD)) {
      JsonNode sheet = page.await("sheet");
      assertEquals("Changed.", sheet.at("/cells/0/cells/0/source/text").asText());
      assertTrue(sheet.path("canUndo").asBoolean());
      page.say("{'type':'undo','id':'u1'}");
      assertEquals("u1", page.await("kept").path("edit").asText());
      JsonNode undone = page.await("changed");
      assertEquals(before, undone.at("/cells/0/source/text").asText());
      assertTrue(undone.path("canRedo").asBoolean());
      page.say("{'type':'redo'}");
      assertEquals("Changed.", page.await("changed").at("/cells/0/source/text").asText());
    }
    server.close();
    assertTrue(Files.readString(file()).contains("\"Changed.\""));
  }

  @Test
  void whatIsNoEditIsRefusedAndTheConnectionStays() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.send("not JSON");
      assertFalse(page.await("error").path("message").asText().contains("Exception"));
      page.say("{'type':'dance'}");
      page.await("error");
      page.edit("e1", "'op':'paint','cell':'c2'");
      assertEquals("'paint' is no kind of edit", page.await("refused").path("reason").asText());
      page.edit("e2", "'op':'put','cell':'nowhere','at':'/text','value':'x'");
      assertEquals("e2", page.await("refused").path("edit").asText());
      page.edit("e3", "'op':'put','cell':'c2','at':'/kind','value':17");
      assertEquals("e3", page.await("refused").path("edit").asText());
      page.put("e4", "c2", "/text", "Fine.", 0);
      page.await("kept");
    }
  }

  @Test
  void aMessageLargerThanTheLimitEndsTheConnectionAndNothingElse() throws Exception {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.send("x".repeat(4_000_001));
      assertEquals(1009, page.awaitClose());
    }
    assertEquals(200, server.get("/api/shelf").statusCode());
  }

  @Test
  void aRecordChangedOnDiskMeanwhileIsTakenOverWhereNothingIsLostByIt() throws IOException {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      String text = Files.readString(file()).replace("W6-0031", "W6-9931");
      Files.writeString(file(), text);
      JsonNode next = page.awaitAny("sheet", "conflict");
      if (next.path("type").asText().equals("sheet")) {
        assertEquals("W6-9931", next.at("/record/title_block/record_number").asText());
      }
    }
  }

  @Test
  void aChangedReadingChangesAllThatRestsOnItAndNothingElse() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      JsonNode sheet = page.await("sheet");
      JsonNode before = sheet.path("figures");
      assertEquals("fresh", before.at("/lash_loosest/state").asText(), before::toString);
      page.put("e1", "c6", "/readings/0/entries/0/taken/0", "0.350", Long.MAX_VALUE);
      page.await("kept");
      JsonNode figures = page.await("changed").path("figures");
      assertTrue(figures.has("dial") && figures.has("lash_loosest"), figures::toString);
      assertFalse(figures.has("growth") || figures.has("end_float_shaft"), figures::toString);
      assertEquals("outside", figures.at("/lash_loosest/verdict").asText());
      assertTrue(figures.at("/lash_loosest/limits/0/strip").asText().startsWith("<svg"));
      assertTrue(figures.at("/swing/numbers").asText().startsWith("<math"), figures::toString);
    }
  }

  @Test
  void aPreviewShowsTheLimitsOfItsOwnTextAndKeepsNothing() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      String text = "-- one line more than before\\na [mm] = 0.2 mm\\nlimit a: 0.150 .. 0.250 mm";
      page.say("{'type':'preview','cell':'c10','seq':7,'text':'" + text + "'}");
      JsonNode preview = page.await("preview");
      assertEquals(7, preview.path("seq").asInt());
      assertEquals("0.150", preview.at("/figures/a/limits/0/low").asText(), preview::toString);
      assertEquals("within", preview.at("/figures/a/verdict").asText());
      assertEquals(2, preview.at("/lines/0/line").asInt());
      assertFalse(freshSheet().path("figures").has("a"));
    }
  }

  @Test
  void whatIsTypedInAFieldShowsWhatItWouldGiveAndKeepsNothing() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      String field = "/rows/1/measured";
      page.say(
          "{'type':'preview','cell':'c42','seq':3,'field':'"
              + field
              + "','at':'"
              + field
              + "','value':'lash_loosest'}");
      JsonNode preview = page.await("preview");
      String name = preview.path("figure").asText();
      assertTrue(name.startsWith("c42."), preview::toString);
      JsonNode loosest = freshSheet().at("/figures/lash_loosest/value");
      assertEquals(loosest, preview.path("figures").path(name).path("value"), preview::toString);
      assertNotEquals(loosest, freshSheet().path("figures").path(name).path("value"));

      page.say(
          "{'type':'preview','cell':'c42','seq':4,'field':'"
              + field
              + "','at':'"
              + field
              + "','value':'no_such'}");
      JsonNode wrong = page.await("preview").path("problems");
      assertTrue(wrong.toString().contains(field), wrong::toString);
      page.say(
          "{'type':'complete','cell':'c42','expression':true,'text':'lash_loo','offset':8,'seq':5}");
      JsonNode words = page.await("completions");
      assertEquals(0, words.path("from").asInt());
      assertTrue(words.path("options").toString().contains("lash_loosest"), words::toString);
    }
  }

  @Test
  void anErrorStandsAtItsPlaceAndItsReadersWaitForIt() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.put("e1", "c10", "/text", "a [mm] = 1 mm + 1 s\nb [mm] = 2 * a", Long.MAX_VALUE);
      JsonNode changed = page.await("changed");
      assertEquals("error", changed.at("/figures/a/state").asText(), changed::toString);
      assertEquals(1, changed.at("/figures/a/error/line").asInt());
      assertTrue(changed.at("/figures/a/error/from").asInt() > 1);
      assertFalse(changed.at("/figures/a/error/wayOut").asText().isEmpty());
      assertEquals("waiting", changed.at("/figures/b/state").asText());
      assertEquals("a", changed.at("/figures/b/waitingOn/0/name").asText());
      page.put("e2", "c10", "/text", "a [mm] = 1 mm + 1 mm\nb [mm] = 2 * a", Long.MAX_VALUE);
      assertEquals("4", page.await("changed").at("/figures/b/value").asText());
    }
  }

  @Test
  void traceCompletionAndHoverAnswerWithTheNumberOfTheirQuestion() {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      page.say("{'type':'trace','name':'lash_loosest','seq':1}");
      JsonNode trace = page.await("trace");
      assertEquals(1, trace.path("seq").asInt());
      assertTrue(trace.path("tree").toString().contains("DG-07"), trace::toString);
      assertTrue(trace.path("neededBy").size() > 0, trace::toString);
      page.say("{'type':'complete','cell':'c10','text':'x = thermal_gr','offset':14,'seq':2}");
      JsonNode options = page.await("completions");
      assertTrue(options.path("options").toString().contains("thermal_growth"), options::toString);
      page.say("{'type':'hover','cell':'c10','name':'thermal_growth','seq':3}");
      assertEquals(3, page.await("hover").path("seq").asInt());
    }
  }

  @Test
  void theConnectionIsRefusedWithoutTheKeyAndFromAnotherOrigin() {
    assertThrows(
        CompletionException.class, () -> LivePage.open(server, RECORD, "", "endfloat-1=wrong"));
    assertThrows(
        CompletionException.class,
        () -> LivePage.open(server, RECORD, "http://evil.example", server.cookie()));
    LivePage.open(server, RECORD, "http://127.0.0.1:" + server.port(), server.cookie()).close();
  }

  @Test
  void aRecordThatIsNotThereIsSaidToBe() throws Exception {
    try (LivePage page = LivePage.open(server, "nothing")) {
      JsonNode error = page.await("error");
      assertEquals("there is no record nothing on this shelf", error.path("message").asText());
      assertTrue(error.path("fatal").asBoolean());
      assertEquals(1000, page.awaitClose());
    }
  }

  private Path file() {
    return server.shelf().resolve(RECORD + ".json");
  }
}
