package endfloat.engine;

/**
 * What runs the java clauses of every graph of this program. There is one, as there is one user
 * with one list of approved sources; whoever starts the program says which. Until then none run.
 */
public final class ProgramRunner {
  private static volatile CellRunner runner = CellRunner.NONE;

  private ProgramRunner() {}

  public static CellRunner get() {
    return runner;
  }

  public static void set(CellRunner chosen) {
    runner = chosen;
  }
}
