package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The demonstration record, from its readings to its verdicts. */
class RecordGraphTest {
  private static InvestigationRecord bevelMesh() throws IOException {
    return InvestigationRecord.read(
        Files.readAllBytes(Path.of("..", "..", "notebooks", "w6-bevel-mesh.json")));
  }

  private static ValueGraph graph() throws IOException {
    return RecordGraph.of(bevelMesh()).graph();
  }

  private static String shown(ValueGraph graph, String name) {
    Figure figure = graph.figure(name).orElseThrow();
    return Shown.of(figure, graph.settings()).orElseThrow().text();
  }

  @Test
  void everyFigureIsFresh() throws IOException {
    ValueGraph graph = graph();
    for (Figure figure : graph.figures().values()) {
      assertEquals(
          Figure.State.FRESH, figure.state(), figure.name() + ": " + figure.problem().orElse(null));
    }
    assertTrue(graph.figures().size() > 20);
  }

  /**
   * By hand: 480 mm * (23.0 - 11.5)e-6 1/K * 65 K = 0.3588 mm; opened by 2 tan 20° sin 45° (A05,
   * Machinery's Handbook, bevel gearing) times that.
   */
  @Test
  void theHeatOpensTheMeshAsTheHandReckons() throws IOException {
    ValueGraph graph = graph();
    assertEquals(0.3588e-3, graph.figure("growth").orElseThrow().si(), 1e-9);
    double slope = 2 * StrictMath.tan(Math.PI / 9) * StrictMath.sin(Math.PI / 4);
    assertEquals(slope * 0.3588e-3, graph.figure("opening").orElseThrow().si(), 1e-9);
    assertEquals(
        Verdict.WITHIN, graph.figure("lash_loosest").orElseThrow().verdict().orElseThrow());
    assertEquals(
        Verdict.OUTSIDE, graph.figure("hot_loosest").orElseThrow().verdict().orElseThrow());
  }

  /** One thermometer took all three temperatures: its offset is in none of their differences. */
  @Test
  void theThermometersOffsetLeavesTheGrowthAlone() throws IOException {
    Trace trace = graph().trace("growth").orElseThrow();
    assertTrue(
        trace.contributions().stream()
            .noneMatch(c -> c.kind() == Root.Kind.OFFSET && c.subject().equals("TP-03")));
    assertTrue(
        trace.contributions().stream()
            .anyMatch(c -> c.kind() == Root.Kind.RESOLUTION && c.subject().equals("t_block")));
  }

  @Test
  void aTraceLeadsBackToTheInstrumentAndItsCalibration() throws IOException {
    Trace.Origin lash = graph().trace("lash_cold").orElseThrow().origin();
    Trace.Origin dial =
        lash.from().stream().filter(o -> o.name().equals("dial")).findFirst().orElseThrow();
    assertEquals(Trace.Sort.READING, dial.sort());
    assertEquals("DG-07", dial.instruments().get(0).id());
    assertEquals("2026-03-02", dial.instruments().get(0).calibrated());
    List<Trace.Need> needs = graph().trace("dial").orElseThrow().neededBy();
    assertEquals("lash_cold", needs.get(0).name());
    assertTrue(needs.get(0).direct());
    assertTrue(needs.stream().anyMatch(n -> n.name().equals("hot_loosest") && n.limit()));
  }

  @Test
  void inputsAreShownAsTyped() throws IOException {
    ValueGraph graph = graph();
    assertEquals("36.0 mm", shown(graph, "pitch_radius"));
    assertEquals("85.0 \u00b1 1.4 \u00b0C", shown(graph, "t_block"));
    Figure dial = graph.figure("dial").orElseThrow();
    assertEquals(Map.of("tooth", "1"), dial.elements().get(0).labels());
    assertEquals(
        "0.134", Shown.of(dial, dial.elements().get(0), graph.settings()).orElseThrow().value());
  }

  @Test
  void anUntouchedClauseIsNotWorkedOutAgain() throws IOException {
    InvestigationRecord record = bevelMesh();
    RecordGraph graph = RecordGraph.of(record);
    long before = graph.graph().evaluations();
    assertEquals(java.util.Set.of(), graph.update(record).names());
    assertEquals(before, graph.graph().evaluations());
  }

  @Test
  void theRecordsTermsAreThoseOfItsMessages() throws Exception {
    String json =
        """
        {"format":"endfloat-record","version":1,"title_block":{"title":"t","date":"2026-05-12"},
         "settings":{"terms":"TERMS"},
         "cells":[{"id":"c1","kind":"working","title":"",
           "text":"a = recommended_backlash_coarse(1 1/in, 500 in)"}]}
        """;
    for (String terms : java.util.List.of("british", "american")) {
      ValueGraph graph =
          RecordGraph.of(
                  InvestigationRecord.read(
                      json.replace("TERMS", terms)
                          .getBytes(java.nio.charset.StandardCharsets.UTF_8)))
              .graph();
      String message = graph.figure("a").orElseThrow().problem().orElseThrow().message();
      assertTrue(
          message.contains(terms.equals("british") ? "centre distance" : "center distance"),
          message);
      assertEquals(message, graph.problems("c1").get(0).problem().message());
    }
  }
}
