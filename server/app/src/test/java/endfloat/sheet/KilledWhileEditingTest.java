package endfloat.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KilledWhileEditingTest {
  /** The short form of {@code src/test/scripts/kill-test}. */
  @Test
  void losesNothingAcknowledgedOfFiveKills(@TempDir Path folder)
      throws IOException, InterruptedException {
    String done = KillAtRandom.run(folder, 5, 20260512);
    assertTrue(done.contains("none lost"), done);
  }
}
