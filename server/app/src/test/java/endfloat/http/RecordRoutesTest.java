package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shelf over HTTP: what is on it, and what bad input gets for an answer. */
class RecordRoutesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void theShelfListsRecordsAndSaysWhatIsWrongWithBrokenOnes() throws IOException {
    Files.writeString(server.shelf().resolve("broken.json"), "{\"format\": ");
    Files.writeString(
        server.shelf().resolve("newer.json"), "{\"format\":\"endfloat-record\",\"version\":99}");
    JsonNode records = json(server.get("/api/shelf")).path("records");
    JsonNode good = named(records, "w6-bevel-mesh");
    assertEquals("W6-0031", good.path("record_number").asText());
    assertFalse(good.has("problem"));
    assertTrue(named(records, "broken").path("problem").asText().contains("ends too early"));
    assertTrue(
        named(records, "newer").path("problem").asText().contains("newer"), records::toString);
    assertEquals("w6-bevel-mesh", json(server.get("/api/shelf")).path("demonstration").asText());
  }

  @Test
  void aNewRecordIsMadeFromAPatternAndOpens() throws IOException {
    HttpResponse<String> made =
        server.post(
            "/api/records", "{\"from\":\"w6-bevel-mesh\",\"title\":\"Launch 12, stripped\"}");
    assertEquals(201, made.statusCode(), made.body());
    String id = json(made).path("id").asText();
    assertEquals("launch-12-stripped", id);
    JsonNode sheet = json(server.get("/api/records/" + id + "/sheet"));
    assertEquals(
        "Launch 12, stripped", sheet.path("record").path("title_block").path("title").asText());
  }

  @Test
  void aRecordIsGivenAsItsFileIs() throws IOException {
    HttpResponse<String> answer = server.get("/api/records/w6-bevel-mesh");
    assertEquals(Files.readString(server.shelf().resolve("w6-bevel-mesh.json")), answer.body());
    String etag = answer.headers().firstValue("ETag").orElse("");
    assertEquals(
        304,
        server
            .send("/api/records/w6-bevel-mesh", b -> b.header("If-None-Match", etag))
            .statusCode());
  }

  @Test
  void whatIsNotThereIsSaidToBe() throws IOException {
    HttpResponse<String> answer = server.get("/api/records/nothing");
    assertEquals(404, answer.statusCode());
    assertEquals(
        "There is no record nothing on this shelf.", json(answer).path("message").asText());
    assertEquals(404, server.get("/api/nothing").statusCode());
    assertEquals(
        "There is nothing at this address.",
        json(server.get("/api/nothing")).path("message").asText());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/records/..%2f..%2fetc%2fpasswd",
        "/api/records/%2e%2e%2fsecret",
        "/api/records/..",
        "/api/records/.endfloat",
        "/api/records/con",
        "/api/records/a%00b",
        "/api/records/C:%5csecret",
        "/api/records/..%5csecret/sheet"
      })
  void noNameLeadsOutOfTheShelf(String path) throws IOException {
    Files.writeString(server.shelf().resolveSibling("secret.json"), "{}");
    String answer =
        server.raw(
            "GET " + path + " HTTP/1.1",
            "Host: 127.0.0.1:" + server.port(),
            "Cookie: " + server.cookie());
    assertTrue(answer.matches("(?s)HTTP/1.1 (400|403|404) .*"), answer);
    assertFalse(answer.contains("\tat "), answer);
  }

  @Test
  void aLinkOnTheShelfIsNotFollowed() throws IOException {
    Path outside = Files.createTempFile("endfloat-outside", ".json");
    Files.copy(
        server.shelf().resolve("w6-bevel-mesh.json"),
        outside,
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    Path link = server.shelf().resolve("linked.json");
    Files.createSymbolicLink(link, outside);
    try {
      for (String path : new String[] {"", "/sheet"}) {
        HttpResponse<String> answer = server.get("/api/records/linked" + path);
        assertEquals(403, answer.statusCode(), answer.body());
        assertTrue(json(answer).path("message").asText().contains("is a link"), answer.body());
      }
      JsonNode listed = named(json(server.get("/api/shelf")).path("records"), "linked");
      assertTrue(listed.path("problem").asText().contains("is a link"));
    } finally {
      Files.delete(link);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "{", "[1] trailing", "{\"from\":\"\",\"from\":\"x\"}", "NaN", "\u0000"})
  void malformedJsonIsRefusedInWords(String body) throws IOException {
    HttpResponse<String> answer = server.post("/api/records", body);
    assertEquals(400, answer.statusCode());
    assertFalse(json(answer).path("message").asText().isEmpty());
    assertFalse(answer.body().contains("Exception"), answer.body());
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void anUploadOfFiftyMegabytesIsRefusedWithItsLimit(boolean lengthIsSaid) throws IOException {
    byte[] upload = new byte[50_000_000];
    HttpRequest.BodyPublisher body =
        lengthIsSaid
            ? HttpRequest.BodyPublishers.ofByteArray(upload)
            : HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(upload));
    for (int i = 0; i < 3; i++) {
      HttpResponse<String> answer = server.send("/api/records", b -> b.POST(body));
      assertEquals(413, answer.statusCode());
      assertEquals("The upload is larger than 32 MB.", json(answer).path("message").asText());
    }
    assertEquals(200, server.get("/api/shelf").statusCode());
  }

  @Test
  void aRecordRunsAgainWithAnotherEnginesReadings() throws IOException {
    Path csv = RunningServer.DEMONSTRATION.resolveSibling("w6-bevel-mesh.second-engine.csv");
    HttpResponse<String> made = rerun(Files.readString(csv));
    assertEquals(201, made.statusCode(), made.body());
    String id = json(made).path("id").asText();
    assertTrue(Files.readString(server.shelf().resolve(id + ".json")).contains("\"0.142\""));
    HttpResponse<String> refused = rerun("dial [mm]\n0.1,2\n");
    assertEquals(422, refused.statusCode(), refused.body());
    assertTrue(json(refused).path("problems").size() > 1, refused.body());
    assertEquals(400, server.post("/api/records/w6-bevel-mesh/rerun", "{}").statusCode());
  }

  private static HttpResponse<String> rerun(String csv) {
    String body =
        "--edge\r\nContent-Disposition: form-data; name=\"readings\"; filename=\"second.csv\"\r\n"
            + "Content-Type: text/csv\r\n\r\n"
            + csv
            + "\r\n--edge--\r\n";
    return server.send(
        "/api/records/w6-bevel-mesh/rerun",
        b ->
            b.header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  @Test
  void theCatalogueIsServedAndAMissNamesItsNeighbours() throws IOException {
    assertEquals(
        "thermal", json(server.get("/api/catalogue/thermal_growth")).path("subject").asText());
    HttpResponse<String> miss = server.get("/api/catalogue/thermal_grow");
    assertEquals(404, miss.statusCode());
    assertTrue(json(miss).path("wayOut").asText().contains("thermal_growth"), miss.body());
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return MAPPER.readTree(answer.body());
  }

  private static JsonNode named(JsonNode records, String id) {
    for (JsonNode record : records) {
      if (record.path("id").asText().equals(id)) {
        return record;
      }
    }
    throw new AssertionError(id + " is not listed: " + records);
  }
}
