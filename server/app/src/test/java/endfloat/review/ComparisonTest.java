package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import endfloat.review.Comparison.Row;
import endfloat.review.Comparison.Standing;
import endfloat.review.Comparison.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Uncertainties of differences against JCGM 100:2008, formula 16, worked by hand: u² = u₁² + u₂² −
 * 2 cov, where the covariance is that of the errors both sides share.
 */
class ComparisonTest {
  /** A gauge with U = 0.020 mm of its zero (k = 2) and a step of 0.002 mm. */
  private static InvestigationRecord record(
      String number, String certificate, String taken, String working) {
    String json =
        """
        {"format":"endfloat-record","version":1,
         "title_block":{"title":"T","record_number":"%s","engine_serial":"W6-1"},
         "settings":{"units":"metric","coverage":2,"stage":"as found"},
         "instruments":[{"id":"DG-07","offset":"0.020 mm","resolution":"0.002 mm","coverage":2,
           "certificate":"%s"}],
         "cells":[
           {"id":"c1","kind":"readings","readings":[
             {"name":"lash","unit":"mm","instrument":"DG-07","entries":[{"taken":["%s"]}]}]},
           {"id":"c2","kind":"working","text":"%s"}]}
        """
            .formatted(number, certificate, taken, working.replace("\n", "\\n"));
    return InvestigationRecord.read(json.getBytes(StandardCharsets.UTF_8));
  }

  /** Read as found and as left by the same gauge. */
  private static InvestigationRecord atTwoStages() {
    ObjectNode tree = record("1", "K 12", "1.000", "gap [mm] = lash - 0.9 mm").tree().deepCopy();
    ((ObjectNode) tree.at("/cells/0/readings/0"))
        .withArray("entries")
        .addObject()
        .put("stage", "as left")
        .putArray("taken")
        .add("1.005");
    return InvestigationRecord.of(tree);
  }

  /**
   * What a reading is at another stage; the gauge is the same one, so only its two steps are left.
   */
  @Test
  void oneRecordIsComparedAsFoundAndAsLeft() {
    InvestigationRecord record = atTwoStages();
    Comparison comparison = Comparison.of(record, "as found", record, "as left");
    assertTrue(comparison.sameEngine());
    assertEquals("as found", comparison.left().stage());
    assertEquals("as left", comparison.right().stage());
    assertEquals("0.0050 ± 0.0016 mm", row(comparison, "gap").difference().orElseThrow().text());
    assertEquals(List.of(), comparison.texts());
    assertEquals(record.sourceHash(), comparison.right().record().sourceHash());
    assertTrue(Comparison.of(record, record).isEqual());
  }

  @Test
  void aStageAtWhichNothingIsReadIsRefusedWithThoseAtWhichSomethingIs() {
    InvestigationRecord record = atTwoStages();
    StageNotReadException refused =
        assertThrows(
            StageNotReadException.class, () -> Comparison.of(record, "", record, "cleaned"));
    assertEquals("Nothing of the record is read at the stage 'cleaned'.", refused.getMessage());
    assertEquals("It is read at these: as found, as left.", refused.wayOut());
  }

  private static Row row(Comparison comparison, String label) {
    return comparison.rows().stream()
        .filter(row -> row.label().equals(label))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theZeroOfAnInstrumentCancelsBetweenTwoEngines() {
    Comparison comparison =
        Comparison.of(record("1", "K 12", "1.000", ""), record("2", "K 12", "1.005", ""));
    Row lash = row(comparison, "lash");
    // u = √2 · 0.002/√12 = 0.000816, so U = 0.0016: only the two steps are left
    assertEquals("0.0050 ± 0.0016 mm", lash.difference().orElseThrow().text());
    assertEquals(Standing.CLEAR, lash.standing());
    assertTrue(lash.reading());
    assertEquals(List.of("DG-07"), comparison.shared());
    assertFalse(comparison.sameEngine());
  }

  @Test
  void afterAnotherCalibrationItIsAnotherError() {
    Comparison comparison =
        Comparison.of(record("1", "K 12", "1.000", ""), record("2", "K 19", "1.005", ""));
    Row lash = row(comparison, "lash");
    // u = √(2 · (0.010² + 0.000577²)) = 0.01417, so U = 0.028
    assertEquals("0.005 ± 0.028 mm", lash.difference().orElseThrow().text());
    assertEquals(Standing.NOT_CLEAR, lash.standing());
    assertEquals(List.of("DG-07: calibrated anew in between"), comparison.notShared());
  }

  /** Two engines on two days: what is not known to be one error is counted as two. */
  @Test
  void withoutANamedCalibrationTheErrorsOfTwoEnginesAreTheirOwn() {
    Comparison engines = Comparison.of(record("1", "", "1.000", ""), record("2", "", "1.005", ""));
    // u = √(2 · (0.010² + 0.000577²)) = 0.01417, so U = 0.028
    assertEquals("0.005 ± 0.028 mm", row(engines, "lash").difference().orElseThrow().text());
    assertEquals(Standing.NOT_CLEAR, row(engines, "lash").standing());
    assertEquals(
        List.of("DG-07: no calibration is named, so that it may have been set anew in between"),
        engines.notShared());
  }

  @Test
  void aCalibrationHoldsOnTheDaysForWhichItWasMade() {
    InvestigationRecord before = on("2026-05-12", "dial gauge");
    assertEquals(List.of("DG-07"), Comparison.of(before, on("2027-02-01", "dial gauge")).shared());
    assertEquals(
        List.of("DG-07: its calibration was overdue on 2027-03-09"),
        Comparison.of(before, on("2027-03-09", "dial gauge")).notShared());
    assertEquals(
        List.of("DG-07: it was calibrated after 2026-02-01, the day of one of the two"),
        Comparison.of(on("2026-02-01", "dial gauge"), before).notShared());
  }

  @Test
  void aThermometerIsSetAnewOnEachEngine() {
    assertEquals(
        List.of("DG-07: a thermometer sits otherwise on each engine"),
        Comparison.of(on("2026-05-12", "thermometer"), on("2026-06-01", "thermometer"))
            .notShared());
  }

  private static InvestigationRecord on(String day, String kind) {
    ObjectNode tree = record(day, "K 12", "1.000", "").tree().deepCopy();
    tree.withObject("/title_block").put("date", day);
    ((ObjectNode) tree.at("/instruments/0"))
        .put("kind", kind)
        .put("calibrated", "2026-03-02")
        .put("due", "2027-03-02");
    return InvestigationRecord.of(tree);
  }

  @Test
  void anInputIsSharedBetweenStatesOfOneRecordOnly() {
    String before = "a = 10 mm ± 0.2 mm\nb [mm] = a + 1 mm";
    String after = "a = 10 mm ± 0.2 mm\nb [mm] = a + 1.1 mm";
    Comparison states =
        Comparison.of(record("1", "", "1.000", before), record("1", "", "1.000", after));
    assertTrue(states.sameEngine());
    assertEquals("0.1 mm", row(states, "b").difference().orElseThrow().text());
    assertEquals(Standing.CLEAR, row(states, "b").standing());
    assertEquals(Standing.NONE, row(states, "a").standing());
    assertEquals(
        List.of(new Wording("2", "b", "b [mm] = a + 1 mm", "b [mm] = a + 1.1 mm")),
        states.formulas());
    Comparison engines =
        Comparison.of(record("1", "", "1.000", before), record("2", "", "1.000", after));
    // two estimates, each with u = 0.1: U = 2 · √2 · 0.1
    assertEquals("0.10 ± 0.28 mm", row(engines, "b").difference().orElseThrow().text());
    assertEquals(Standing.NOT_CLEAR, row(engines, "b").standing());
  }

  @Test
  void aReadingTakenAnewIsItsOwnInAStateOfTheSameRecord() {
    Comparison states = Comparison.of(record("1", "", "1.000", ""), record("1", "", "1.005", ""));
    assertEquals("0.0050 ± 0.0016 mm", row(states, "lash").difference().orElseThrow().text());
    assertEquals(
        List.of("1 readings lash, entries, taken: 1.000 | 1.005"),
        states.texts().stream()
            .map(one -> one.clause() + " " + one.what() + ": " + one.left() + " | " + one.right())
            .toList());
  }

  @Test
  void whatOnlyOneSideHasIsSaidAndKindsAreNotMixed() {
    Comparison comparison =
        Comparison.of(
            record("1", "", "1.000", "a = 1 mm\nc = 2 mm\nlimit lash: at most 1.1 mm"),
            record("2", "", "1.300", "a = 1 s\nd = \\\"word\\\"\nlimit lash: at most 1.1 mm"));
    assertEquals(Standing.NOT_COMPARABLE, row(comparison, "a").standing());
    assertEquals(Standing.ONLY_LEFT, row(comparison, "c").standing());
    assertEquals(Standing.ONLY_RIGHT, row(comparison, "d").standing());
    assertTrue(row(comparison, "lash").isJudgedOtherwise());
    assertEquals(1, comparison.judgedOtherwise());
  }

  @Test
  void aRecordIsEqualToItself() throws IOException {
    InvestigationRecord demonstration =
        InvestigationRecord.read(Files.readAllBytes(Path.of("../../notebooks/w6-bevel-mesh.json")));
    Comparison comparison = Comparison.of(demonstration, demonstration);
    assertTrue(comparison.isEqual());
    assertEquals(0, comparison.clear());
    assertTrue(comparison.rows().size() > 40);
    assertTrue(
        comparison.rows().stream()
            .flatMap(row -> row.difference().stream())
            .allMatch(shown -> shown.value().equals("0")),
        "what is the same on both sides differs by nothing");
  }
}
