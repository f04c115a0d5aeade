package endfloat.child;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.clause.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The source of a clause compiled and run. */
class ClauseTest {
  private static final ClauseCompiler COMPILER = new ClauseCompiler();

  private final List<String> shown = new ArrayList<>();

  private static final Program.Read LASH =
      new Program.Read(
          "lash",
          "series",
          "Length",
          Map.of(
              "axes",
              List.of("tooth"),
              "labels",
              List.of(List.of("1"), List.of("4")),
              "values",
              List.of(
                  Map.of("si", 0.25, "gradient", Map.of("gauge", 1e-6)),
                  Map.of("si", 0.75, "gradient", Map.of("gauge", 1e-6)))));
  private static final Program.Read LOAD =
      new Program.Read("load", "quantity", "Mass", Map.of("si", 2.0));
  private static final Program.Give MEAN =
      new Program.Give("mean", "quantity", "Length", "m", List.of());

  private Map<String, Object> run(String source, Program.Give... gives) throws Exception {
    return run(source, List.of(), gives);
  }

  private Map<String, Object> run(String source, List<Program.Trial> trials, Program.Give... gives)
      throws Exception {
    Program program = new Program(source, List.of(LASH, LOAD), List.of(gives), trials);
    return new ClauseRun(program, COMPILER.compiled(ClauseText.of(program)))
        .run(new Kept(), () -> {});
  }

  private List<Problem> refused(String source) {
    Program program = new Program(source, List.of(LASH, LOAD), List.of(MEAN), List.of());
    return assertThrows(
            ClauseCompiler.RefusedException.class, () -> COMPILER.compiled(ClauseText.of(program)))
        .problems();
  }

  @Test
  void readsTypedSeriesAndGivesATypedValue() throws Exception {
    Map<String, Object> result =
        run("mean = lash.get(0).plus(lash.get(1)).over(2);\nprogress(0.5);", MEAN);
    assertEquals(List.of(Map.of("si", 0.5)), result.get("gives"));
    assertEquals(List.of("progress 0.5"), shown);
  }

  @Test
  void aMassWhereALengthIsWantedDoesNotCompile() {
    List<Problem> found = refused("int a = 1;\nmean = load;");
    assertEquals(1, found.size());
    assertEquals(2, found.get(0).line());
    assertEquals(8, found.get(0).from());
    assertEquals("A mass stands where a length is wanted.", found.get(0).message());
  }

  @Test
  void everyFaultStandsAtItsLine() {
    List<Problem> found = refused("mean = lash.get(0);\nmean = lach.get(0);\n\nint b = \"x\";");
    assertEquals(List.of(2, 4), found.stream().map(Problem::line).toList());
    assertEquals("There is no variable lach.", found.get(0).message());
    assertEquals("The source ends too early.", refused("if (true) {").get(0).message());
  }

  @Test
  void importsStandFirstAndKeepTheLines() throws Exception {
    run("// fit\nimport java.util.function.*;\nSupplier<String> s = () -> \"a\";\nshow(s.get());");
    assertEquals(List.of("text a"), shown);
    assertEquals(3, refused("import java.util.function.*;\n\nnothing();").get(0).line());
  }

  @Test
  void anExceptionIsToldInWordsAtItsLine() {
    Throwable thrown =
        assertThrows(
            IndexOutOfBoundsException.class, () -> run("mean = lash.get(0);\nlash.get(7);", MEAN));
    Problem problem = Failures.problem(thrown);
    assertEquals(2, problem.line());
    assertTrue(problem.message().startsWith("A place is asked for that the list does not have"));
  }

  @Test
  void whatTheHeadPromisesMustBeGiven() {
    Throwable thrown = assertThrows(RuntimeException.class, () -> run("int a = 1;", MEAN));
    assertEquals("The source ends without giving mean.", Failures.problem(thrown).message());
    thrown =
        assertThrows(
            RuntimeException.class,
            () -> run("mean = quantity(Math.log(-1), \"mm\", Length.class);", MEAN));
    assertEquals("mean is no finite number.", Failures.problem(thrown).message());
  }

  @Test
  void aTrialPutsAnotherNumberInOnePlaceAndShowsNothing() throws Exception {
    Map<String, Object> result =
        run(
            "mean = lash.get(0).plus(lash.get(1)).over(2);\nshow(\"run\");\n"
                + "if (lash.get(1).si() > 1.5) { throw new IllegalStateException(); }",
            List.of(new Program.Trial(0, 1, 1.25), new Program.Trial(0, 1, 2)),
            MEAN);
    List<?> trials = (List<?>) result.get("trials");
    assertEquals(List.of(0.5), trials.get(0));
    assertEquals(List.of(0.75), trials.get(1));
    assertNull(trials.get(2));
    assertEquals(1, shown.stream().filter("text run"::equals).count());
  }

  @Test
  void nothingStaysOfAnEarlierRun() throws Exception {
    String counts =
        "class Kept { static int runs; }\nKept.runs++;\n"
            + "mean = quantity(Kept.runs, \"mm\", Length.class);";
    assertEquals(List.of(Map.of("si", 1e-3)), run(counts, MEAN).get("gives"));
    assertEquals(List.of(Map.of("si", 1e-3)), run(counts, MEAN).get("gives"));
  }

  @Test
  void aTableGivesTheColumnsOfItsHead() throws Exception {
    Program.Give table = new Program.Give("curve", "table", "", "1", List.of("angle"));
    String source =
        "curve = Table.create(\"c\", DoubleColumn.create(\"angle\", 0, 90),"
            + " StringColumn.create(\"at\", \"a\", \"b\"));";
    Map<?, ?> given = (Map<?, ?>) ((List<?>) run(source, table).get("gives")).get(0);
    assertEquals(List.of(List.of(0.0, 90.0)), given.get("columns"));
    assertEquals(List.of("angle", "at"), given.get("heads"));
    Program.Give other = new Program.Give("curve", "table", "", "1", List.of("radius"));
    Throwable thrown = assertThrows(RuntimeException.class, () -> run(source, other));
    assertEquals(
        "The table curve has no column radius, which its head promises.", thrown.getMessage());
  }

  @Test
  void theServerIsNotInSight() {
    assertThrows(ClassNotFoundException.class, () -> Class.forName("endfloat.http.Server"));
  }

  private final class Kept implements Shown {
    @Override
    public void progress(double fraction) {
      shown.add("progress " + fraction);
    }

    @Override
    public void text(String text) {
      shown.add("text " + text);
    }

    @Override
    public void svg(String svg) {
      shown.add("svg " + svg);
    }

    @Override
    public void table(List<String> heads, List<List<String>> rows) {
      shown.add("table " + heads + rows);
    }
  }
}
