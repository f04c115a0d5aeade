package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of the page, and nothing but these. */
class PageFilesTest {
  private static final String MODULE = "/_static/crelt/1.0.6/index.js";
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
  void aModuleIsKeptForGoodBecauseItsPathNamesItsVersion() {
    HttpResponse<String> answer = server.get(MODULE);
    assertEquals(200, answer.statusCode());
    assertEquals(
        "text/javascript; charset=utf-8", answer.headers().firstValue("Content-Type").orElse(""));
    assertEquals(
        "max-age=31536000, immutable", answer.headers().firstValue("Cache-Control").orElse(""));
  }

  @Test
  void whatTheBrowserHasIsNotSentAgain() {
    String etag = server.get(MODULE).headers().firstValue("ETag").orElse("");
    HttpResponse<String> again = server.send(MODULE, b -> b.header("If-None-Match", etag));
    assertEquals(304, again.statusCode());
    assertEquals("", again.body());
  }

  @Test
  void textGoesOutPackedOnce() {
    HttpResponse<String> packed = server.send(MODULE, b -> b.header("Accept-Encoding", "gzip"));
    assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse(""));
    HttpResponse<String> plain = server.get(MODULE);
    assertTrue(plain.headers().firstValue("Content-Encoding").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/_static/../importmap.json",
        "/_static/..%2fimportmap.json",
        "/_static/%2e%2e/importmap.json",
        "/_static/..;/importmap.json",
        "/_static/crelt/1.0.6//index.js",
        "/_static/crelt/1.0.6/.%2findex.js",
        "/_static/",
        "/_static/crelt",
        "/css/../../endfloat/http/Server.class",
        "/css/%5c..%5cindex.html",
        "/fonts/%00",
        "/view/C:%5cwindows"
      })
  void noPathLeadsOutOfTheFolder(String path) {
    String answer =
        server.raw(
            "GET " + path + " HTTP/1.1",
            "Host: 127.0.0.1:" + server.port(),
            "Cookie: " + server.cookie());
    assertTrue(answer.startsWith("HTTP/1.1 404 ") || answer.startsWith("HTTP/1.1 400 "), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/compare",
        "/reference",
        "/reference/end_float",
        "/reference/tables/materials",
        "/sheet/w6-bevel-mesh",
        "/rerun/w6-bevel-mesh",
        "/how-a-figure-is-made"
      })
  void everyPageStandsInTheSameFrameAndNamesOnlyFilesThatAreThere(String path) {
    String html = page(path).body();
    assertFalse(html.contains("{{"), html);
    assertTrue(html.contains("<nav aria-label=\"Views\"><a "), html);
    List<String> files = named(html, "href=\"(/(?:css|view|state)/[^\"]+)\"");
    files.addAll(named(html, "src=\"([^\"]+)\""));
    assertTrue(files.size() > 6, files::toString);
    assertEquals(new HashSet<>(files).size(), files.size(), files::toString);
    files.forEach(file -> assertEquals(200, server.get(file).statusCode(), file));
  }

  @Test
  void aPageAsksAtOnceForTheModulesThatItsFirstModuleNeedsAndForNoLaterOnes() {
    String html = page("/sheet/w6-bevel-mesh").body();
    List<String> asked = named(html, "modulepreload\" href=\"([^\"]+)\"");
    // imported by the first module, by a module of that one, and only when something is edited
    assertTrue(asked.contains("/view/rail.js") && asked.contains("/view/verdict.js"));
    assertFalse(asked.contains("/view/pad.js") || asked.contains("/view/sheet-page.js"));
  }

  @ParameterizedTest
  @CsvSource({
    "/nothing, There is nothing at this address.",
    "/nothing/at/all, There is nothing at this address.",
    "/sheet/nothing, There is no record nothing on this shelf.",
    "/rerun/nothing, There is no record nothing on this shelf.",
    "/record/nothing/report, There is no record nothing on this shelf.",
    "/reference/end_flaot, There is no calculation end_flaot.",
    "/reference/tables/nothing, There is no table nothing.",
    "/css/nothing.css, There is no such file.",
  })
  void anUnknownAddressIsAnsweredWithAPageThatSaysSoAndTheWayOut(String path, String message) {
    HttpResponse<String> answer = page(path);
    assertEquals(404, answer.statusCode(), path);
    String html = answer.body();
    assertTrue(html.contains("<h1 class=\"f name\">" + message + "</h1>"), html);
    assertTrue(html.contains("href=\"/\">To the shelf</a>"), html);
    assertFalse(html.contains("{{"), html);
  }

  @Test
  void aBrowserThatWasNotLetInGetsAPageThatNeedsNoFilesAndLeadsNowhereElse() {
    HttpResponse<String> answer =
        server.bare("/sheet/w6-bevel-mesh", b -> b.header("Accept", "text/html"));
    assertEquals(401, answer.statusCode());
    String html = answer.body();
    assertTrue(html.contains("<h1 class=\"f name\">This browser has not been let in yet.</h1>"));
    assertTrue(html.contains("<style nonce=\"") && html.contains(".frame {"), html);
    assertFalse(html.contains("<nav") || html.contains("<script") || html.contains("stylesheet"));
  }

  @Test
  void aProgramThatAsksForNothingGetsJson() {
    HttpResponse<String> answer = server.get("/api/nothing");
    assertEquals(404, answer.statusCode());
    assertTrue(answer.body().startsWith("{\"message\":\"There is nothing"), answer.body());
    assertTrue(
        server.send("/api/nothing", b -> b.header("Accept", "text/html")).body().startsWith("{"));
  }

  @Test
  void aRecordThatCannotBeReadIsToldInThePlaceOfItsSheet() throws IOException {
    Files.writeString(server.shelf().resolve("half.json"), "{\"format\":\"endfloat-record\",");
    HttpResponse<String> answer = page("/sheet/half");
    assertEquals(400, answer.statusCode());
    assertTrue(
        answer.body().contains(">The record half cannot be read: line 1, column "), answer.body());
  }

  @Test
  void whatStandsInAnAddressIsNoMarkup() {
    String html = page("/reference/%3Cb%3E").body();
    assertTrue(html.contains("calculation &lt;b&gt;."), html);
  }

  private static HttpResponse<String> page(String path) {
    return server.send(path, b -> b.header("Accept", "text/html"));
  }

  private static List<String> named(String html, String pattern) {
    List<String> found = new ArrayList<>();
    Pattern.compile(pattern).matcher(html).results().forEach(one -> found.add(one.group(1)));
    return found;
  }

  @Test
  void theModuleMapIsTheSameEachTimeAndNamesEachModuleOnce() {
    String map = ImportMap.ofClassPath().element("n");
    assertEquals(map, ImportMap.ofClassPath().element("n"));
    assertEquals(2, map.split("\"@codemirror/state\"", -1).length);
  }
}
