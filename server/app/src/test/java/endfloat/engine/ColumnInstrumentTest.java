package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.InvestigationRecord;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A column taken with an instrument of the register. Uncertainties by JCGM 100:2008, formula 10 and
 * 4.3.7 (a step of the indication is rectangular, so its u is step / √12), worked by hand.
 */
class ColumnInstrumentTest {
  private static InvestigationRecord record(String column, String due) {
    String text =
        """
        {"format":"endfloat-record","version":1,"title_block":{"title":"t","date":"2026-05-12"},
         "instruments":[{"id":"DG-07","offset":"0.020 mm","resolution":"0.002 mm","coverage":2,"due":"%s"}],
         "cells":[{"id":"c1","kind":"table","name":"wear","columns":[
            {"head":"lash","kind":"number","unit":"mm",%s}],"rows":[["0.150"],["0.190"],[""]]},
          {"id":"c2","kind":"working","text":"m [mm] = mean(wear.lash)\\nd [mm] = pick(wear.lash, row: 2) - pick(wear.lash, row: 1)"}]}
        """
            .formatted(due, column);
    return InvestigationRecord.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static ValueGraph graph(String column, String due) {
    return RecordGraph.of(record(column, due)).graph();
  }

  private static double u(ValueGraph graph, String name) {
    return graph.figure(name).orElseThrow().standardUncertainty();
  }

  private static List<String> said(ValueGraph graph) {
    return graph.problems("c1").stream().map(p -> p.at() + " " + p.problem().message()).toList();
  }

  @Test
  void theZeroOfTheInstrumentCancelsInADifferenceAndDoesNotAverageOut() {
    ValueGraph graph = graph("\"instrument\":\"DG-07\"", "2027-03-02");
    double step = 2e-6 / Math.sqrt(12);
    assertEquals(Math.sqrt(2) * step, u(graph, "d"), 1e-15);
    assertEquals(Math.sqrt(1e-10 + step * step / 2), u(graph, "m"), 1e-15);
    assertEquals(
        "DG-07", graph.trace("wear.lash").orElseThrow().origin().instruments().get(0).id());
  }

  @Test
  void anOverdueInstrumentIsSaidOfTheColumnThatUsedIt() {
    assertTrue(
        said(graph("\"instrument\":\"DG-07\"", "2026-03-02"))
            .contains("/columns/0 Instrument DG-07 was due for calibration on 2026-03-02."));
    assertTrue(
        said(graph("\"instrument\":\"DG-07\"", "2027-03-02")).stream()
            .noneMatch(one -> one.contains("due")));
  }

  @Test
  void aStatedUncertaintyCountsInPlaceOfTheInstruments() {
    ValueGraph graph = graph("\"instrument\":\"DG-07\",\"u\":\"0.004 mm\"", "2026-03-02");
    // half the variance is each value's own
    assertEquals(0.004e-3, u(graph, "d"), 1e-15);
    assertTrue(said(graph).stream().anyMatch(one -> one.contains("was due for calibration")));
  }

  @Test
  void anInstrumentThatIsNotRegisteredIsRefusedWhereItIsNamed() {
    ValueGraph graph = graph("\"instrument\":\"DG-9\"", "2027-03-02");
    assertEquals(
        "/columns/0/instrument There is no instrument DG-9 in the register.", said(graph).get(0));
    assertEquals(Figure.State.WAITING, graph.figure("m").orElseThrow().state());
  }

  @Test
  void anotherCalibrationInTheRegisterReachesTheColumn() {
    ValueGraph graph = graph("\"instrument\":\"DG-07\"", "2027-03-02");
    graph.update(RecordGraph.of(record("\"instrument\":\"DG-07\"", "2026-03-02")).graph().source());
    assertTrue(said(graph).stream().anyMatch(one -> one.contains("was due for calibration")));
  }
}
