package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordChangeTest {
  private static final String[] POINTERS = {
    "/text", "/title", "/readings/0/entries/1", "/readings/0/entries/-",
        "/readings/0/entries/0/taken/0",
    "/readings/0/entries/0/taken/-", "/readings/1/unit", "/readings/0", "/readings/-", "/remarks",
    "/readings/0/entries/2/struck", "/readings/0/axes", "/mood", "/readings/0/name"
  };

  private static InvestigationRecord example() {
    return InvestigationRecord.read(InvestigationRecordTest.example());
  }

  private static JsonNode json(String text) {
    return RecordJson.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Change any(Random random, InvestigationRecord record) {
    List<String> ids = new ArrayList<>(record.cells().stream().map(Cell::id).toList());
    ids.add("gone");
    String cell = ids.get(random.nextInt(ids.size()));
    String other = ids.get(random.nextInt(ids.size()));
    JsonNode value =
        switch (random.nextInt(6)) {
          case 0 -> null;
          case 1 -> json("{\"taken\":[\"0.15\"],\"at\":{\"tooth\":\"9\"}}");
          case 2 -> json("[\"tooth\"]");
          case 3 -> json("{\"name\":\"more\",\"entries\":[]}");
          default -> new TextNode("text" + random.nextInt(9));
        };
    String parent = random.nextInt(3) == 0 ? other : "";
    String after = random.nextBoolean() ? "" : cell;
    return switch (random.nextInt(8)) {
      case 0 -> Change.delete(cell);
      case 1 -> Change.move(cell, parent, other);
      case 2 -> Change.add("n" + random.nextInt(1000), json("{\"kind\":\"note\"}"), parent, after);
      case 3 ->
          Change.set(
              new String[] {
                    "/title_block/title", "/instruments/0", "/instruments/-", "/settings/rule"
                  }
                  [random.nextInt(4)],
              random.nextBoolean()
                  ? new TextNode("simple")
                  : json("{\"id\":\"M-" + random.nextInt(99) + "\"}"));
      default -> Change.put(cell, POINTERS[random.nextInt(POINTERS.length)], value);
    };
  }

  /**
   * Whatever is done, its way back gives the record before it, and every record passes the schema.
   */
  @Property(tries = 300)
  void isTakenBackByItsWayBack(@ForAll long seed) {
    Random random = new Random(seed);
    InvestigationRecord record = example();
    byte[] untouched = record.write();
    int made = 0;
    for (int i = 0; i < 25; i++) {
      Change change = any(random, record);
      Applied applied;
      try {
        applied = RecordChange.apply(record, change);
      } catch (EditRefusedException e) {
        continue;
      }
      made++;
      InvestigationRecord after = InvestigationRecord.read(applied.record().write());
      assertEquals(ids(applied.record()), ids(after), "numbers and order as read from the file");
      Applied back = RecordChange.apply(applied.record(), applied.back());
      assertEquals(record.tree(), back.record().tree(), change.toString());
      Applied again = RecordChange.apply(back.record(), Change.fromJson(change.toJson()));
      assertEquals(applied.record().tree(), again.record().tree(), "replayed from the log");
      record = applied.record();
    }
    assertEquals(
        new String(untouched, StandardCharsets.UTF_8),
        new String(example().write(), StandardCharsets.UTF_8));
    net.jqwik.api.statistics.Statistics.label("made").collect(made > 5 ? "more than 5" : "few");
  }

  private static List<String> ids(InvestigationRecord record) {
    return record.cells().stream().map(cell -> cell.number() + " " + cell.id()).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "c1|/id|the id of a clause cannot be typed over",
        "c2|/cells/0/text|the cells of a clause cannot be typed over",
        "c2|/kind|a section cannot become another kind of clause, nor the other way round",
        "c9|/text|this clause is no longer in the record",
        "c3|/readings/7/name|there is no element 7 in a list of 2",
        "c3|/readings/0/entries/0/struck/reason|there is nothing at /readings/0/entries/0/struck",
        "c3|/readings/0/name|clause 2.1, reading a b: name must begin with a letter or _ and go on"
            + " with letters, digits and _",
        "c3|/readings/0/entries/1|clause 2.1, reading lash, entry 2: this must be a group of fields",
        "c1|text|'text' points nowhere"
      })
  void isRefusedWhereItCannotBe(String cell, String at, String message) {
    EditRefusedException refused =
        assertThrows(
            EditRefusedException.class,
            () -> RecordChange.apply(example(), Change.put(cell, at, new TextNode("a b"))));
    assertEquals(message, refused.getMessage());
  }

  private static InvestigationRecord withTable() {
    JsonNode table =
        json(
            """
            {"kind": "table", "title": "Fleet", "name": "fleet",
             "columns": [{"head": "hours", "kind": "number", "unit": "h"}, {"head": "batch", "kind": "text"}],
             "rows": [["412", "B2"], ["388", "B1"], ["431", ""]]}
            """);
    return RecordChange.apply(example(), Change.add("fleet", table, "", "")).record();
  }

  private static ArrayNode rowsOf(InvestigationRecord record) {
    return (ArrayNode) record.cell("fleet").orElseThrow().source().path("rows");
  }

  @Test
  void rowsAreTakenOutAndPutInAsOneStepThatIsTakenBackAsOne() {
    InvestigationRecord before = withTable();
    Change change =
        Change.rows("fleet", 1, 1, (ArrayNode) json("[[\"500\", \"B3\"], [\"501\", \"B3\"]]"));
    Applied applied = RecordChange.apply(before, change);
    assertEquals(
        json("[[\"412\",\"B2\"],[\"500\",\"B3\"],[\"501\",\"B3\"],[\"431\",\"\"]]"),
        rowsOf(applied.record()));
    assertEquals(
        json("{\"from\": 1, \"remove\": 2, \"insert\": [[\"388\", \"B1\"]]}"),
        applied.back().value(),
        "the way back holds these rows and not the table");
    assertEquals(before, RecordChange.apply(applied.record(), applied.back()).record());
    assertEquals(change, Change.fromJson(change.toJson()));
  }

  @Test
  void rowsAndColumnsAreChangedTogether() {
    InvestigationRecord before = withTable();
    Change change =
        Change.together(
            List.of(
                Change.put(
                    "fleet", "/columns", json("[{\"head\": \"serial\", \"kind\": \"text\"}]")),
                Change.rows("fleet", 0, 3, (ArrayNode) json("[[\"W6-117\"]]"))));
    Applied applied = RecordChange.apply(before, change);
    assertEquals(json("[[\"W6-117\"]]"), rowsOf(applied.record()));
    assertEquals(before, RecordChange.apply(applied.record(), applied.back()).record());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "null",
      value = {
        "/columns/0|null|[[\"B2\"],[\"B1\"],[\"\"]]",
        "/columns/0/formula|\"fleet.x\"|[[\"B2\"],[\"B1\"],[\"\"]]",
        "/columns/0/head|\"age\"|[[\"412\",\"B2\"],[\"388\",\"B1\"],[\"431\",\"\"]]",
        "/columns/-|{\"head\":\"n\"}|[[\"412\",\"B2\",\"\"],[\"388\",\"B1\",\"\"],[\"431\",\"\",\"\"]]",
        "/columns|[{\"head\":\"batch\"},{\"head\":\"hours\"}]|[[\"B2\",\"412\"],[\"B1\",\"388\"],[\"\",\"431\"]]"
      })
  void valuesStayUnderTheirHeadsWhateverBecomesOfTheColumns(String at, String value, String rows) {
    InvestigationRecord before = withTable();
    Change change = Change.put("fleet", at, value == null ? null : json(value));
    Applied applied = RecordChange.apply(before, change);
    assertEquals(json(rows), rowsOf(applied.record()));
    assertEquals(before, RecordChange.apply(applied.record(), applied.back()).record());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fleet|2|2|there are no rows 3 to 4 in this table",
        "fleet|-1|1|there are no rows 0 to 0 in this table",
        "c3|0|0|this clause is no table",
      })
  void rowsThatAreNotThereAreRefused(String cell, int from, int remove, String message) {
    Change change = Change.rows(cell, from, remove, JsonNodeFactory.instance.arrayNode());
    assertEquals(
        message,
        assertThrows(EditRefusedException.class, () -> RecordChange.apply(withTable(), change))
            .getMessage());
  }

  @Test
  void isRefusedWhereTheFileCouldNotBeReadAgain() {
    JsonNode deep = json("[".repeat(42) + "]".repeat(42));
    ObjectNode edit = JsonNodeFactory.instance.objectNode();
    edit.put("id", "e1").put("op", "put").put("cell", "c1").put("at", "/x").set("value", deep);
    assertEquals(
        "the value is nested more than 40 deep",
        assertThrows(EditRefusedException.class, () -> Edit.fromJson(edit)).getMessage());
    edit.put("value", "half \ud83d a character");
    assertEquals(
        "the value cannot be kept: half a character (a lone surrogate) in the text 'half ...'",
        assertThrows(EditRefusedException.class, () -> Edit.fromJson(edit)).getMessage());
  }

  @Test
  void nestsSectionsNoDeeperThanTheFileCanBeRead() {
    InvestigationRecord record = example();
    String parent = "";
    for (int i = 0; i < 7; i++) {
      Change add = Change.add("s" + i, json("{\"kind\":\"section\"}"), parent, "");
      record = RecordChange.apply(record, add).record();
      parent = "s" + i;
    }
    InvestigationRecord deepest = record;
    Change note = Change.add("n", json("{\"kind\":\"note\"}"), parent, "");
    InvestigationRecord.read(RecordChange.apply(deepest, note).record().write());
    Change section =
        Change.add(
            "t",
            json("{\"kind\":\"section\",\"cells\":[{\"id\":\"u\",\"kind\":\"note\"}]}"),
            parent,
            "");
    assertThrows(EditRefusedException.class, () -> RecordChange.apply(deepest, section));
  }
}
