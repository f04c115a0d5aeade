package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A record run on another engine, and both side by side, over HTTP. */
class CompareRoutesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path SECOND = Path.of("../../notebooks/w6-bevel-mesh.second-engine.csv");
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return MAPPER.readTree(answer.body());
  }

  private static HttpResponse<String> rerun(String... fields) throws IOException {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      String file = fields[i].equals("readings") ? "; filename=\"second.csv\"" : "";
      body.append("--x\r\nContent-Disposition: form-data; name=\"").append(fields[i]);
      body.append('"').append(file).append("\r\n\r\n").append(fields[i + 1]).append("\r\n");
    }
    body.append("--x--\r\n");
    return server.send(
        "/api/records/w6-bevel-mesh/rerun",
        b ->
            b.header("Content-Type", "multipart/form-data; boundary=x")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
  }

  @Test
  void aRerunKeepsWhereItCameFromAndIsComparedWithTheRecordItCameFrom() throws IOException {
    HttpResponse<String> made =
        rerun(
            "readings", Files.readString(SECOND), "engine_serial", "W6-204", "date", "2026-06-02");
    assertEquals(201, made.statusCode(), made.body());
    String id = json(made).path("id").asText();
    JsonNode record = json(server.get("/api/records/" + id));
    assertEquals("W6-204", record.at("/title_block/engine_serial").asText());
    assertEquals("2026-06-02", record.at("/title_block/date").asText());
    assertEquals("second.csv", record.at("/provenance/readings_file").asText());
    assertEquals(64, record.at("/provenance/readings_hash").asText().length());
    assertEquals("W6-0031", record.at("/provenance/record_number").asText());

    JsonNode compared = json(server.get("/api/compare?left=w6-bevel-mesh&right=" + id));
    assertEquals("W6-204", compared.at("/right/engine_serial").asText());
    assertFalse(compared.path("same_engine").asBoolean());
    JsonNode loosest = figure(compared, "hot_loosest");
    assertEquals("outside", loosest.at("/left/verdict").asText());
    assertEquals("within", loosest.at("/right/verdict").asText());
    assertTrue(loosest.path("judged_otherwise").asBoolean());
    assertEquals("outside", loosest.at("/limits/0/was").asText());
    String strip = loosest.at("/limits/0/strip").asText();
    assertTrue(strip.contains("strip-before") && strip.contains("strip-arrow"), strip);
    assertTrue(compared.path("shared_instruments").size() > 0, compared.toString());

    String both = "left=w6-bevel-mesh&right=" + id;
    String page = server.get("/compare/report?" + both).body();
    assertTrue(page.contains("/compare/report.pdf?" + both.replace("&", "&amp;")), "no way to it");
    HttpResponse<String> pdf = server.get("/compare/report.pdf?paper=letter&" + both);
    assertEquals("application/pdf", pdf.headers().firstValue("Content-Type").orElse(""));
    assertTrue(pdf.body().startsWith("%PDF-"));
    HttpResponse<String> stage = server.get("/api/compare?right_stage=cleaned&" + both);
    assertEquals(400, stage.statusCode());
    assertTrue(json(stage).path("wayOut").asText().contains("as found"), stage.body());
  }

  @Test
  void aRerunWithoutReadingsLeavesThemAllEmpty() throws IOException {
    HttpResponse<String> made = rerun("with", "none", "title", "Launch 12", "prepared", "A. N.");
    assertEquals(201, made.statusCode(), made.body());
    JsonNode record = json(server.get("/api/records/" + json(made).path("id").asText()));
    assertEquals("Launch 12", record.at("/title_block/title").asText());
    assertEquals("A. N.", record.at("/title_block/prepared").asText());
    assertEquals("W6-0031", record.at("/provenance/record_number").asText());
    assertTrue(record.at("/provenance/readings_file").isMissingNode());
    for (JsonNode taken : record.findValues("taken")) {
      assertEquals(0, taken.size());
    }
  }

  @Test
  void theFormToFillInTakesItsReadingsBack() throws IOException {
    HttpResponse<String> answer = server.get("/api/records/w6-bevel-mesh/readings.csv");
    assertEquals(
        "attachment; filename=\"w6-bevel-mesh.readings.csv\"",
        answer.headers().firstValue("Content-Disposition").orElse(""));
    String form = answer.body();
    assertTrue(form.startsWith("dial[tooth=1] [mm],"), form);
    assertEquals(201, rerun("readings", form).statusCode());
  }

  @Test
  void readingsThatDoNotFitAreRefusedEachByNameAndNothingIsMade() throws IOException {
    int before = json(server.get("/api/shelf")).path("records").size();
    HttpResponse<String> refused = rerun("readings", "dail [mm]\n0.1\n");
    assertEquals(422, refused.statusCode());
    assertTrue(json(refused).path("problems").toString().contains("dail"), refused.body());
    assertEquals(400, rerun("title", "no file").statusCode());
    assertEquals(400, rerun("with", "none", "date", "soon").statusCode());
    assertEquals(before, json(server.get("/api/shelf")).path("records").size());
  }

  @Test
  void anEarlierStateIsComparedAndWhatIsNotThereIsSaidToBe() throws IOException {
    Path states = server.shelf().resolve(".endfloat/w6-bevel-mesh/states");
    Files.createDirectories(states);
    Files.copy(RunningServer.DEMONSTRATION, states.resolve("20260512-101500-0a1b2c3d4e5f.json"));
    JsonNode listed = json(server.get("/api/records/w6-bevel-mesh/states")).path("states");
    assertEquals("[\"20260512-101500-0a1b2c3d4e5f\"]", listed.toString());
    JsonNode compared =
        json(
            server.get(
                "/api/compare?left=w6-bevel-mesh@20260512-101500-0a1b2c3d4e5f&right=w6-bevel-mesh"));
    assertTrue(compared.path("equal").asBoolean(), compared.toString());
    assertTrue(compared.path("same_engine").asBoolean());
    assertEquals(
        404, server.get("/api/compare?left=w6-bevel-mesh@..%2Fx&right=nothing").statusCode());
    assertEquals(404, server.get("/api/compare?left=nothing&right=nothing").statusCode());
    assertEquals(400, server.get("/api/compare?left=w6-bevel-mesh").statusCode());
    HttpResponse<String> paper =
        server.get("/compare/report?left=w6-bevel-mesh&right=w6-bevel-mesh&paper=letter");
    assertEquals(200, paper.statusCode());
    assertTrue(paper.body().contains("size:letter"), "Letter paper");
    String policy = paper.headers().firstValue("Content-Security-Policy").orElse("");
    assertTrue(policy.contains("default-src 'none'") && !policy.contains("script-src"), policy);
    assertEquals(400, server.get("/compare/report?left=w6-bevel-mesh").statusCode());
  }

  private static JsonNode figure(JsonNode compared, String name) {
    for (JsonNode row : compared.path("figures")) {
      if (row.path("name").asText().equals(name)) {
        return row;
      }
    }
    throw new AssertionError("no figure " + name);
  }
}
