package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShelfTest {
  @TempDir Path folder;

  @Test
  void listsBrokenRecordsWithTheReason() throws IOException {
    Files.write(folder.resolve("good.json"), InvestigationRecordTest.example());
    Files.writeString(folder.resolve("half.json"), "{\"format\": \"endfloat-re");
    Files.writeString(folder.resolve("two words.json"), "{}");
    Files.writeString(folder.resolve("other.json"), "{\"a\": 1}");
    Files.writeString(folder.resolve("notes.txt"), "not a record");
    Shelf shelf = Shelf.open(folder);
    List<String> listed =
        shelf.list().stream().map(one -> one.name() + ": " + one.problem()).toList();
    assertEquals(
        List.of(
            "good: ",
            "half: line 1, column 24: the file ends too early",
            "other: the file is JSON but no Endfloat record: its field 'format' is not"
                + " 'endfloat-record'",
            "two words: 'two words' cannot be the name of a record: use letters, digits, - and _, at"
                + " most 100"),
        listed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", ".", "..", "../up", "a/b", "a\\b", "C:", "con", "NUL.x", "a.", ".hidden", "a\0"
      })
  void refusesNamesThatAreNoSafeFileNames(String name) {
    RecordException refused = assertThrows(RecordException.class, () -> new RecordId(name));
    assertEquals(Reason.OFF_THE_SHELF, refused.reason());
  }

  @Test
  void refusesLinksThatLeadOffTheShelf(@TempDir Path elsewhere) throws IOException {
    Path outside = elsewhere.resolve("secret.json");
    Files.write(outside, InvestigationRecordTest.example());
    Files.createSymbolicLink(folder.resolve("linked.json"), outside);
    Shelf shelf = Shelf.open(folder);
    RecordException refused =
        assertThrows(RecordException.class, () -> shelf.bytes(new RecordId("linked")));
    assertEquals(Reason.OFF_THE_SHELF, refused.reason());
    assertTrue(shelf.list().get(0).problem().contains("is a link"));
  }

  @Test
  void isSeededOnTheFirstStartOnly(@TempDir Path notebooks) throws IOException {
    Files.write(notebooks.resolve("mesh.json"), InvestigationRecordTest.example());
    Files.writeString(notebooks.resolve("mesh.csv"), "a [mm]\n1\n");
    Shelf shelf = Shelf.open(folder);
    Files.createDirectory(notebooks.resolve("mesh.files"));
    Files.writeString(notebooks.resolve("mesh.files/0a.jpg"), "a photograph of it");
    assertEquals(1, shelf.seedFrom(notebooks));
    assertEquals("a photograph of it", Files.readString(folder.resolve("mesh.files/0a.jpg")));
    Files.delete(folder.resolve("mesh.json"));
    assertEquals(0, shelf.seedFrom(notebooks), "a deleted demonstration stays deleted");
  }

  @Test
  void makesANewRecordFromAPatternWithNothingTaken() throws IOException {
    Files.write(folder.resolve("mesh.json"), InvestigationRecordTest.example());
    Shelf shelf = Shelf.open(folder);
    RecordId id = shelf.create(Optional.of(new RecordId("mesh")), "W6-118, launch 12");
    assertEquals("w6-118-launch-12", id.text());
    InvestigationRecord made = InvestigationRecord.read(shelf.bytes(id));
    Reading lash = made.cell("c3").orElseThrow().readings().get(0);
    assertEquals(2, lash.entries().size(), "the struck station is gone");
    assertTrue(lash.entries().stream().allMatch(entry -> entry.taken().isEmpty()));
    assertEquals("", made.titleBlock().engineSerial());
    assertEquals("W6-118, launch 12", made.titleBlock().title());
    assertEquals("w6-118-launch-12-2", shelf.create(Optional.empty(), "W6-118, launch 12").text());
  }

  @Test
  void makesABlankRecord() {
    Shelf shelf = Shelf.open(folder);
    RecordId id = shelf.create(Optional.empty(), "  ");
    assertEquals("record-1", id.text());
    assertEquals(3, InvestigationRecord.read(shelf.bytes(id)).cells().size());
  }

  @Test
  void refusesAFileTooLargeToBeARecordWithoutReadingIt() throws IOException {
    try (var file = Files.newOutputStream(folder.resolve("huge.json"))) {
      byte[] blank = " ".repeat(1_000_000).getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < 50; i++) {
        file.write(blank);
      }
    }
    assertEquals(
        "50.0 MB are more than a record may have (32 MB); keep photographs and long tables beside"
            + " it",
        Shelf.open(folder).list().get(0).problem());
  }
}
