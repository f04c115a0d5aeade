package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.Instrument;
import endfloat.record.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sweep says what the sheet would say if the input had been typed or read so. */
class SweepTest {
  private static final String LINES =
      """
      cold [mm] = 0.150 mm \u00b1 0.010 mm
      height [mm] = 480 mm \u00b1 0.1 %
      warm [K] = 65 K \u00b1 2 K
      growth [mm] = height * 11.5e-6 1/K * warm
      hot [mm] = cold + 0.5148 * growth
      limit hot: 0.10 .. 0.30 mm
      """;

  private static ValueGraph graph(String lines) {
    return ValueGraph.of(GraphSource.ofWorkings(lines));
  }

  private static Sweep sweep(ValueGraph graph, String of, String input) {
    return Sweep.of(Question.of(graph, "/of", of), "/input", input);
  }

  private static void agrees(ValueGraph typed, Sweep.Point point) {
    Figure figure = typed.figure("hot").orElseThrow();
    assertEquals(figure.si(), point.value(), 1e-15 * Math.abs(figure.si()));
    assertEquals(
        figure.standardUncertainty(),
        point.standardUncertainty(),
        1e-12 * figure.standardUncertainty());
  }

  @Test
  void everyPointIsWhatTheSheetSaysWithThatInputTyped() {
    Sweep sweep = sweep(graph(LINES), "hot", "warm");
    for (int kelvin = 0; kelvin <= 130; kelvin += 10) {
      agrees(graph(LINES.replace("= 65 K", "= " + kelvin + " K")), sweep.at(kelvin));
    }
  }

  @Test
  void aSpreadInPartsOfTheValueGrowsWithIt() {
    Sweep sweep = sweep(graph(LINES), "hot", "height");
    agrees(graph(LINES.replace("480 mm", "960 mm")), sweep.at(0.960));
  }

  @Test
  void theGraphStaysAsItIs() {
    ValueGraph graph = graph(LINES);
    Map<String, Figure> before = graph.figures();
    Sweep sweep = sweep(graph, "2 * hot", "warm");
    sweep.at(300);
    assertEquals(before, graph.figures());
    assertEquals(65, sweep.now().si());
  }

  /** hot = cold + 0.5148 height alpha warm, so the slope is 0.5148 height alpha. */
  @Test
  void theSlopeIsExact() {
    double slope = sweep(graph(LINES), "hot", "warm").at(20).slope();
    assertEquals(0.5148 * 0.480 * 11.5e-6, slope, 1e-15 * slope * 10);
    assertEquals(0, sweep(graph("a = 0\nb = a^2"), "b", "a").at(0).slope(), 1e-12);
  }

  /** The gain of an instrument grows with what it shows, as when that had been taken. */
  @Test
  void aReadingKeepsItsInstrument() {
    Instrument gauge =
        new Instrument(
            "DG-07", "", "", "0.003 mm", "0.5 %", "0.01 mm", "", "", 2, "", "", "", null);
    Sweep sweep = sweep(withReading("2.00", gauge), "2 * lash", "lash");
    Sweep.Point moved = sweep.at(0.005);
    ValueGraph taken = withReading("5.00", gauge);
    Figure twice = taken.figure("twice").orElseThrow();
    assertEquals(twice.si(), moved.value(), 1e-17);
    assertEquals(twice.standardUncertainty(), moved.standardUncertainty(), 1e-18);
  }

  private static ValueGraph withReading(String taken, Instrument gauge) {
    Reading lash =
        new Reading(
            "lash",
            "",
            "mm",
            "DG-07",
            "",
            "as found",
            "",
            "",
            List.of(),
            List.of(new Reading.Entry(Map.of(), List.of(taken), "", "", "", Optional.empty())),
            null);
    return ValueGraph.of(
        new GraphSource(
            List.of(
                new Clause.Readings("r1", "1", List.of(lash)),
                new Clause.Working("w1", "2", "twice [mm] = 2 * lash")),
            List.of(gauge),
            GraphSettings.STANDARD));
  }

  @Test
  void aLimitThatMovesWithTheInputIsNotOneLine() {
    String moving = LINES + "limit hot: at most 0.002 mm/K * warm\n";
    assertEquals(2, graph(moving).figure("hot").orElseThrow().judgements().size());
    List<Judgement> still = sweep(graph(moving), "hot", "warm").limits();
    assertEquals(1, still.size());
    assertEquals(0.30e-3, still.get(0).high(), 1e-18);
  }

  @Test
  void whatCannotBeDrawnSaysWhyAndWhere() {
    ValueGraph graph = graph(LINES + "free = 2\nlist = [1, 2]\nbad = 1 mm + 1 s\nafter = bad + 1");
    refused(
        "/of",
        "\"nothing\" is not a name of this record.",
        () -> Question.of(graph, "/of", "nothing"));
    refused("/of", "Nothing is entered here.", () -> Question.of(graph, "/of", " "));
    refused("/of", "It waits for after.", () -> Question.of(graph, "/of", "after"));
    refused("/of", "This is not a single number.", () -> sweep(graph, "list", "free"));
    refused("/input", "There is no value warmth.", () -> sweep(graph, "hot", "warmth"));
    refused(
        "/input", "growth is worked out from other values.", () -> sweep(graph, "hot", "growth"));
    refused("/input", "The result does not rest on free.", () -> sweep(graph, "hot", "free"));
    refused("/input", "list is not a single number.", () -> sweep(graph, "max(list)", "list"));
    refused(
        "/of",
        "This is the square root of a number below zero.",
        () -> sweep(graph("a = 4\nb = sqrt(a)"), "b", "a").at(-1));
  }

  private static void refused(
      String field, String message, org.junit.jupiter.api.function.Executable asked) {
    QuestionRefusedException refusal = assertThrows(QuestionRefusedException.class, asked);
    assertEquals(field, refusal.field());
    assertTrue(refusal.problem().message().startsWith(message), refusal.problem().message());
  }

  /** A solve tries temperatures of a part; what was read of it at other stages must not move. */
  @Test
  void trialsLeaveReadingsAsTheyWereTaken() {
    Reading bore =
        new Reading(
            "bore",
            "",
            "mm",
            "",
            "",
            "as found",
            "t_part",
            "steel",
            List.of(),
            List.of(
                new Reading.Entry(Map.of(), List.of("80.0"), "", "", "", Optional.empty()),
                new Reading.Entry(Map.of(), List.of("81.0"), "as left", "", "", Optional.empty())),
            null);
    String lines =
        """
        t_part [degC] = 20 degC
        when [degC] = solve bore = 79.95 mm for t_part between 0 degC and 200 degC
        left [mm] = pick(bore, stage: "as left") + 0 * (when - t_part) * 1 mm/K
        """;
    ValueGraph graph =
        ValueGraph.of(
            new GraphSource(
                List.of(
                    new Clause.Readings("r1", "1", List.of(bore)),
                    new Clause.Working("w1", "2", lines)),
                List.of(),
                GraphSettings.STANDARD));
    assertEquals(List.of(), graph.problems("w1"));
    assertEquals(0.081, graph.figure("left").orElseThrow().si(), 1e-15);
  }
}
