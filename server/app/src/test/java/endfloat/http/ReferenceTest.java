package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the reference page is given. */
class ReferenceTest {
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static JsonNode json(String path) throws IOException {
    return new ObjectMapper().readTree(server.get(path).body());
  }

  static Stream<String> calculations() {
    return Catalogue.library().all().stream().map(Calculation::name);
  }

  @ParameterizedTest
  @MethodSource("calculations")
  void everyExampleIsWorkedOutInBothSystems(String name) throws IOException {
    for (String units : new String[] {"metric", "imperial"}) {
      JsonNode example =
          json("/api/catalogue/" + name + "?units=" + units + "&terms=american").path("example");
      assertFalse(example.path("lines").isEmpty(), name);
      assertTrue(example.path("problems").isEmpty(), () -> example.path("problems").toString());
      example
          .path("figures")
          .forEach(figure -> assertEquals("fresh", figure.path("state").asText(), name));
    }
  }

  @Test
  void aLineDrawingComesAsAPictureAndWhereThereIsNoneItIsSaid() throws IOException {
    assertTrue(json("/api/catalogue/end_float").path("drawing").asText().contains("collar"));
    assertTrue(server.get("/api/catalogue/end_float/drawing").body().startsWith("<svg"));
    assertEquals(404, server.get("/api/catalogue/material/drawing").statusCode());
    assertTrue(json("/api/catalogue/material").path("drawing").isMissingNode());
  }

  /** 600 mm x 2.15e-5 1/K x 75 K by hand; an inch is 25.4 mm, a kelvin 1.8 degrees Fahrenheit. */
  @Test
  void theExampleIsShownInTheReadersUnits() throws IOException {
    JsonNode metric = json("/api/catalogue/thermal_growth");
    assertEquals("0.9675", metric.at("/example/figures/growth/value").asText());
    assertEquals("mm", metric.at("/parameters/0/unit").asText());
    JsonNode imperial = json("/api/catalogue/thermal_growth?units=imperial");
    assertEquals("38.091", imperial.at("/example/figures/growth/value").asText());
    assertEquals("thou", imperial.at("/example/figures/growth/unit").asText());
    assertEquals("in", imperial.at("/parameters/0/unit").asText());
    // -1e-4 1/K is -1e-4/1.8 for a degree Fahrenheit
    assertTrue(
        imperial.at("/parameters/1/range").asText().startsWith("\u221255.5556\u00d710\u207b\u2076"),
        imperial::toString);
  }

  @Test
  void theWordsAreThoseOfTheReadersCountry() throws IOException {
    JsonNode found = json("/api/catalogue?find=end%20play&terms=american");
    assertEquals("end_float", found.at("/calculations/0/name").asText());
    assertTrue(found.path("meant").toString().contains("end float"), found::toString);
    String british = json("/api/catalogue/end_float").path("summary").asText();
    String american = json("/api/catalogue/end_float?terms=american").path("summary").asText();
    assertTrue(british.toLowerCase(java.util.Locale.ROOT).contains("end float"), british);
    assertTrue(american.toLowerCase(java.util.Locale.ROOT).contains("end play"), american);
  }

  @Test
  void aCallIsOfferedWithTheNamesOfItsArgumentsAndRefusedUntilTheyAreGiven() throws IOException {
    JsonNode view = json("/api/catalogue/thermal_growth");
    assertEquals(
        "value [mm] = thermal_growth(length: , expansion: , temperature_change: )",
        view.path("line").asText());
    assertFalse(
        endfloat.engine.SheetOfLines.of(view.path("line").asText()).errors().isEmpty(),
        "an open argument must not pass");
  }

  @Test
  void everyValueOfATableHasItsSource() throws IOException {
    JsonNode materials = json("/api/tables/materials");
    int values = 0;
    for (JsonNode row : materials.at("/groups/0/rows")) {
      for (int i = 1; i < row.size(); i++) {
        JsonNode cell = row.get(i);
        boolean given = !cell.path("text").asText().equals("\u2013");
        assertEquals(given, !cell.path("source").asText().isEmpty(), row::toString);
        values += given ? 1 : 0;
      }
    }
    assertTrue(values > 100);
    assertTrue(json("/api/tables/iso-grades").path("source").asText().contains("ISO 286-1"));
    assertTrue(json("/api/tables/inch-fits").path("source").asText().contains("ANSI B4.1"));
    assertEquals(404, server.get("/api/tables/wishes").statusCode());
  }

  /** ISO 286-1:2010, table 1: IT7 over 18 up to 30 mm is 21 um. */
  @Test
  void theGradesStandByRange() throws IOException {
    JsonNode group = json("/api/tables/iso-grades").at("/groups/0");
    int column = -1;
    for (int i = 0; i < group.path("heads").size(); i++) {
      if (group.path("heads").get(i).asText().equals("IT7")) {
        column = i;
      }
    }
    for (JsonNode row : group.path("rows")) {
      if (row.get(0).path("text").asText().equals("over 18 to 30 mm")) {
        assertEquals("21", row.get(column).path("text").asText());
        return;
      }
    }
    throw new AssertionError("no range over 18 to 30 mm");
  }
}
