package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Runs the tests of the page's state modules, which hold no DOM, where there is a Node; nobody
 * needs one to use or to build Endfloat.
 */
class StateModulesTest {
  @Test
  void theStateOfThePageKeepsItsPromises() throws Exception {
    assumeTrue(
        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
            .anyMatch(folder -> new File(folder, "node").canExecute()),
        "TESTS OF THE PAGE'S STATE SKIPPED: no node on the PATH");
    Process node =
        new ProcessBuilder("node", "--test", "tests")
            .directory(Path.of("../../web").toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, node.waitFor(), said);
  }
}
