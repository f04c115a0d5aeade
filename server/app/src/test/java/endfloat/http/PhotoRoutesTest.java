package endfloat.http;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.record.CameraPhoto;
import endfloat.record.Photographs;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Photographs over HTTP: kept as they came, given out with care. */
class PhotoRoutesTest {
  private static final String PHOTOS = "/api/records/w6-bevel-mesh/photos";
  private static RunningServer server;

  @BeforeAll
  static void start() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpResponse<String> send(byte[] photo) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    String head =
        "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"../../a.svg\"\r\n\r\n";
    body.writeBytes(head.getBytes(StandardCharsets.US_ASCII));
    body.writeBytes(photo);
    body.writeBytes("\r\n--x--\r\n".getBytes(StandardCharsets.US_ASCII));
    return server.send(
        PHOTOS,
        b ->
            b.header("Content-Type", "multipart/form-data; boundary=x")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
  }

  private static String kept(byte[] photo) throws IOException {
    HttpResponse<String> answer = send(photo);
    assertEquals(201, answer.statusCode(), answer.body());
    return new ObjectMapper().readTree(answer.body()).path("photo").asText();
  }

  @Test
  void aPhotographIsKeptByItsHashAndUntouched() throws IOException {
    String name = kept(CameraPhoto.jpeg());
    assertTrue(name.matches("[0-9a-f]{64}\\.jpg"), name);
    assertEquals(name, kept(CameraPhoto.jpeg()), "the same photograph is kept once");
    Path file = server.shelf().resolve("w6-bevel-mesh.files").resolve(name);
    assertArrayEquals(CameraPhoto.jpeg(), Files.readAllBytes(file));
    HttpResponse<String> given = server.get(PHOTOS + "/" + name);
    assertEquals("image/jpeg", given.headers().firstValue("Content-Type").orElse(""));
    assertEquals("nosniff", given.headers().firstValue("X-Content-Type-Options").orElse(""));
    String policy = given.headers().firstValue("Content-Security-Policy").orElse("");
    assertTrue(policy.contains("sandbox"), policy);
  }

  @Test
  void whatIsExportedDoesNotSayWhereItWasTaken() throws IOException {
    String name = kept(CameraPhoto.jpeg());
    assertTrue(server.get(PHOTOS + "/" + name).body().contains(CameraPhoto.PLACE));
    assertFalse(server.get(PHOTOS + "/" + name + "?export").body().contains(CameraPhoto.PLACE));
  }

  @Test
  void whatIsNoPhotographIsRefusedAndNothingKept() throws IOException {
    byte[] drawing = "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8);
    assertEquals(422, send(drawing).statusCode());
    byte[] broken = Arrays.copyOf(CameraPhoto.jpeg(), 300);
    assertEquals(422, send(broken).statusCode());
    assertEquals(413, send(new byte[Photographs.MOST_BYTES + 1]).statusCode());
    assertEquals(404, server.get(PHOTOS + "/" + "0".repeat(64) + ".jpg").statusCode());
    assertEquals(404, server.get(PHOTOS + "/..%2Fw6-bevel-mesh.json").statusCode());
  }

  @Test
  void aPhotographAlteredOnDiskIsNotPassedOffAsTheOneKept() throws IOException {
    byte[] camera = CameraPhoto.jpeg();
    camera[camera.length - 1] ^= 1;
    String name = kept(camera);
    Files.write(server.shelf().resolve("w6-bevel-mesh.files").resolve(name), CameraPhoto.jpeg());
    HttpResponse<String> given = server.get(PHOTOS + "/" + name);
    assertEquals(422, given.statusCode());
    assertTrue(given.body().contains("altered"), given.body());
  }
}
