package endfloat.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.definition.Progress;
import endfloat.engine.CellRunner;
import endfloat.engine.Give;
import endfloat.engine.Value;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import jdk.jshell.JShell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long a java clause takes, by server/benchmarks/java-clause. */
class JavaRunTimes {
  private static final int RUNS = 200;

  @TempDir Path folder;

  @Test
  void firstWithASpareAndNext() throws IOException {
    double[] first = new double[5];
    double[] next = new double[RUNS];
    double[] edited = new double[RUNS];
    long memory = 0;
    for (int i = 0; i < first.length; i++) {
      try (JavaRuns runs = new JavaRuns(new Approvals(folder), KernelLimits.USUAL, true)) {
        runs.prepare().join();
        first[i] = milliseconds(runs, 1, i);
        KernelProcess used = runs.kernels().take();
        memory = resident(used.pid());
        runs.kernels().giveBack(used, true);
        for (int j = 0; j < RUNS && i == first.length - 1; j++) {
          next[j] = milliseconds(runs, j + 2, i);
        }
        for (int j = 0; j < RUNS && i == first.length - 1; j++) {
          edited[j] = milliseconds(runs, 1, 1000 + j);
        }
      }
    }
    print("first result with a warmed spare", first);
    print("next result, other values", next);
    print("next result, source edited", edited);
    double[] firstOfPeer = new double[5];
    double[] nextOfPeer = new double[20];
    remoteShell(firstOfPeer, nextOfPeer);
    print("remote shell of the JDK, first result", firstOfPeer);
    print("remote shell of the JDK, next result", nextOfPeer);
    System.out.printf(Locale.ROOT, "memory of a warmed kernel p50 %d MiB%n", memory / 1024);
  }

  /** The peer: a shell of the JDK in a process of its own, as it comes. */
  private static void remoteShell(double[] first, double[] next) {
    for (int i = 0; i < first.length; i++) {
      long begun = System.nanoTime();
      try (JShell shell = JShell.create()) {
        assertEquals("2.0", shell.eval("1.0 * 2").get(0).value());
        first[i] = (System.nanoTime() - begun) / 1e6;
        for (int j = 0; j < next.length; j++) {
          long again = System.nanoTime();
          assertEquals("2.0", shell.eval("double x" + j + " = 1.0 * 2;").get(0).value());
          next[j] = (System.nanoTime() - again) / 1e6;
        }
      }
    }
  }

  private static double milliseconds(JavaRuns runs, double length, int edit) {
    String source = "double edit = " + edit + ";\nout = length.times(2);";
    runs.approvals().allow(Approvals.hash(source));
    CellRunner.Job job =
        new CellRunner.Job(
            source,
            List.of(
                new CellRunner.Read(
                    "length",
                    new Kind.Quantity(UnitTable.find("m").dimension()),
                    Value.Scalar.exact(length))),
            List.of(
                new Give(
                    "out", "out", Give.Form.QUANTITY, Optional.of(UnitTable.find("m")), List.of())),
            List.of());
    long begun = System.nanoTime();
    CellRunner.Outcome outcome = runs.run(job, Progress.IGNORED);
    double took = (System.nanoTime() - begun) / 1e6;
    assertEquals(2 * length, outcome.given().get(0).numbers()[0]);
    return took;
  }

  private static void print(String what, double[] times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%s p50 %.1f ms, p95 %.1f ms%n",
        what,
        sorted[sorted.length / 2],
        sorted[(int) (0.95 * (sorted.length - 1))]);
  }

  private static long resident(long pid) throws IOException {
    return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
        .filter(line -> line.startsWith("VmRSS"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
        .findFirst()
        .orElse(0);
  }
}
