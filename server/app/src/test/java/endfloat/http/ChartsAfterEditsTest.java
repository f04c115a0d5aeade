package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A chart is drawn when the edit has been told, and is that of the last edit. */
class ChartsAfterEditsTest {
  private static final String RECORD = "w6-bevel-mesh";
  private static final String TEXT = "lash [mm] = LASH mm\nmore [mm] = lash + 0.1 mm";

  private RunningServer server;

  @BeforeEach
  void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private static void add(LivePage page, String edit, String id, String rest) {
    page.send(
        "{\"type\": \"edit\", \"edit\": {\"id\": \""
            + edit
            + "\", \"op\": \"add\", \"cell\": \""
            + id
            + "\", \"parent\": \"\", \"after\": \"\", \"value\": {\"id\": \""
            + id
            + "\", \"title\": \"\", "
            + rest
            + "}}}");
  }

  private static String text(String lash) {
    return TEXT.replace("LASH", lash);
  }

  @Test
  void thePictureFollowsTheFiguresAndIsThatOfTheLastEdit() throws Exception {
    try (LivePage page = LivePage.open(server, RECORD)) {
      page.await("sheet");
      add(
          page,
          "e1",
          "x1",
          "\"kind\": \"working\", \"text\": \"lash [mm] = 0.2 mm\\nmore [mm] = lash + 0.1 mm\"");
      page.await("changed");
      add(
          page,
          "e2",
          "x2",
          "\"kind\": \"chart\", \"chart\": \"against\", \"of\": \"more\", \"input\": \"lash\","
              + " \"from\": \"0 mm\", \"to\": \"1 mm\"");
      JsonNode added = page.await("changed");
      String first = added.at("/cells/0/chart/svg").asText();
      assertTrue(first.contains("<svg"), "a chart that is put in comes with its picture");
      for (int i = 1; i <= 5; i++) {
        page.put("p" + i, "x1", "/text", text("0.2" + i), Long.MAX_VALUE);
      }
      JsonNode told;
      do {
        told = page.await("changed");
        assertTrue(told.at("/heads/x2").isMissingNode(), "the picture is no part of the edit");
      } while (!told.path("edit").asText().equals("p5"));
      JsonNode drawn;
      do {
        drawn = page.await("charts");
      } while (drawn.path("revision").asLong() < told.path("revision").asLong());
      String last = drawn.at("/heads/x2/chart/svg").asText();
      assertNotEquals(first, last);
      assertEquals(freshChart(), last);
    }
  }

  private String freshChart() {
    try (LivePage fresh = LivePage.open(server, RECORD)) {
      for (JsonNode cell : fresh.await("sheet").path("cells")) {
        if (cell.path("id").asText().equals("x2")) {
          return cell.at("/chart/svg").asText();
        }
      }
    }
    throw new AssertionError("no chart");
  }
}
