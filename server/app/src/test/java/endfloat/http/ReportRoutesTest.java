package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.report.pdf.Stop;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A record on paper over HTTP: report and blank form, as pages and as PDF. */
class ReportRoutesTest {
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(server.address(path)))
            .header("Cookie", server.cookie())
            .build();
    return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
  }

  @Test
  void theReportComesAsPdfWithTheFileOfTheShelfInside() throws Exception {
    HttpResponse<byte[]> answer = bytes("/record/w6-bevel-mesh/report.pdf?paper=letter");
    assertEquals(200, answer.statusCode());
    assertEquals("application/pdf", answer.headers().firstValue("Content-Type").orElse(""));
    String named = answer.headers().firstValue("Content-Disposition").orElse("");
    assertEquals("inline; filename=\"w6-bevel-mesh.pdf\"", named);
    try (PDDocument document = Loader.loadPDF(answer.body())) {
      assertEquals(792, document.getPage(0).getMediaBox().getHeight(), 0.5);
      var inside = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
      assertArrayEquals(
          Files.readAllBytes(server.shelf().resolve("w6-bevel-mesh.json")),
          inside.get("w6-bevel-mesh.json").getEmbeddedFile().toByteArray());
    }
  }

  /** What is made here never ends by itself. */
  @Test
  void aPdfThatNobodyWaitsForIsGivenUp() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch givenUp = new CountDownLatch(1);
    Javalin slow =
        Javalin.create(
            config -> {
              config.startup.showJavalinBanner = false;
              config.jetty.host = "127.0.0.1";
              config.jetty.port = 0;
              config.routes.get(
                  "/slow",
                  ctx -> PaperAnswer.pdf(ctx, "a.pdf", stop -> endless(stop, begun, givenUp)));
            });
    slow.start();
    try {
      try (Socket socket = new Socket("127.0.0.1", slow.port())) {
        String request = "GET /slow HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(begun.await(60, TimeUnit.SECONDS), "nothing was begun");
      }
      assertTrue(givenUp.await(60, TimeUnit.SECONDS), "it is still being made");
    } finally {
      slow.stop();
    }
  }

  private static byte[] endless(Stop stop, CountDownLatch begun, CountDownLatch givenUp) {
    begun.countDown();
    while (!stop.isAsked()) {
      LockSupport.parkNanos(1_000_000);
    }
    givenUp.countDown();
    throw new Stop.StoppedException();
  }

  @Test
  void theFormComesWithoutLimitsUnlessTheyAreAskedFor() throws Exception {
    String plain = server.get("/record/w6-bevel-mesh/form").body();
    assertTrue(plain.contains("End float of the vertical shaft"), plain);
    assertTrue(!plain.contains("class=\"asked-limit\""));
    String limits = server.get("/record/w6-bevel-mesh/form?limits=1").body();
    assertTrue(limits.contains("class=\"asked-limit\""));
    HttpResponse<byte[]> pdf = bytes("/record/w6-bevel-mesh/form.pdf?limits=1");
    try (PDDocument document = Loader.loadPDF(pdf.body())) {
      String words = new PDFTextStripper().getText(document);
      assertTrue(words.contains("Limit: new 22.030 to 22.045"), words);
      assertTrue(words.contains("End float of the vertical shaft"), words);
    }
  }

  @Test
  void aServedPageLeadsToItsPdfAndAFileToKeepDoesNot() {
    String served = server.get("/record/w6-bevel-mesh/report").body();
    assertTrue(served.contains("href=\"/record/w6-bevel-mesh/report.pdf\""));
    String kept = server.get("/record/w6-bevel-mesh/report?download").body();
    assertTrue(!kept.contains("report.pdf"), "a file of itself cannot lead to a server");
  }

  @Test
  void aRecordThatIsNotThereIsSaidSo() {
    assertEquals(404, server.get("/record/nothing/report.pdf").statusCode());
    assertEquals(404, server.get("/record/nothing/form").statusCode());
  }
}
