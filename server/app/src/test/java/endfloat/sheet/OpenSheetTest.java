package endfloat.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class OpenSheetTest {
  private final FrailDisk disk = new FrailDisk(new Random(1));
  private final Clock clock = TwoClients.clock();
  private int count;

  OpenSheetTest() {
    disk.plant(TwoClients.PLACE.file(), TwoClients.FIRST);
  }

  private OpenSheet open() throws IOException {
    return TwoClients.open(disk, clock);
  }

  private Edit edit(String page, long seen, Change change) {
    count++;
    return new Edit("e" + count, "person on " + page, page, "", seen, change);
  }

  private static Change text(String cell, String text) {
    return Change.put(cell, "/text", new TextNode(text));
  }

  private static long kept(Answer answer) {
    return assertInstanceOf(Answer.Kept.class, answer).revision();
  }

  private static Answer.Refused refused(Answer answer) {
    return assertInstanceOf(Answer.Refused.class, answer);
  }

  private static String textOf(OpenSheet sheet, String cell) {
    return sheet.snapshot().record().cell(cell).orElseThrow().text();
  }

  private static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void putsTheSameClauseEditedByTwoToTheUser() throws IOException {
    OpenSheet sheet = open();
    assertEquals(1, kept(sheet.apply(edit("one", 0, text("a", "theirs")))));
    Answer.Refused both = refused(sheet.apply(edit("two", 0, text("a", "mine"))));
    assertEquals("person on one changed this place since you saw it", both.reason());
    assertEquals(Optional.of("mine"), both.mine());
    assertEquals(Optional.of("theirs"), both.theirs());
    assertEquals("theirs", textOf(sheet, "a"));
    assertEquals(2, kept(sheet.apply(edit("two", both.revision(), text("a", "mine")))));
    assertEquals("mine", textOf(sheet, "a"));
  }

  @Test
  void takesEditsOfOtherPlacesOfTheSameClause() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "theirs"))));
    kept(sheet.apply(edit("two", 0, Change.put("a", "/title", new TextNode("Finding")))));
    assertEquals("theirs", textOf(sheet, "a"));
    assertEquals("Finding", sheet.snapshot().record().cell("a").orElseThrow().title());
  }

  @Test
  void takesOnesOwnEditsSentInARow() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "m"))));
    assertEquals(2, kept(sheet.apply(edit("one", 0, text("a", "mi")))));
  }

  @Test
  void doesNotDeleteWhatSomebodyElseHasJustChanged() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "theirs"))));
    refused(sheet.apply(edit("two", 0, Change.delete("a"))));
    kept(sheet.apply(edit("two", 1, Change.delete("a"))));
    Answer.Refused gone = refused(sheet.apply(edit("one", 1, text("a", "more"))));
    assertEquals("this clause is no longer in the record", gone.reason());
  }

  @Test
  void makesAnEditSentTwiceOnce() throws IOException {
    OpenSheet sheet = open();
    ObjectNode note = JsonNodeFactory.instance.objectNode().put("kind", "note");
    Edit add = edit("one", 0, Change.add("n", note, "", ""));
    assertEquals(1, kept(sheet.apply(add)));
    assertEquals(1, kept(sheet.apply(add)));
    sheet.close();
    OpenSheet again = open();
    assertEquals(1, kept(again.apply(add)), "after a restart too");
    assertEquals(3, again.snapshot().record().cells().size());
  }

  @Test
  void undoesAndRedoesEveryonesEditsAcrossRestarts() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "second"))));
    kept(sheet.apply(edit("two", 0, Change.delete("b"))));
    sheet.close();
    OpenSheet again = open();
    assertTrue(again.snapshot().canUndo());
    assertEquals(3, kept(again.apply(edit("one", 2, Change.undo()))));
    assertEquals("x = 1 mm", textOf(again, "b"));
    kept(again.apply(edit("one", 3, Change.undo())));
    assertEquals("first", textOf(again, "a"));
    assertFalse(again.snapshot().canUndo());
    again.close();
    OpenSheet third = open();
    kept(third.apply(edit("two", 4, Change.redo())));
    assertEquals("second", textOf(third, "a"));
    assertEquals("there is nothing to redo", redoTwice(third));
  }

  private String redoTwice(OpenSheet sheet) {
    kept(sheet.apply(edit("two", 5, Change.redo())));
    assertTrue(sheet.snapshot().record().cell("b").isEmpty());
    return refused(sheet.apply(edit("two", 6, Change.redo()))).reason();
  }

  @Test
  void undoesTypingInOneGoAsOne() throws IOException {
    OpenSheet sheet = open();
    String[] times = {"10:00:00.0", "10:00:00.3", "10:00:00.9", "10:00:05.0"};
    for (int i = 0; i < times.length; i++) {
      String time = "2026-05-12T" + times[i] + "Z";
      sheet.apply(new Edit("t" + i, "R.", "one", time, i, text("a", "typed " + i)));
    }
    kept(sheet.apply(edit("one", 4, Change.undo())));
    assertEquals("typed 2", textOf(sheet, "a"));
    kept(sheet.apply(edit("one", 5, Change.undo())));
    assertEquals("first", textOf(sheet, "a"));
    kept(sheet.apply(edit("one", 6, Change.redo())));
    assertEquals("typed 2", textOf(sheet, "a"));
    kept(sheet.apply(edit("one", 7, Change.undo())));
    assertEquals("first", textOf(sheet, "a"));
  }

  @Test
  void tellsListenersOfEveryRevisionInOrder() throws Exception {
    OpenSheet sheet = open();
    List<Long> heard = new ArrayList<>();
    sheet.listen(change -> heard.add(change.revision()));
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      String page = "page " + t;
      Change change = text("a", page);
      threads.add(
          new Thread(
              () -> {
                for (int i = 0; i < 50; i++) {
                  Change add =
                      Change.put("a", "/" + page.replace(' ', '_'), new TextNode(page + i));
                  sheet.apply(new Edit(page + i, page, page, "", 0, add));
                  sheet.apply(new Edit(page + "t" + i, page, page, "", Long.MAX_VALUE, change));
                }
              }));
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    List<Long> expected = new ArrayList<>();
    for (long r = 1; r <= sheet.snapshot().revision(); r++) {
      expected.add(r);
    }
    assertEquals(expected, heard);
    assertTrue(expected.size() >= 200);
  }

  @Test
  void saysWhatAnEditChanged() throws IOException {
    OpenSheet sheet = open();
    List<SheetChange> heard = new ArrayList<>();
    sheet.listen(heard::add);
    kept(
        sheet.apply(
            edit(
                "one",
                0,
                Change.add(
                    "s",
                    json("{\"kind\":\"section\",\"cells\":[{\"id\":\"i\",\"kind\":\"note\"}]}"),
                    "",
                    "a"))));
    kept(sheet.apply(edit("one", 1, Change.move("b", "s", "i"))));
    kept(sheet.apply(edit("one", 2, Change.set("/settings/units", new TextNode("imperial")))));
    kept(sheet.apply(edit("one", 3, Change.delete("s"))));
    assertEquals(Set.of("s", "i"), heard.get(0).cells());
    assertEquals("2.2", heard.get(1).record().cell("b").orElseThrow().number());
    assertEquals(Set.of("settings"), heard.get(2).blocks());
    assertEquals(Set.of("s", "i", "b"), heard.get(3).removed());
    kept(sheet.apply(edit("one", 4, Change.undo())));
    assertEquals("2.2", sheet.snapshot().record().cell("b").orElseThrow().number());
  }

  @Test
  void refusesAnEditThatWouldMakeNoRecordAndSaysWhere() throws IOException {
    OpenSheet sheet = open();
    assertEquals(
        "clause 2: text must be text",
        refused(sheet.apply(edit("one", 0, Change.put("b", "/text", json("1"))))).reason());
    assertEquals(
        "settings: units must be one of metric, imperial",
        refused(
                sheet.apply(
                    edit("one", 0, Change.set("/settings/units", new TextNode("furlongs")))))
            .reason());
    assertEquals(
        "instrument DG-07: due must be a date such as 2026-05-12",
        refused(
                sheet.apply(
                    edit(
                        "one",
                        0,
                        Change.set("/instruments/-", json("{\"id\":\"DG-07\",\"due\":\"soon\"}")))))
            .reason());
    assertEquals(
        "the id of a clause cannot be typed over",
        refused(sheet.apply(edit("one", 0, Change.put("a", "/id", new TextNode("b"))))).reason());
    assertEquals(
        "there is a clause with the id a already",
        refused(sheet.apply(edit("one", 0, Change.add("a", json("{\"kind\":\"note\"}"), "", ""))))
            .reason());
    assertEquals(0, sheet.snapshot().revision());
  }

  @Test
  void acknowledgesNothingTheDiskDidNotTake() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "kept"))));
    disk.failAt(disk.operations() + 1, FrailDisk.Failure.FROM_THEN_ON);
    Edit lost = edit("one", 1, text("a", "not kept"));
    assertTrue(refused(sheet.apply(lost)).reason().startsWith("the edit could not be kept"));
    assertEquals("kept", textOf(sheet, "a"));
    disk.heal();
    assertEquals(2, kept(sheet.apply(lost)), "sent again once the disk is there");
  }

  /**
   * The last mark of a life is written and not forced; a force that fails later must not lose it.
   */
  @Test
  void losesNothingWhenAForceFailsOverWhatAnEarlierLifeOnlyWrote() throws IOException {
    for (int n = 1; n <= 6; n++) {
      for (int seed = 0; seed < 20; seed++) {
        FrailDisk weak = new FrailDisk(new Random(seed));
        weak.plant(TwoClients.PLACE.file(), TwoClients.FIRST);
        OpenSheet first = TwoClients.open(weak, clock);
        kept(first.apply(edit("one", 0, text("a", "first life"))));
        first.close();
        OpenSheet second = TwoClients.open(weak, clock);
        weak.failAt(weak.operations() + n, FrailDisk.Failure.ONCE);
        second.apply(edit("one", 1, text("b", "perhaps not kept")));
        weak.heal();
        kept(second.apply(edit("one", 9, text("b", "kept"))));
        OpenSheet third = TwoClients.open(weak.afterPowerCut(), clock);
        assertEquals("kept", textOf(third, "b"), "operation " + n + ", seed " + seed);
        assertEquals("first life", textOf(third, "a"));
      }
    }
  }

  @Test
  void saysThatATornEditWasDropped() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "kept"))));
    byte[] log = disk.read(TwoClients.PLACE.folder().resolve("edits.jsonl")).orElseThrow();
    byte[] torn = (new String(log, UTF_8) + "{\"sum\":\"0000").getBytes(UTF_8);
    FrailDisk next = disk.afterKill();
    next.plant(TwoClients.PLACE.folder().resolve("edits.jsonl"), torn);
    Snapshot found = TwoClients.open(next, clock).snapshot();
    assertEquals("kept", found.record().cell("a").orElseThrow().text());
    assertTrue(found.notices().get(0).startsWith("the last edit was only half written"));
  }

  @Test
  void keepsBothWhenTheFileIsChangedByOthersAndLetsAPersonChoose() throws IOException {
    byte[] theirs =
        new String(TwoClients.FIRST, UTF_8).replace("\"first\"", "\"from git\"").getBytes(UTF_8);
    for (boolean mine : new boolean[] {true, false}) {
      disk.plant(TwoClients.PLACE.file(), TwoClients.FIRST);
      OpenSheet sheet = open();
      kept(sheet.apply(edit("one", Long.MAX_VALUE, text("a", "mine " + mine))));
      disk.plant(TwoClients.PLACE.file(), theirs);
      List<DiskConflict> told = new ArrayList<>();
      sheet.listen(
          new SheetListener() {
            @Override
            public void changed(SheetChange change) {}

            @Override
            public void conflict(DiskConflict conflict) {
              told.add(conflict);
            }
          });
      sheet.save();
      assertEquals(1, told.size());
      assertEquals("from git", told.get(0).theirs().orElseThrow().cell("a").orElseThrow().text());
      assertEquals(
          new String(theirs, UTF_8),
          new String(disk.read(TwoClients.PLACE.file()).orElseThrow(), UTF_8));
      kept(sheet.apply(edit("one", Long.MAX_VALUE, text("b", "y = 2 mm"))));
      if (mine) {
        sheet.keepMine();
        assertEquals("mine true", textOf(sheet, "a"));
      } else {
        sheet.takeTheirs();
        assertEquals("from git", textOf(sheet, "a"));
        assertFalse(sheet.snapshot().canUndo());
        refused(sheet.apply(edit("two", 1, text("a", "on an old sight"))));
      }
      String now = textOf(sheet, "a");
      sheet.close();
      OpenSheet again = open();
      assertTrue(again.snapshot().conflict().isEmpty());
      assertEquals(now, textOf(again, "a"));
      again.close();
      String other = mine ? "from git" : "mine false";
      assertTrue(
          TwoClients.PLACE.earlierStates(disk).stream().anyMatch(state -> holds(state, other)),
          "the other one is kept");
      disk.remove(TwoClients.PLACE.folder().resolve("edits.jsonl"));
    }
  }

  private boolean holds(java.nio.file.Path state, String text) {
    try {
      return new String(disk.read(state).orElseThrow(), UTF_8).contains(text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void takesOverAFileThatWasChangedWhileNobodyHadItOpen() throws IOException {
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("a", "mine"))));
    sheet.close();
    byte[] theirs =
        new String(TwoClients.FIRST, UTF_8).replace("\"first\"", "\"from git\"").getBytes(UTF_8);
    disk.plant(TwoClients.PLACE.file(), theirs);
    Snapshot found = open().snapshot();
    assertEquals("from git", found.record().cell("a").orElseThrow().text());
    assertTrue(found.notices().get(0).startsWith("the file was changed outside Endfloat"));
    assertTrue(
        TwoClients.PLACE.earlierStates(disk).stream().anyMatch(state -> holds(state, "mine")));
  }

  @Test
  void leavesOutFiguresThatAreNotOfTheRecordSaved() throws IOException {
    InvestigationRecord first = InvestigationRecord.read(TwoClients.FIRST);
    ObjectNode results = (ObjectNode) json("{\"library\":\"0.1.0\",\"figures\":[]}");
    disk.plant(TwoClients.PLACE.file(), first.withResults(results).write());
    OpenSheet sheet = open();
    kept(sheet.apply(edit("one", 0, text("b", "x = 2 mm"))));
    sheet.save();
    JsonNode saved = json(new String(disk.read(TwoClients.PLACE.file()).orElseThrow(), UTF_8));
    assertFalse(saved.has("results"));
    sheet.saveResultsOf((record, revision) -> Optional.of(results));
    kept(sheet.apply(edit("one", 1, text("b", "x = 3 mm"))));
    sheet.save();
    saved = json(new String(disk.read(TwoClients.PLACE.file()).orElseThrow(), UTF_8));
    assertEquals("0.1.0", saved.at("/results/library").asText());
  }

  @Test
  void saysWhoIsWhere() throws IOException {
    OpenSheet sheet = open();
    List<List<Presence>> told = new ArrayList<>();
    sheet.listen(
        new SheetListener() {
          @Override
          public void changed(SheetChange change) {}

          @Override
          public void present(List<Presence> all) {
            told.add(all);
          }
        });
    sheet.here(new Presence("one", "R.", "a"));
    sheet.here(new Presence("one", "R.", "b"));
    sheet.gone("one");
    assertEquals(
        List.of(
            List.of(new Presence("one", "R.", "a")),
            List.of(new Presence("one", "R.", "b")),
            List.of()),
        told);
  }
}
