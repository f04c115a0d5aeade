package endfloat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The saved figures of all records come out bit for bit under another JDK, where one is installed
 * beside the one that runs the tests.
 */
class AgreeElsewhereTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  @Test
  void everyFigureIsTheSameUnderAnotherJdk() throws Exception {
    Optional<Path> other = otherJdk();
    assumeTrue(other.isPresent(), "no other JDK lies beside this one");
    Path out = Files.createTempFile("agree", ".json");
    try {
      Process process =
          new ProcessBuilder(
                  other.get().resolve("bin/java").toString(),
                  "-cp",
                  System.getProperty(
                      "surefire.test.class.path", System.getProperty("java.class.path")),
                  "endfloat.cli.Endfloat",
                  "agree",
                  "--exact",
                  "--json",
                  NOTEBOOKS.toString())
              .redirectOutput(out.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      assertEquals(true, process.waitFor(3, TimeUnit.MINUTES), "still running");
      JsonNode answer = new ObjectMapper().readTree(out.toFile());
      for (JsonNode record : answer.path("records")) {
        assertEquals("[]", record.path("differences").toString(), record.path("record").asText());
      }
      try (Stream<Path> files = Files.list(NOTEBOOKS)) {
        long records = files.filter(file -> file.toString().endsWith(".json")).count();
        assertEquals(records, answer.path("records").size(), other.get().toString());
      }
    } finally {
      Files.deleteIfExists(out);
    }
  }

  /** A JDK in the folder of this one that can run the program and is of another release. */
  private static Optional<Path> otherJdk() throws IOException {
    Path here = Path.of(System.getProperty("java.home")).toRealPath();
    List<Path> found;
    try (Stream<Path> beside = Files.list(here.getParent())) {
      found =
          beside
              .filter(home -> Files.isExecutable(home.resolve("bin/java")))
              .filter(home -> release(home) > 17 && release(home) != release(here))
              .sorted()
              .toList();
    }
    return found.stream().findFirst();
  }

  private static int release(Path home) {
    Properties said = new Properties();
    try (InputStream in = Files.newInputStream(home.resolve("release"))) {
      said.load(in);
      String version = said.getProperty("JAVA_VERSION", "0").replace("\"", "");
      return Integer.parseInt(version.replaceFirst("[^0-9].*", ""));
    } catch (IOException | NumberFormatException e) {
      return 0;
    }
  }
}
