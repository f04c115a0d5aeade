package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files of the page, and nothing but these. */
class PageFilesTest {
  private static final String MODULE = "/_static/crelt/1.0.6/index.js";
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start();
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

  @Test
  void theModuleMapIsTheSameEachTimeAndNamesEachModuleOnce() {
    String map = ImportMap.ofClassPath().element("n");
    assertEquals(map, ImportMap.ofClassPath().element("n"));
    assertEquals(2, map.split("\"@codemirror/state\"", -1).length);
  }
}
