package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.definition.Progress;
import endfloat.evidence.BigEnough;
import endfloat.record.InvestigationRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What causes add against the size needed: correlation by shared roots, remainder, standing. */
class CauseSizesTest {
  private final ObjectNode record = new ObjectMapper().createObjectNode();
  private final ObjectNode board;
  private final ArrayNode causes;

  CauseSizesTest() {
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "Causes");
    ArrayNode cells = record.putArray("cells");
    cells
        .addObject()
        .put("id", "w")
        .put("kind", "working")
        .put(
            "text",
            "scale = 1 ± 0.2\ngrowth [mm] = 0.20 mm * scale\nthreshold [mm] = 0.15 mm * scale\n"
                + "tilt [mm] = 0.02 mm ± 0.01 mm\nopened [mm] = 0.25 mm ± 0.02 mm");
    board = cells.addObject().put("id", "b").put("kind", "causes").put("unit", "mm");
    board.put("observed", "opened").put("needed", "0.15 mm ± 0.08 mm");
    causes = board.putArray("causes");
    cause("k1", "Seized coupling", "growth");
    cause("k2", "Shaft out of line", "tilt");
    cause("k3", "Soft wheel", "");
  }

  private ObjectNode cause(String id, String name, String contribution) {
    return causes.addObject().put("id", id).put("name", name).put("contribution", contribution);
  }

  private InvestigationRecord taken() {
    return InvestigationRecord.of(record);
  }

  private ValueGraph graph() {
    return RecordGraph.of(taken()).graph();
  }

  private CauseSizes sizes(ValueGraph graph) {
    return CauseSizes.of(taken().cell("b").orElseThrow(), graph);
  }

  @Test
  void probabilityIsThatOfTheDifferenceOfTwoNormalValues() {
    // c = 0.20, u 0.02; n = 0.15, u 0.04; Φ(0.05 / √(0.02² + 0.04²)) = Φ(1.1180) = 0.8682,
    // table of the normal distribution, NIST/SEMATECH e-Handbook 1.3.6.7.1
    BigEnough.Size size = sizes(graph()).causes().get(0).enough().orElseThrow();
    assertEquals(0.8682, size.probability(), 5e-5);
    assertEquals(BigEnough.Answer.NOT_PROVEN, size.answer());
  }

  @Test
  void aSharedRootLeavesLessToDoubt() {
    board.put("needed", "threshold");
    // c - n = 0.05 scale, u = 0.005: ten standard deviations
    CauseSizes sizes = sizes(graph());
    assertEquals(BigEnough.Answer.YES, sizes.causes().get(0).enough().orElseThrow().answer());
    assertTrue(sizes.causes().get(0).enough().orElseThrow().probability() > 1 - 1e-12);
  }

  @Test
  void theAnswerIsThatOfALimitJudgedByTheSameProbability() {
    for (String needed : List.of("threshold", "0.15 mm ± 0.08 mm", "0.21 mm", "0.19 mm * scale")) {
      board.put("needed", needed);
      ValueGraph graph = graph();
      double here = sizes(graph).causes().get(0).enough().orElseThrow().probability();
      Judgement limit = graph.comparisons("b.adds.k1").get(0);
      assertEquals(limit.probability(), here, 1e-12, needed);
    }
  }

  @Test
  void aCauseWithoutASizeHasNoAnswer() {
    CauseSizes.Adds soft = sizes(graph()).causes().get(2);
    assertEquals(Optional.empty(), soft.enough());
    assertEquals(Optional.empty(), graph().figure(soft.figure()));
  }

  @Test
  void whatOpenCausesLeaveIsUnexplainedWithItsOwnUncertainty() {
    Figure left = graph().figure("b.unexplained").orElseThrow();
    assertEquals(0.03e-3, left.si(), 1e-12);
    // √(0.01² + 0.02² + 0.005²)
    assertEquals(0.0229129e-3, left.standardUncertainty(), 1e-9);
  }

  @Test
  void ruledOutTakesADecisiveFact() {
    ObjectNode tilt = (ObjectNode) causes.get(1);
    tilt.put("standing", "ruled out");
    CauseSizes sizes = sizes(graph());
    assertEquals("/causes/1/fact", sizes.problems().get(0).at());
    assertTrue(sizes.causes().get(1).cause().isOpen());

    tilt.put("fact", "Bores in line to 0.01 mm by the stretched wire, clause 2.4");
    sizes = sizes(graph());
    assertEquals(List.of(), sizes.problems());
    assertEquals(0.05e-3, graph().figure("b.unexplained").orElseThrow().si(), 1e-12);
  }

  @Test
  void anotherQuantityIsRefusedAtItsField() {
    ((ObjectNode) causes.get(1)).put("contribution", "scale").put("name", "Number");
    board.remove("unit");
    ValueGraph graph = graph();
    assertTrue(
        graph.problems("b").stream().anyMatch(p -> p.at().equals("/causes/1/contribution")),
        () -> graph.problems("b").toString());
    assertEquals(Optional.empty(), sizes(graph).causes().get(1).enough());
  }

  @Test
  void theSameValueInTwoCausesIsSaidToBeCountedTwice() {
    cause("k4", "Hot backlash by growth", "growth + tilt");
    List<ClauseProblem> problems = sizes(graph()).problems();
    assertEquals("/causes/3/contribution", problems.get(0).at());
    assertTrue(problems.get(0).problem().message().startsWith("growth stands in Seized coupling"));
  }

  @Test
  void aSizeNeededThatIsNotAboveZeroIsRefused() {
    board.put("needed", "-0.1 mm");
    CauseSizes sizes = sizes(graph());
    assertEquals("/needed", sizes.problems().get(0).at());
    assertEquals(Optional.empty(), sizes.causes().get(0).enough());
  }

  @Test
  void noVerdictOfTheRecordComesOfIt() {
    assertTrue(graph().figures().values().stream().allMatch(f -> f.judgements().isEmpty()));
  }

  /** Half a growth to the nearest millimetre: no smooth function, so it carries no uncertainty. */
  private static final CellRunner ROUNDS =
      new CellRunner() {
        @Override
        public Optional<Refusal> refusal(String source) {
          return Optional.empty();
        }

        @Override
        public Outcome run(Job job, Progress progress) {
          double here = ((Value.Scalar) job.reads().get(0).value()).si();
          List<double[]> trials = new ArrayList<>();
          trials.add(rounded(here));
          job.trials().forEach(trial -> trials.add(rounded(trial.si())));
          Given given =
              new Given(rounded(here), List.of(), List.of(), "", false, List.<double[]>of());
          return new Outcome(List.of(given), trials, List.of(), 1);
        }

        private double[] rounded(double si) {
          return new double[] {Math.rint(1000 * (si + 0.0003)) / 1000};
        }
      };

  @Test
  void whatCarriesNoUncertaintyIsNotCalledBigEnough() {
    ((ArrayNode) record.get("cells"))
        .insertObject(1)
        .put("id", "j")
        .put("kind", "java")
        .put("gives", "stepped [mm]")
        .put("text", "stepped = growth;");
    cause("k4", "Worn in steps", "5 * stepped");
    CauseSizes sizes = sizes(RecordGraph.of(taken(), ROUNDS).graph());
    assertEquals(Optional.empty(), sizes.causes().get(3).enough());
    assertEquals(
        List.of(
            "Whether it is big enough cannot be said: the uncertainty of stepped is not carried."),
        sizes.problems().stream()
            .filter(one -> one.at().equals("/causes/3/contribution"))
            .map(one -> one.problem().message())
            .toList());
    assertTrue(sizes.causes().get(0).enough().isPresent());
  }
}
