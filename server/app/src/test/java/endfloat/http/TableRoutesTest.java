package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.table.Workbooks;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Tables of a sheet over HTTP and the line of a page. Figures by hand. */
class TableRoutesTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final String TABLE = "/api/records/fleet/tables/t1";

  /** Lash 18 thou and 16 thou are past 15; one is missing. */
  private static final String RECORD =
      """
      {'format':'endfloat-record','version':1,'title_block':{'title':'Fleet'},'cells':[
       {'id':'t1','kind':'table','title':'Wear','name':'wear',
        'columns':[{'head':'serial','kind':'text'},{'head':'lash','kind':'number','unit':'thou'},
         {'head':'hours','kind':'number','unit':'h'},{'head':'batch','kind':'text'},
         {'head':'rate','kind':'number','unit':'thou/h','formula':'wear.lash / wear.hours'}],
        'rows':[['W6-2','12','400','B1'],['W6-10','18','900','B2'],['W6-9','','650','B1'],['W6-1','16','500','B2']],
        'limits':['limit wear.lash: at most 15 thou']},
       {'id':'w1','kind':'working','text':'worst [thou] = max(wear.lash)'}]}
      """;

  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static void shelve(String id) throws IOException {
    Files.writeString(server.shelf().resolve(id + ".json"), RECORD.replace('\'', '"'));
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return MAPPER.readTree(answer.body());
  }

  private static JsonNode rows(String query) throws IOException {
    shelve("fleet");
    return json(server.get(TABLE + query));
  }

  private static String text(String value) {
    return URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  private static List<String> first(JsonNode answer) {
    List<String> texts = new ArrayList<>();
    answer.path("lines").forEach(line -> texts.add(line.path("cells").path(0).asText()));
    return texts;
  }

  @Test
  void theSheetCarriesHeadsAndCountsAndNoRows() throws IOException {
    shelve("fleet");
    JsonNode sheet = json(server.get("/api/records/fleet/sheet"));
    JsonNode table = sheet.path("cells").path(0);
    assertFalse(table.path("source").has("rows"), table::toString);
    assertEquals(4, table.path("table").path("rows").asInt());
    assertEquals(
        2, table.path("table").path("missing").asInt(), "a lash, and the rate of that row");
    assertEquals("outside", table.path("worst").asText());
    JsonNode lash = sheet.path("figures").path("wear.lash");
    JsonNode worst = lash.path("elements").path(lash.path("worstElement").asInt());
    assertEquals("2", worst.path("labels").path("wear.row").asText(), "18 thou, not the 16 behind");
  }

  @Test
  void rowsComeAsTypedWithWhatIsWorkedOutAndTheVerdictOfEach() throws IOException {
    JsonNode answer = rows("?from=1&count=2");
    assertEquals(4, answer.path("total").asInt());
    JsonNode line = answer.path("lines").path(0);
    assertEquals(2, line.path("row").asInt());
    assertEquals("[\"W6-10\",\"18\",\"900\",\"B2\",\"0.02\"]", line.path("cells").toString());
    assertEquals("outside", line.path("verdict").asText());
    assertEquals("outside", line.path("verdicts").path("lash").asText());
    assertEquals(
        "[\"W6-9\",\"\",\"650\",\"B1\",\"\"]",
        answer.path("lines").path(1).path("cells").toString());
    assertFalse(answer.path("lines").path(1).has("verdict"));
  }

  @Test
  void rowsArePutInOrderChosenAndGrouped() throws IOException {
    assertEquals(List.of("W6-1", "W6-10", "W6-2", "W6-9"), first(rows("?sort=serial")));
    assertEquals(
        List.of("W6-10", "W6-1", "W6-2", "W6-9"), first(rows("?sort=" + text("lash down"))));
    JsonNode kept = rows("?filter=" + text("lash > 12 thou and batch = \"B2\""));
    assertEquals(List.of("W6-10", "W6-1"), first(kept));
    assertEquals(2, kept.path("passing").asInt());
    JsonNode groups = rows("?group=batch&sort=hours");
    assertEquals(6, groups.path("total").asInt(), "four rows and two heads");
    JsonNode head = groups.path("lines").path(0);
    assertEquals("B1", head.path("group").asText());
    assertEquals(2, head.path("count").asInt());
    // (400 h + 650 h) / 2, and of lash the one that is there
    assertEquals(
        "[\"\",\"mean 12\",\"mean 525\",\"B1\",\"mean 0.03\"]", head.path("cells").toString());
  }

  @Test
  void aConditionThatMeansNothingIsRefusedInWords() throws IOException {
    shelve("fleet");
    HttpResponse<String> unknown = server.get(TABLE + "?filter=" + text("lahs > 3 thou"));
    assertEquals(422, unknown.statusCode());
    assertTrue(json(unknown).path("message").asText().contains("lahs"), unknown.body());
    HttpResponse<String> single = server.get(TABLE + "?filter=" + text("worst > 3 thou"));
    assertEquals("This is true or false of no single row.", json(single).path("message").asText());
    assertEquals(422, server.get(TABLE + "?sort=nothing").statusCode());
    assertEquals(404, server.get("/api/records/fleet/tables/w1").statusCode());
    assertEquals(400, server.get(TABLE + "?from=x").statusCode());
  }

  @Test
  void aTableIsGivenOutAsCsvInTheOrderShown() throws IOException {
    shelve("fleet");
    HttpResponse<String> file = server.get(TABLE + ".csv?sort=serial");
    assertEquals(
        "serial,lash [thou],hours [h],batch,rate [thou/h]\r\n"
            + "W6-1,16,500,B2,0.032\r\nW6-10,18,900,B2,0.02\r\nW6-2,12,400,B1,0.03\r\nW6-9,,650,B1,\r\n",
        file.body());
    assertTrue(file.headers().firstValue("Content-Type").orElse("").startsWith("text/csv"));
  }

  @Test
  void aReportHasTheRowsInTheOrderOfTheSheet() throws IOException {
    String sorted = RECORD.replace("'limits':", "'view':{'sort':['lash down']},'limits':");
    Files.writeString(server.shelf().resolve("paper.json"), sorted.replace('\'', '"'));
    String report = server.get("/record/paper/report").body();
    int greatest = report.indexOf("<td>W6-10</td>");
    int missing = report.indexOf("<td>W6-9</td>");
    assertTrue(0 < greatest && greatest < missing, report);
    assertTrue(report.contains("4 rows; 2 values missing. Sorted by lash falling."), report);
  }

  @Test
  void aTableIsFilledFromTheShelfAndReadAgainWhenAsked() throws IOException {
    shelve("whole");
    String engine =
        """
        {'format':'endfloat-record','version':1,
         'title_block':{'title':'Engine','engine_serial':'W6-SERIAL','hours_since_overhaul':'412 h'},
         'cells':[{'id':'w','kind':'working','text':'lash_cold [mm] = LASH mm'}]}
        """;
    for (String[] one : new String[][] {{"e1", "0.14"}, {"e2", "0.17"}}) {
      String text = engine.replace("SERIAL", one[0]).replace("LASH", one[1]).replace('\'', '"');
      Files.writeString(server.shelf().resolve(one[0] + ".json"), text);
    }
    assertTrue(server.get("/api/records/whole/fleet").body().contains("\"id\":\"e2\""));
    String path = "/api/records/whole/tables/t1";
    HttpResponse<String> read =
        server.post(
            path + "/fleet", "{\"records\":[\"e1\",\"e2\",\"gone\"],\"of\":[\"lash_cold\"]}");
    assertEquals(2, json(read).path("rows").asInt(), read.body());
    assertTrue(read.body().contains("no record gone"), read.body());
    assertEquals(
        "[\"e2\",\"W6-e2\",\"412\",\"0.17\"]",
        json(server.get(path))
            .path("lines")
            .path(1)
            .path("cells")
            .toString()
            .replace(",\"\"]", "]"));
    Path second = server.shelf().resolve("e2.json");
    Files.writeString(second, Files.readString(second).replace("0.17", "0.19"));
    assertEquals(2, json(server.post(path + "/fleet", "{}")).path("rows").asInt());
    assertEquals(
        "0.19", json(server.get(path)).path("lines").path(1).path("cells").path(3).asText());
    assertEquals(422, server.post(path + "/fleet", "{\"records\":[],\"of\":[]}").statusCode());
  }

  @Test
  void theGroupsOfATableAreOfferedAsTheFieldsOfAClause() throws IOException {
    shelve("groups");
    JsonNode fields =
        json(
            server.get(
                "/api/records/groups/tables/t1/groups?group=batch&group=serial&filter="
                    + text("hours > 450 h")));
    assertEquals("[\"batch\",\"serial\"]", fields.path("from").path("group").toString());
    assertEquals("wear.hours > 450 h", fields.path("from").path("filter").asText());
    assertEquals(
        "count(only(wear.batch, where: wear.hours > 450 h), by: [only(wear.batch, where:"
            + " wear.hours > 450 h), only(wear.serial, where: wear.hours > 450 h)])",
        fields.at("/columns/2/formula").asText());
    assertEquals("rate_mean", fields.at("/columns/11/head").asText());
    assertEquals(422, server.get("/api/records/groups/tables/t1/groups").statusCode());
  }

  private static HttpResponse<String> sent(String record, String what, String file, String fields) {
    return sent(record, what, file.getBytes(StandardCharsets.UTF_8), fields);
  }

  private static HttpResponse<String> sent(String record, String what, byte[] file, String fields) {
    StringBuilder body = new StringBuilder();
    for (String field : fields.split(";")) {
      String[] parts = field.split(":", 2);
      body.append("--x\r\nContent-Disposition: form-data; name=\"").append(parts[0]);
      body.append("\"\r\n\r\n").append(parts[1]).append("\r\n");
    }
    body.append("--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"bed run.csv\"");
    body.append("\r\nContent-Type: text/csv\r\n\r\n")
        .append(new String(file, StandardCharsets.ISO_8859_1))
        .append("\r\n--x--\r\n");
    return server.send(
        "/api/records/" + record + "/tables/t1/" + what,
        b ->
            b.header("Content-Type", "multipart/form-data; boundary=x")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        body.toString(), StandardCharsets.ISO_8859_1)));
  }

  @Test
  void ofAWorkbookTheSheetIsAskedForAndNothingIsTakenBefore() throws IOException {
    shelve("sheets");
    String fleet =
        "<row r='1'>"
            + Workbooks.text("A1", "serial")
            + "</row><row r='2'>"
            + Workbooks.text("A2", "W6-7")
            + "</row>";
    byte[] file = Workbooks.workbook(List.of(Map.entry("Fleet", fleet), Map.entry("Bed", fleet)));
    JsonNode asked = json(sent("sheets", "preview", file, "decimal:point"));
    assertEquals("[\"Fleet\",\"Bed\"]", asked.path("sheets").toString());
    assertEquals(0, asked.path("columns").size());
    assertEquals(422, sent("sheets", "take", file, "to:replace").statusCode());
    assertEquals(4, json(server.get("/api/records/sheets/tables/t1")).path("total").asInt());
    assertEquals("[\"serial\"]", heads(json(sent("sheets", "preview", file, "sheet:Bed"))));
    assertEquals(200, sent("sheets", "take", file, "to:replace;sheet:Bed").statusCode());
    assertEquals(List.of("W6-7"), first(json(server.get("/api/records/sheets/tables/t1"))));
  }

  @Test
  void aFileThatNoRecordHoldsIsRefusedWithTheReason() throws IOException {
    shelve("large");
    String row = "W6-" + "1".repeat(400) + ",12.5,410,B3\n";
    String file = "serial,lash [thou],hours [h],batch\n" + row.repeat(75_000);
    JsonNode problem = json(sent("large", "preview", file, "decimal:point")).at("/problems/0");
    assertTrue(
        problem.path("message").asText().startsWith("its rows come to 33 MB in the record"),
        problem::toString);
    HttpResponse<String> larger = sent("large", "preview", new byte[32_000_001], "decimal:point");
    assertEquals(413, larger.statusCode());
    assertEquals("The upload is larger than 32 MB.", json(larger).path("message").asText());
  }

  @Test
  void aFileIsLookedAtBeforeItIsTakenInAndLeavesNothingWhereItDoesNotFit() throws IOException {
    shelve("looked");
    String bad = "serial,lash [thou]\nW6-3,12.5\nW6-4,\"13,5\"\n";
    JsonNode found = json(sent("looked", "preview", bad, "decimal:point"));
    assertEquals("[\"serial\",\"lash\"]", heads(found));
    JsonNode problem = found.path("problems").path(0);
    assertEquals(3, problem.path("row").asInt(), "the heads are row 1");
    assertEquals(2, problem.path("column").asInt());
    assertTrue(problem.path("message").asText().contains("choose the decimal comma"));
    assertEquals(422, sent("looked", "take", bad, "decimal:point;to:replace").statusCode());
    assertEquals(4, json(server.get("/api/records/looked/tables/t1")).path("total").asInt());
    JsonNode text = json(sent("looked", "preview", bad, "kind:serial=text;decimal:comma"));
    assertEquals(1, text.path("problems").size(), "12.5 has a point where a comma was said");
  }

  private static String heads(JsonNode found) {
    List<String> heads = new ArrayList<>();
    found.path("columns").forEach(column -> heads.add(column.path("head").asText()));
    return MAPPER.valueToTree(heads).toString();
  }

  @Test
  void aFileTakenInIsOneStepThatKeepsWhatWasSaidOfItsColumns() throws IOException {
    shelve("taken");
    String file = "serial,lash [thou],hours [h],batch\nW6-3,12.5,410,B3\nW6-4,,420,B3\n";
    try (LivePage page = LivePage.open(server, "taken")) {
      page.await("sheet");
      assertTrue(json(sent("taken", "preview", file, "decimal:point")).path("appends").asBoolean());
      assertEquals(200, sent("taken", "take", file, "to:replace").statusCode());
      JsonNode changed = page.await("changed").path("cells").path(0);
      assertEquals(2, changed.path("table").path("rows").asInt());
      JsonNode columns = changed.path("source").path("columns");
      assertEquals("wear.lash / wear.hours", columns.path(4).path("formula").asText());
      assertEquals("bed run.csv", changed.path("source").path("from").path("file").asText());
      assertEquals(200, sent("taken", "take", file, "to:append").statusCode());
      assertEquals(
          4, page.await("changed").path("cells").path(0).path("table").path("rows").asInt());
      page.say("{'type':'undo'}");
      page.await("changed");
      page.say("{'type':'undo'}");
      JsonNode back = page.await("changed").path("cells").path(0);
      assertEquals(4, back.path("table").path("rows").asInt());
      assertFalse(back.path("source").has("from"));
      assertEquals(
          List.of("W6-2", "W6-10", "W6-9", "W6-1"),
          first(json(server.get("/api/records/taken/tables/t1"))));
    }
    HttpResponse<String> other = sent("taken", "take", "serial,miles\nW6-3,12\n", "to:append");
    assertEquals(
        "The columns of the file are not those of the table.",
        json(other).path("message").asText());
  }

  @Test
  void rowsPastedAreOneStepOfUndoAndReachEveryFigure() throws IOException {
    shelve("pasted");
    try (LivePage page = LivePage.open(server, "pasted")) {
      page.await("sheet");
      page.edit(
          "e1",
          "'op':'rows','cell':'t1','at':'/rows','value':{'from':3,'remove':1,'insert':"
              + "[['W6-1','21','500','B2'],['W6-4','9','100','B3']]}");
      // 21 thou on a metric sheet
      JsonNode changed = page.await("changed");
      assertEquals("0.5334", changed.path("figures").path("worst").path("value").asText());
      JsonNode table = changed.path("cells").path(0);
      assertEquals(5, table.path("table").path("rows").asInt(), changed::toString);
      assertFalse(table.path("source").has("rows"));
      page.say("{'type':'undo'}");
      JsonNode back = page.await("changed");
      assertEquals("0.4572", back.path("figures").path("worst").path("value").asText());
      assertEquals(4, back.path("cells").path(0).path("table").path("rows").asInt());
    }
  }
}
