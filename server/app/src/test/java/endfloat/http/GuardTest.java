package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in, and to what. */
class GuardTest {
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
  void theLinkBecomesACookieThatScriptsAndOtherSitesCannotUse() {
    HttpResponse<String> answer = server.bare("/sheet/w6?token=" + RunningServer.TOKEN, b -> b);
    assertEquals(303, answer.statusCode());
    assertEquals("/sheet/w6", answer.headers().firstValue("Location").orElse(""));
    assertEquals(
        server.cookie() + "; Path=/; HttpOnly; SameSite=Strict",
        answer.headers().firstValue("Set-Cookie").orElse(""));
  }

  @Test
  void theLinkLeadsToThisServerOnly() {
    String answer =
        server.raw(
            "GET //evil.example/?token=" + RunningServer.TOKEN + " HTTP/1.1",
            "Host: 127.0.0.1:" + server.port());
    assertFalse(answer.contains("Location: //"), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/", "/sheet/x", "/api/shelf", "/api/nothing", "/_static/crelt/1.0.6/index.js"})
  void withoutTheKeyNothingIsServed(String path) {
    HttpResponse<String> answer = server.bare(path, b -> b);
    assertEquals(401, answer.statusCode());
    assertEquals(
        "{\"message\":\"This browser has not been let in yet.\",\"wayOut\":\"Open the link that"
            + " endfloat printed when it started; it holds the key.\"}",
        answer.body());
  }

  @Test
  void aPersonWithoutTheKeyReadsAPageThatSaysWhatToDo() {
    HttpResponse<String> answer = server.bare("/", b -> b.header("Accept", "text/html"));
    assertEquals(401, answer.statusCode());
    assertTrue(answer.body().contains("Open the link that endfloat printed"), answer.body());
  }

  @Test
  void aWrongKeyIsNoKey() {
    assertEquals(401, server.bare("/?token=key-of-the-tess", b -> b).statusCode());
    assertEquals(401, server.bare("/?token=", b -> b).statusCode());
    assertEquals(
        401,
        server
            .bare("/", b -> b.header("Cookie", "endfloat-" + server.port() + "=wrong"))
            .statusCode());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "evil.example",
        "evil.example:PORT",
        "127.0.0.1",
        "127.0.0.1:1",
        "127.0.0.1.evil.example:PORT"
      })
  void aForeignHostNameIsRefusedOnEveryAddress(String host) {
    for (String path :
        new String[] {"/", "/api/shelf", "/_static/crelt/1.0.6/index.js", "/favicon.svg"}) {
      String answer =
          server.raw(
              "GET " + path + " HTTP/1.1",
              "Host: " + host.replace("PORT", String.valueOf(server.port())),
              "Cookie: " + server.cookie());
      assertTrue(answer.startsWith("HTTP/1.1 403 "), answer);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "localhost", "LOCALHOST", "[::1]", "bench.example"})
  void theConfiguredHostNamesAreAnswered(String host) {
    String answer =
        server.raw(
            "GET /_static/crelt/1.0.6/index.js HTTP/1.1",
            "Host: " + host + ":" + server.port(),
            "Cookie: " + server.cookie());
    assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"http://evil.example", "null", "https://127.0.0.1:PORT", "http://127.0.0.1"})
  void aForeignOriginIsRefused(String origin) {
    String given = origin.replace("PORT", String.valueOf(server.port()));
    assertEquals(
        403,
        server.send("/_static/crelt/1.0.6/index.js", b -> b.header("Origin", given)).statusCode());
  }

  @Test
  void theOwnOriginIsAnswered() {
    assertEquals(
        200,
        server
            .send(
                "/_static/crelt/1.0.6/index.js",
                b -> b.header("Origin", "http://localhost:" + server.port()))
            .statusCode());
  }

  @Test
  void anotherSiteMayLinkHereButNotLoadFromHere() {
    String path = "/_static/crelt/1.0.6/index.js";
    assertEquals(
        403, server.send(path, b -> b.header("Sec-Fetch-Site", "cross-site")).statusCode());
    assertEquals(
        200,
        server
            .send(
                path,
                b -> b.header("Sec-Fetch-Site", "cross-site").header("Sec-Fetch-Mode", "navigate"))
            .statusCode());
  }

  @Test
  void everyAnswerCarriesTheHardeningHeaders() {
    HttpResponse<String> answer = server.bare("/nowhere", b -> b);
    assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
    assertEquals("no-referrer", answer.headers().firstValue("Referrer-Policy").orElse(""));
    assertEquals("no-store", answer.headers().firstValue("Cache-Control").orElse(""));
    assertEquals(
        "default-src 'none'; frame-ancestors 'none'",
        answer.headers().firstValue("Content-Security-Policy").orElse(""));
    assertTrue(answer.headers().firstValue("Server").isEmpty());
  }

  @Test
  void aMalformedRequestGetsNoStackTrace() {
    for (String line :
        new String[] {"GET / HTTP/9.9", "NONSENSE", "GET /%zz HTTP/1.1", "GET /\0 HTTP/1.1"}) {
      String answer = server.raw(line, "Host: 127.0.0.1:" + server.port());
      assertFalse(answer.contains("\tat ") || answer.contains("Exception"), answer);
    }
  }
}
