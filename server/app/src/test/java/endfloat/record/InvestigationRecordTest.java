package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class InvestigationRecordTest {
  static byte[] example() {
    try (InputStream in = InvestigationRecordTest.class.getResourceAsStream("end-float.json")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static byte[] with(String from, String to) {
    String text = new String(example(), StandardCharsets.UTF_8);
    assertTrue(text.contains(from), "the example holds no " + from);
    return text.replace(from, to).getBytes(StandardCharsets.UTF_8);
  }

  private static String refusal(byte[] file) {
    return assertThrows(RecordException.class, () -> InvestigationRecord.read(file)).getMessage();
  }

  @Test
  void numbersClausesAsPeopleCiteThem() {
    InvestigationRecord record = InvestigationRecord.read(example());
    List<String> numbers =
        record.cells().stream().map(cell -> cell.number() + " " + cell.kind()).toList();
    assertEquals(List.of("1 note", "2 section", "2.1 readings", "2.2 working"), numbers);
    assertEquals("c2", record.cell("c3").orElseThrow().parent());
  }

  @Test
  void readsReadingsInstrumentsAndSettings() {
    InvestigationRecord record = InvestigationRecord.read(example());
    Reading lash = record.cell("c3").orElseThrow().readings().get(0);
    assertEquals("lash", lash.name());
    assertEquals(List.of("tooth"), lash.axes());
    assertEquals(List.of("0.140"), lash.entries().get(2).taken());
    assertEquals("stylus slipped", lash.entries().get(2).struck().orElseThrow().reason());
    assertEquals("0.002 mm", record.instruments().get(0).offset());
    assertEquals("as found", record.settings().stage());
    assertEquals("W6-117", record.titleBlock().engineSerial());
  }

  @Test
  void keepsFieldsItDoesNotKnow() {
    byte[] file =
        with("\"kind\": \"note\"", "\"kind\": \"note\", \"mood\": {\"depth\": [1, 0.10]}");
    String written = new String(InvestigationRecord.read(file).write(), StandardCharsets.UTF_8);
    assertTrue(written.contains("\"mood\": {\"depth\": [1, 0.1]}"), written);
  }

  @Test
  void writesTheSameBytesOnceItHasWrittenThem() {
    byte[] once = InvestigationRecord.read(example()).write();
    assertArrayEquals(once, InvestigationRecord.read(once).write());
  }

  @Test
  void hashesSourceAndResultsApart() {
    InvestigationRecord record = InvestigationRecord.read(example());
    ObjectNode results =
        (ObjectNode) RecordJson.read("{\"library\":\"0.1.0\"}".getBytes(StandardCharsets.UTF_8));
    InvestigationRecord computed = record.withResults(results);
    assertEquals(record.sourceHash(), computed.sourceHash());
    InvestigationRecord read = InvestigationRecord.read(computed.write());
    assertEquals(record.sourceHash(), read.tree().at("/hashes/source").asText());
    assertEquals(64, read.tree().at("/hashes/results").asText().length());
  }

  @Test
  void namesThePlaceOfAProblemInWords() {
    assertEquals(
        "clause 2.1, reading lash, entry 3: taken must be text",
        refusal(with("\"0.140\"", "0.140")));
    assertEquals(
        "title block: title must be text", refusal(with("\"Upper bevel pair\"", "[\"x\"]")));
    assertEquals(
        "title block: title is missing", refusal(with("\"title\": \"Upper", "\"tit\": \"Upper")));
    assertEquals(
        "instrument DG-07: calibrated must be a date such as 2026-05-12",
        refusal(with("\"2026-03-02\"", "\"2 March\"")));
    assertEquals(
        "clause 2.1, reading lash cold: name must begin with a letter or _ and go on with letters, digits"
            + " and _",
        refusal(with("\"name\": \"lash\"", "\"name\": \"lash cold\"")));
    assertEquals(
        "clause 2.1, reading lash, entry 3, struck: reason is missing",
        refusal(with("\"reason\"", "\"raison\"")));
    assertEquals("two clauses have the id c1", refusal(with("\"id\": \"c4\"", "\"id\": \"c1\"")));
  }

  @Test
  void listsEveryProblem() {
    byte[] file =
        new String(with("\"0.140\"", "0.140"), StandardCharsets.UTF_8)
            .replace("\"metric\"", "\"furlongs\"")
            .getBytes(StandardCharsets.UTF_8);
    RecordException refused =
        assertThrows(RecordException.class, () -> InvestigationRecord.read(file));
    assertEquals(2, refused.problems().size(), refused.problems().toString());
    assertTrue(refused.problems().contains("settings: units must be one of metric, imperial"));
  }

  @Test
  void refusesANewerVersionWithTheReason() {
    RecordException refused =
        assertThrows(
            RecordException.class,
            () -> InvestigationRecord.read(with("\"version\": 1", "\"version\": 2")));
    assertEquals(Reason.NEWER, refused.reason());
    assertEquals(
        "the record has version 2 of the format, and this program knows versions up to 1; it was"
            + " left as it is. Open it with a newer Endfloat",
        refused.getMessage());
  }

  @Test
  void migratesAnOlderVersionStepByStepAndLeavesTheOriginal() {
    ObjectNode old = (ObjectNode) RecordJson.read(example());
    ObjectNode before = old.deepCopy();
    var migrated =
        Migrations.toVersion(
            old,
            3,
            List.of(
                tree -> tree.put("second", true), tree -> tree.put("third", tree.has("second"))));
    assertEquals(3, migrated.path("version").intValue());
    assertTrue(migrated.path("third").booleanValue());
    assertEquals(before, old);
  }
}
