package endfloat.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import endfloat.engine.CellRunner;
import endfloat.engine.Clause;
import endfloat.engine.ClauseProblem;
import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.GraphSource;
import endfloat.engine.HeavyWork;
import endfloat.engine.Judgement;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Java clauses in the graph of a record, run by real kernels. */
class JavaRunsTest {
  private static final String INPUTS =
      "length [mm] = 200 mm ± 0.2 mm\nwidth [mm] = 50 mm ± 0.1 mm\nnumber = 3";

  @TempDir static Path folder;
  private static JavaRuns runs;

  @BeforeAll
  static void starts() {
    runs = new JavaRuns(new Approvals(folder), new KernelLimits(30, 128), true);
    runs.prepare();
  }

  @AfterAll
  static void ends() {
    runs.close();
  }

  private static GraphSource record(String gives, String source, String after) {
    return new GraphSource(
        List.of(
            new Clause.Working("w1", "1", INPUTS),
            new Clause.Java("c7", "2", gives, source),
            new Clause.Working("w2", "3", after)),
        List.of(),
        GraphSettings.STANDARD);
  }

  private static ValueGraph ran(String gives, String source, String after) {
    runs.approvals().approve(source);
    return ValueGraph.of(record(gives, source, after), runs);
  }

  private static String problem(String source) {
    ValueGraph graph = ran("out [mm]", source, "");
    ClauseProblem problem = graph.problems("c7").get(0);
    String place = problem.at().equals("/text") ? problem.problem().span().line() + ": " : "";
    return place + problem.problem().message();
  }

  /** By the law of propagation: u = sqrt((b u_l)^2 + (l u_b)^2), JCGM 100, 5.1.2. */
  @Test
  void aClauseStandsBetweenWorkingsAndItsUncertaintyIsCarried() {
    ValueGraph graph =
        ran(
            "area [mm2]",
            "area = length.times(width).as(Area.class);",
            "double_area [mm2] = 2 * area\nback [mm] = area / width");
    Figure area = graph.figure("area").orElseThrow();
    assertEquals(List.of(), graph.problems("c7"));
    assertEquals(0.01, area.si(), 1e-15);
    assertEquals(Math.hypot(0.05 * 1e-4, 0.2 * 0.5e-4), area.standardUncertainty(), 1e-12);
    assertEquals(0.02, graph.figure("double_area").orElseThrow().si(), 1e-15);
    // the width cancels: what is left is the uncertainty of the length
    assertEquals(1e-4, graph.figure("back").orElseThrow().standardUncertainty(), 1e-9);
    assertTrue(
        graph.javaRun("c7").orElseThrow().ran().orElseThrow().carried().contains("2 numbers"));
    assertEquals(List.of("length", "width"), graph.javaRun("c7").orElseThrow().reads());
    assertFalse(graph.figures().containsKey("c7.run"));
  }

  /** JavaHistoryTest has more of them, of a runner that only adds. */
  @Test
  void whateverWasTypedBeforeTheFiguresAreThoseOfTheLastTextBitForBit() {
    String last = "area = length.times(width).as(Area.class);";
    String other = "area = width.times(width).times(number.si()).as(Area.class);";
    String after = "part = area / length ^ 2";
    ValueGraph lived = ran("area [mm2], length_2 [mm]", other + " length2 = width;", after);
    lived.update(record("area [mm2]", other, after));
    lived.update(new Clause.Working("w1", "1", "length [mm] = 7 mm\nwidth [mm] = 50 mm"));
    runs.approvals().approve(other);
    lived.again("c7");
    lived.update(record("area [mm2]", "area = lenght;", after));
    runs.approvals().approve(last);
    lived.update(record("area [mm2]", last, after));
    ValueGraph anew = ValueGraph.of(record("area [mm2]", last, after), runs);
    assertEquals(Figure.State.FRESH, anew.figure("part").orElseThrow().state());
    assertEquals(anew.figures(), lived.figures());
    assertEquals(anew.problems("c7"), lived.problems("c7"));
  }

  @Test
  void whatIsNoSmoothFunctionCarriesNoUncertaintyAndSaysSo() {
    ValueGraph graph =
        ran(
            "rounded [mm]",
            "rounded = quantity(Math.rint(length.in(\"mm\") * 10) / 10, \"mm\", Length.class);",
            "");
    Figure rounded = graph.figure("rounded").orElseThrow();
    assertEquals(0.2, rounded.si(), 1e-12);
    assertEquals(0, rounded.standardUncertainty());
    assertEquals(
        "Uncertainty is not carried: it is no smooth function of what is read.",
        rounded.hints().get(0).message());
    graph = ran("lot [mm]", "lot = length.times(1 + 1e-6 * Math.random());", "");
    assertTrue(graph.figure("lot").orElseThrow().hints().get(0).message().contains("second run"));
  }

  /** ISO 14253-1: conformity is proven with the uncertainty, so not where it is not known. */
  @Test
  void noVerdictIsProvenByWhatCarriesNoUncertainty() {
    String rounds =
        "rounded = quantity(Math.rint(length.in(\"mm\") * 10) / 10, \"mm\", Length.class);";
    String after =
        "twice [mm] = 2 * rounded + width\nlimit twice: at most 500 mm\n"
            + "limit twice: at most 600 mm (condition: \"hot\", rule: \"simple\")\nlimit width: at most 60 mm\n"
            + "none [mm] = rounded - rounded";
    ValueGraph graph = ran("rounded [mm]", rounds, after);
    Figure twice = graph.figure("twice").orElseThrow();
    assertEquals(
        List.of(Verdict.NOT_PROVEN, Verdict.WITHIN),
        twice.judgements().stream().map(Judgement::verdict).toList());
    assertTrue(Double.isNaN(twice.judgements().get(0).probability()));
    assertEquals(
        "Its uncertainty is not whole: it rests on rounded, whose own is not carried.",
        twice.hints().get(0).message());
    assertEquals(Verdict.WITHIN, graph.figure("width").orElseThrow().judgements().get(0).verdict());
    String smooth = "rounded = length;";
    runs.approvals().approve(smooth);
    graph.update(record("rounded [mm]", smooth, after));
    twice = graph.figure("twice").orElseThrow();
    assertEquals(Verdict.WITHIN, twice.judgements().get(0).verdict());
    assertEquals(List.of(), twice.hints());
    graph.update(record("rounded [mm]", rounds, after));
    assertEquals(
        Verdict.NOT_PROVEN, graph.figure("twice").orElseThrow().judgements().get(0).verdict());
  }

  @Test
  void seriesTablesTextsTruthsAndChartsAreGivenAndShown() {
    ValueGraph graph =
        ran(
            "twice [mm]: series, curve: table(at [deg], lash [mm]), words: text, holds: truth, round: chart",
            "twice = MeasuredSeries.list(List.of(length, length.times(2)));\n"
                + "curve = Table.create(\"c\", DoubleColumn.create(\"at\", 0, 90),"
                + " DoubleColumn.create(\"lash\", 1, 3));\n"
                + "words = \"loose\"; holds = number.si() > 2; round = \"<svg/>\";\n"
                + "System.out.println(\"printed\"); show(length);",
            "widest [mm] = max(curve.lash)\nlast [mm] = max(twice)");
    assertEquals(List.of(), graph.problems("c7"));
    assertEquals(0.003, graph.figure("widest").orElseThrow().si(), 1e-15);
    assertEquals(0.4, graph.figure("last").orElseThrow().si(), 1e-15);
    assertEquals(new Value.Words("loose"), graph.figure("words").orElseThrow().value().get());
    assertEquals(new Value.Truth(true), graph.figure("holds").orElseThrow().value().get());
    List<String> sorts =
        graph.javaRun("c7").orElseThrow().ran().orElseThrow().shown().stream()
            .map(s -> s.sort())
            .toList();
    assertEquals(List.of("text", "table", "svg"), sorts);
    // once, though it was run again for the uncertainty
    assertEquals(
        "printed\n0.2 m\n",
        graph.javaRun("c7").orElseThrow().ran().orElseThrow().shown().get(0).text());
  }

  /** Values of check A06-steel-hollow of press_fit: the Lame equations. */
  @Test
  void theFieldsOfARecordOfResultsAreReadTypedAndWithTheirUncertainty() {
    String source =
        "load = joint.pressure.times(area).as(Force.class); hoop = joint.shaftHoopBore;";
    runs.approvals().approve(source);
    String lines =
        "fit [mm] = 0.06 mm \u00b1 0.002 mm\narea [mm2] = 10 mm^2\njoint = press_fit(60 mm, fit,"
            + " hub_outside: 90 mm, length: 50 mm, modulus_hub: 207000 MPa, poisson_hub: 0.292,"
            + " modulus_shaft: 207000 MPa, poisson_shaft: 0.292, shaft_bore: 30 mm,"
            + " friction: 0.15)\nsame [N] = joint.pressure * area";
    Clause java = new Clause.Java("c7", "2", "load [N], hoop [MPa]", source);
    List<Clause> clauses = List.of(new Clause.Working("w1", "1", lines), java);
    ValueGraph graph =
        ValueGraph.of(new GraphSource(clauses, List.of(), GraphSettings.STANDARD), runs);
    assertEquals(List.of(), graph.problems("w1"));
    assertEquals(List.of(), graph.problems("c7"));
    Figure load = graph.figure("load").orElseThrow();
    assertEquals(485.15625, load.si(), 1e-6);
    assertEquals(-129.375e6, graph.figure("hoop").orElseThrow().si(), 1);
    double u = graph.figure("same").orElseThrow().standardUncertainty();
    assertEquals(u, load.standardUncertainty(), 1e-6 * u);
    assertTrue(u > 1, "there is some to be carried");
    // of the many fields those two alone that the source names
    String carried = graph.javaRun("c7").orElseThrow().ran().orElseThrow().carried();
    assertTrue(carried.contains("2 numbers"), carried);
    graph.update(new Clause.Java("c7", "2", "load [N]", "load = joint.torque;"));
    runs.approvals().approve("load = joint.torque;");
    graph.again("c7");
    assertEquals(
        "A torque stands where a force is wanted.",
        graph.problems("c7").get(0).problem().message());
  }

  @Test
  void errorsStandAtTheirLineInWords() {
    assertEquals("2: There is no variable lenght.", problem("int a = 1;\nout = lenght;"));
    assertEquals(
        "3: A place is asked for that the list does not have (Index 5 out of bounds for length 0).",
        problem("\n\nList.of().get(5);\nout = length;"));
    assertEquals("1: A dimensionless stands where a length is wanted.", problem("out = number;"));
    assertEquals(
        "1: Incompatible types: String cannot be converted to int.", problem("int i = \"\";"));
    assertEquals("The source ends without giving out.", problem("int i = 1;"));
  }

  @Test
  void whatIsNotApprovedIsNotRunAndAChangedSourceAsksAgain() {
    Path mark = folder.resolve("ran");
    String source =
        "java.nio.file.Files.createFile(java.nio.file.Path.of(\"" + mark + "\")); out = length;";
    ValueGraph graph = ValueGraph.of(record("out [mm]", source, "after [mm] = out"), runs);
    assertEquals(Figure.State.WAITING, graph.figure("out").orElseThrow().state());
    assertEquals(Figure.State.WAITING, graph.figure("after").orElseThrow().state());
    assertTrue(graph.problems("c7").get(0).problem().message().contains("not been approved"));
    assertFalse(Files.exists(mark));
    runs.approvals().approve(source);
    graph.again("c7");
    assertEquals(Figure.State.FRESH, graph.figure("after").orElseThrow().state());
    assertTrue(Files.exists(mark));
    graph.update(record("out [mm]", source + " ", "after [mm] = out"));
    assertEquals(Figure.State.WAITING, graph.figure("out").orElseThrow().state());
  }

  @Test
  void approvalsAreKeptForThisUserAloneOutsideTheRecord() throws Exception {
    Path own = folder.resolve("own");
    new Approvals(own).approve("a");
    assertTrue(new Approvals(own).isApproved("a"));
    assertFalse(new Approvals(own).isApproved("a "));
    assertEquals(
        "rw-------",
        java.nio.file.attribute.PosixFilePermissions.toString(
            Files.getPosixFilePermissions(own.resolve("approved-java.txt"))));
  }

  @Test
  void aKernelThatDiesIsReportedAndTheNextRunIsWell() {
    assertEquals("The process of the run has ended with the code 7.", problem("System.exit(7);"));
    assertEquals(
        "The run needed more memory than the 128 MB that it may take, or ended itself with the code 3.",
        problem(
            "byte[][] all = new byte[1000][]; for (int i = 0; i < 1000; i++)"
                + " { all[i] = new byte[10_000_000]; } out = length;"));
    assertEquals(0.2, ran("out [mm]", "out = length;", "").figure("out").orElseThrow().si(), 1e-15);
  }

  @Test
  void aKernelThatLivesAndDoesNotAnswerIsEnded() {
    assertTrue(
        problem(
                "new ProcessBuilder(\"kill\", \"-STOP\", String.valueOf(ProcessHandle.current().pid()))"
                    + ".start().waitFor(); out = length;")
            .contains("no longer answered"));
    assertEquals(0.2, ran("out [mm]", "out = length;", "").figure("out").orElseThrow().si(), 1e-15);
  }

  @Test
  void aKernelThatWorksForLongIsLeftToIt() {
    String source =
        "long end = System.nanoTime() + 8_000_000_000L; while (System.nanoTime() < end) { } out = length;";
    assertEquals(0.2, ran("out [mm]", source, "").figure("out").orElseThrow().si(), 1e-15);
  }

  @Test
  void aTightLoopIsStoppedThoughItListensToNothing() throws Exception {
    String source = "progress(0.25); while (true) { }";
    runs.approvals().approve(source);
    ValueGraph graph = new ValueGraph(Catalogue.library(), runs);
    graph.leaveHeavyWork();
    graph.update(record("out [mm]", source, ""));
    assertEquals(Figure.State.WORKING, graph.figure("out").orElseThrow().state());
    HeavyWork work = graph.takeHeavyWork().get(0);
    CompletableFuture<Void> running = new CompletableFuture<>();
    CompletableFuture<Void> done =
        CompletableFuture.runAsync(() -> work.run(() -> running.complete(null)));
    running.get(60, TimeUnit.SECONDS);
    work.stop();
    done.get(60, TimeUnit.SECONDS);
    graph.finished(work);
    assertEquals("The run was stopped.", graph.problems("c7").get(0).problem().message());
  }

  private static CellRunner.Help help(String source) {
    String lines =
        "length [mm] = 1 mm\nlash_cold [mm] = 2 mm\njoint = chain_worst_case([link(10 mm, tolerance:"
            + " 0.1 mm)])";
    ValueGraph graph =
        ValueGraph.of(
            new GraphSource(
                List.of(
                    new Clause.Working("w1", "1", lines),
                    new Clause.Java("c7", "2", "out [mm]", "")),
                List.of(),
                GraphSettings.STANDARD),
            runs);
    return runs.help(source, source.length(), graph.javaReads(), graph.javaGives("c7"));
  }

  @Test
  void aSourceIsCompletedByNamesOfTheRecordItsFieldsAndWhatMayBeCalled() {
    CellRunner.Help cold = help("double a = 1;\nout = lash");
    assertEquals(List.of("lashCold"), cold.texts());
    assertEquals("double a = 1;\nout = ".length(), cold.from());
    assertEquals(List.of("times("), help("out = length.ti").texts());
    assertTrue(help("out = joint.to").texts().contains("tolerance"));
    assertEquals(List.of("plus("), help("import java.nio.file.Files;\n\nout = length.pl").texts());
    assertEquals(List.of("quantity("), help("out = quant").texts());
    assertEquals(List.of("highest"), help("double highest = 1;\nhigh").texts());
    assertEquals(
        List.of(
            "Measured<Length> Thermal.thermalGrowth(Measured<Length> length,"
                + " Measured<Trade.Expansion> expansion,"
                + " Measured<Trade.TemperatureDifference> temperatureChange)"),
        help("// Growth\nout = Thermal.thermalGrowth(").signatures());
    assertEquals(List.of("lashCold: Measured<Length>"), help("out = lashCold").signatures());
    assertTrue(help("out = length.times(").signatures().get(0).startsWith("Measured<Q> Measured"));
  }

  @Test
  void theSourceSeesTheLibraryAndNotTheServer() {
    assertTrue(
        problem("out = length; Class.forName(\"endfloat.engine.ValueGraph\");")
            .contains("ClassNotFoundException"));
    ValueGraph graph =
        ran(
            "out [mm]",
            "out = Thermal.thermalGrowth(length, Measured.of(1e-5, \"1/K\","
                + " Trade.Expansion.class), Measured.of(100, \"K\","
                + " Trade.TemperatureDifference.class));",
            "");
    assertEquals(List.of(), graph.problems("c7"));
    assertEquals(0.2e-3, graph.figure("out").orElseThrow().si(), 1e-15);
  }
}
