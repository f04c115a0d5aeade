package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A record whose saved figures are not those that come out now, as after a newer library. */
class SavedFiguresTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void openingSaysWhichSavedFiguresDifferAndWhyAndRewritesNothing() throws IOException {
    Path folder = Files.createTempDirectory("endfloat-saved");
    Path file = folder.resolve("older.json");
    ObjectNode tree = (ObjectNode) MAPPER.readTree(RunningServer.DEMONSTRATION.toFile());
    tree.withObject("/results").put("library", "0.0.9");
    JsonNode altered = tree.at("/results/figures/0");
    String name = altered.path("name").asText();
    ((ObjectNode) altered).put("unit", "furlong");
    Files.writeString(file, tree.toString());
    byte[] before = Files.readAllBytes(file);
    try (RunningServer server = RunningServer.start(file, RunningServer.DEMONSTRATION)) {
      JsonNode agrees = sheet(server, "older").at("/summary/agrees");
      assertFalse(agrees.path("agrees").asBoolean());
      assertEquals("0.0.9", agrees.path("saved_library").asText());
      assertTrue(agrees.path("why").asText().contains("0.0.9"), agrees.toString());
      assertEquals(1, agrees.path("differences").size(), agrees.toString());
      JsonNode figure = sheet(server, "older").path("figures").path(name);
      assertEquals("\"furlong\"", figure.at("/outOfDate/differences/0/saved").asText());
      assertTrue(figure.at("/outOfDate/why").asText().contains("0.0.9"), figure.toString());
      JsonNode good = sheet(server, "w6-bevel-mesh");
      assertTrue(good.at("/summary/agrees/agrees").asBoolean(), good.path("summary").toString());
      assertFalse(good.path("figures").path(name).has("outOfDate"));
      server.close();
      assertArrayEquals(before, Files.readAllBytes(server.shelf().resolve("older.json")));
    }
  }

  private static JsonNode sheet(RunningServer server, String id) throws IOException {
    return MAPPER.readTree(server.get("/api/records/" + id + "/sheet").body());
  }
}
