package endfloat.kernel;

import endfloat.engine.ProgramRunner;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The java clauses of the records that ship run in tests as in the program; no test sees what the
 * user of this machine has approved. Nothing starts before a test has such a clause.
 */
public final class ShippedJavaRuns implements BeforeAllCallback {
  private static final Path NOBODY = Path.of("target", "nobody's-state");

  @Override
  public void beforeAll(ExtensionContext context) {
    synchronized (ShippedJavaRuns.class) {
      if (!(ProgramRunner.get() instanceof JavaOnDemand)) {
        ProgramRunner.set(new JavaOnDemand(NOBODY, KernelLimits.USUAL, false));
      }
    }
  }
}
