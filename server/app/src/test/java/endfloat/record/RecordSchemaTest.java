package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RecordSchemaTest {
  private static JsonNode schema() {
    return RecordJson.read(RecordSchema.text().getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> keys(JsonNode properties) {
    List<String> keys = new ArrayList<>();
    properties.properties().forEach(field -> keys.add(field.getKey()));
    return keys;
  }

  private static List<String> sorted(JsonNode properties) {
    return KeyOrder.sorted(properties).stream().map(field -> field.getKey()).toList();
  }

  @Test
  void listsFieldsInTheOrderInWhichTheyAreWritten() {
    JsonNode schema = schema();
    assertEquals(keys(schema.path("properties")), sorted(schema.path("properties")));
    for (var definition : schema.path("$defs").properties()) {
      JsonNode properties = definition.getValue().path("properties");
      assertEquals(keys(properties), sorted(properties), definition.getKey());
    }
  }

  @Test
  void describesWhatItsNameDoesNotSay() {
    for (String definition :
        List.of("entry", "instrument", "reading", "limit", "results", "cell")) {
      JsonNode described = schema().path("$defs").path(definition).path("description");
      assertTrue(described.asText().length() > 5, definition);
    }
  }

  @Test
  void hasFromTheFirstDayWhatThePageShowsLater() {
    JsonNode defs = schema().path("$defs");
    assertTrue(
        keys(defs.path("limit").path("properties"))
            .containsAll(List.of("authority", "condition", "state", "rule")));
    assertTrue(
        keys(defs.path("reading").path("properties"))
            .containsAll(List.of("part", "stage", "instrument", "temperature", "material")));
    assertTrue(keys(defs.path("entry").path("properties")).contains("struck"));
    for (String kind :
        "note working readings fits chart causes caution photo events table java parts findings steps approval"
            .split(" ")) {
      String record =
          "{\"format\":\"endfloat-record\",\"version\":1,\"title_block\":{\"title\":\"\"},\"cells\":"
              + "[{\"id\":\"c1\",\"kind\":\""
              + kind
              + "\",\"own\":{\"free\":[1]}}]}";
      assertEquals(
          kind,
          InvestigationRecord.read(record.getBytes(StandardCharsets.UTF_8)).cells().get(0).kind());
    }
  }

  @Test
  void acceptsEveryRecordThatShips() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("../../notebooks"))) {
      List<Path> records = files.filter(file -> file.toString().endsWith(".json")).toList();
      assertTrue(records.size() >= 1, "no records found");
      for (Path file : records) {
        byte[] written = InvestigationRecord.read(Files.readAllBytes(file)).write();
        assertEquals(
            new String(written, StandardCharsets.UTF_8),
            new String(InvestigationRecord.read(written).write(), StandardCharsets.UTF_8),
            file.toString());
      }
    }
  }
}
