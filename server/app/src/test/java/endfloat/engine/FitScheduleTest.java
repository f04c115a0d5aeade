package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import endfloat.working.LineProblem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A schedule of fits. Columns and the rule for worn parts after TM 9-2520-234-35, par. 235: new and
 * serviceable dimensions, new and serviceable clearance; either part may wear while the fit holds
 * only where the schedule says so.
 */
class FitScheduleTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final ObjectNode record = JSON.createObjectNode();
  private final ObjectNode row;

  FitScheduleTest() {
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "Bush and journal");
    ArrayNode cells = record.putArray("cells");
    cells
        .addObject()
        .put("id", "w")
        .put("kind", "working")
        .put(
            "text",
            "bore [mm] = 25.040 mm ± 0.004 mm\n"
                + "journal [mm] = 24.970 mm ± 0.004 mm\n"
                + "clearance [mm] = bore - journal");
    row =
        cells
            .addObject()
            .put("id", "f")
            .put("kind", "fits")
            .putArray("rows")
            .addObject()
            .put("item", "3")
            .put("what", "Upper bush")
            .put("unit", "mm")
            .put("measured", "clearance");
    row.putObject("new").put("low", "0.020").put("high", "0.050");
    row.putObject("worn").put("low", "").put("high", "0.080");
    ArrayNode sizes = row.putArray("sizes");
    ObjectNode bush = sizes.addObject().put("of", "bush").put("measured", "bore");
    bush.putObject("new").put("low", "25.000").put("high", "25.021");
    bush.putObject("worn").put("high", "25.060");
    ObjectNode shaft = sizes.addObject().put("of", "shaft").put("measured", "journal");
    shaft.putObject("new").put("low", "24.967").put("high", "24.980");
    shaft.putObject("worn").put("low", "24.950");
  }

  private void measured(String bore, String journal) {
    ((ObjectNode) record.at("/cells/0"))
        .put(
            "text",
            "bore [mm] = "
                + bore
                + "\njournal [mm] = "
                + journal
                + "\nclearance [mm] = bore - journal");
  }

  private ValueGraph graph() {
    return RecordGraph.of(taken()).graph();
  }

  private InvestigationRecord taken() {
    // an untouched clause is known by being the same object: an edit makes another
    return InvestigationRecord.of(record.deepCopy());
  }

  private FitSchedule.Standing standing(ValueGraph graph) {
    return FitSchedule.of(taken().cell("f").orElseThrow(), graph).get(0);
  }

  @Test
  void aRowIsJudgedByWhatWearMayHaveMadeOfIt() {
    ValueGraph graph = graph();
    Figure fit = graph.figure("f.3").orElseThrow();
    assertEquals(0.070e-3, fit.si(), 1e-12);
    assertEquals(1, fit.judgements().size());
    Judgement worn = fit.judgements().get(0);
    assertEquals("worn", worn.state());
    // the lower end is not given up to wear: it stays as new
    assertEquals(0.020e-3, worn.low(), 1e-15);
    assertEquals(0.080e-3, worn.high(), 1e-15);
    // 0.070 with U = 0.004 √2 = 0.0057: proven by the guarded rule
    assertEquals(Optional.of(Verdict.WITHIN), fit.verdict());
    assertEquals(Verdict.OUTSIDE, standing(graph).asNew().orElseThrow().verdict());
  }

  @Test
  void theSameLineInAWorkingHasTheSameVerdictAndProbability() {
    ValueGraph graph =
        ValueGraph.of(
            GraphSource.ofWorkings(
                record.at("/cells/0/text").asText()
                    + "\nlimit clearance: 0.020 mm .. 0.080 mm (state: \"worn\")"));
    Judgement there = graph.figure("clearance").orElseThrow().judgements().get(0);
    Judgement here = graph().figure("f.3").orElseThrow().judgements().get(0);
    assertEquals(there.probability(), here.probability());
    assertEquals(there.verdict(), here.verdict());
  }

  @Test
  void withoutWornLimitsThoseOfNewPartsDecide() {
    row.remove("worn");
    Figure fit = graph().figure("f.3").orElseThrow();
    assertEquals("new", fit.judgements().get(0).state());
    assertEquals(Optional.of(Verdict.OUTSIDE), fit.verdict());
    assertEquals(List.of(), graph().comparisons("f.3"));
  }

  @Test
  void thePartPastItsOwnLimitIsToBeRenewed() {
    measured("25.070 mm ± 0.004 mm", "24.970 mm ± 0.004 mm");
    FitSchedule.Renewal renewal = standing(graph()).renewal();
    assertEquals(FitSchedule.Advice.PAST_LIMIT, renewal.advice());
    assertEquals(List.of(0), renewal.sizes());
  }

  @Test
  void aFitMayHoldWhileAPartIsWorn() {
    measured("25.000 mm ± 0.002 mm", "24.945 mm ± 0.002 mm");
    FitSchedule.Renewal renewal = standing(graph()).renewal();
    assertEquals(FitSchedule.Advice.WORN_BUT_FIT_HOLDS, renewal.advice());
    assertEquals(List.of(1), renewal.sizes());
  }

  @Test
  void ofTwoPartsInLimitsTheOneThatHasUsedMoreOfItsAllowanceIsToBeRenewed() {
    // allowance of the bush 0.039 mm, used 0.034; of the shaft 0.017 mm, used 0.005
    measured("25.055 mm ± 0.002 mm", "24.962 mm ± 0.002 mm");
    FitSchedule.Standing standing = standing(graph());
    assertEquals(FitSchedule.Advice.MORE_WORN, standing.renewal().advice());
    assertEquals(List.of(0), standing.renewal().sizes());
    assertEquals(34.0 / 39, standing.sizes().get(0).used().orElseThrow(), 1e-9);
    assertEquals(5.0 / 17, standing.sizes().get(1).used().orElseThrow(), 1e-9);
  }

  @Test
  void withoutSizesNobodySaysWhichPartToRenew() {
    row.remove("sizes");
    measured("25.070 mm", "24.970 mm");
    assertEquals(FitSchedule.Advice.NOT_DECIDED, standing(graph()).renewal().advice());
  }

  @Test
  void anErrorStandsAtItsFieldAndCountsItsColumns() {
    row.put("measured", "bore - jornal");
    ClauseProblem problem = graph().problems("f").get(0);
    assertEquals("/rows/0/measured", problem.at());
    assertEquals(8, problem.problem().span().from());
    assertTrue(problem.problem().message().contains("jornal"), problem.problem().message());
    // the other fields go on
    assertEquals(Figure.State.FRESH, graph().figure("f.3.size1").orElseThrow().state());
  }

  @Test
  void everyFieldOfALimitIsToldApart() {
    ((ObjectNode) row.get("worn")).put("high", "0.080 K");
    ClauseProblem upper = graph().problems("f").get(0);
    assertEquals("/rows/0/worn/high", upper.at());
    ((ObjectNode) row.get("worn")).put("high", "0.080 +");
    upper = graph().problems("f").get(0);
    assertEquals("/rows/0/worn/high", upper.at());
    assertEquals(LineProblem.Severity.ERROR, upper.problem().severity());
    row.put("unit", "mmm");
    assertTrue(graph().problems("f").stream().anyMatch(p -> p.at().equals("/rows/0/unit")));
  }

  @Test
  void aRowWithoutAMeasurementIsNoFigureAndNoError() {
    row.put("measured", "");
    ValueGraph graph = graph();
    assertEquals(Optional.empty(), graph.figure("f.3"));
    assertEquals(List.of(), graph.problems("f"));
  }

  @Test
  void rowsWithOneReferenceStayApart() {
    ((ArrayNode) record.at("/cells/1/rows")).add(row.deepCopy());
    ValueGraph graph = graph();
    assertEquals(List.of(), graph.problems("f"));
    assertTrue(graph.figure("f.3-2").isPresent());
  }

  @Test
  void noWorkingCanReadARowAndNoneIsOfferedIt() {
    ValueGraph graph = graph();
    assertTrue(graph.scope().names().stream().noneMatch(name -> name.contains(".")));
  }

  @Test
  void anEditOfAReadingReachesTheRow() {
    RecordGraph figures = RecordGraph.of(taken());
    measured("25.070 mm", "24.970 mm");
    assertTrue(figures.update(taken()).names().contains("f.3"));
    assertEquals(0.100e-3, figures.graph().figure("f.3").orElseThrow().si(), 1e-12);
  }
}
