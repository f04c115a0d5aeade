package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.units.UnitSystem;
import endfloat.working.Terms;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A limit is printed as it was typed, or so that it says no other than it does. */
class LimitShownTest {
  private static LimitShown shown(UnitSystem units, String name, String... texts) {
    GraphSource source = GraphSource.ofWorkings(texts);
    GraphSettings settings =
        new GraphSettings(units, Optional.empty(), 2, "as found", Terms.BRITISH);
    ValueGraph graph =
        ValueGraph.of(new GraphSource(source.clauses(), List.of(), settings, "2026-05-12"));
    Figure figure = graph.figure(name).orElseThrow();
    return LimitShown.of(figure.judgements().get(0), FigureUnit.of(figure, settings));
  }

  @Test
  void aLimitKeepsTheDigitsThatWereTyped() {
    assertEquals(
        new LimitShown("0.10", "0.30", "mm"),
        shown(UnitSystem.METRIC, "lash", "lash [mm] = 0.2 mm\nlimit lash: 0.10 .. 0.30 mm"));
    assertEquals(
        new LimitShown("\u22120.10", "0.10", "mm"),
        shown(UnitSystem.METRIC, "lash", "lash [mm] = 0 mm\nlimit lash: -0.10 mm .. 0.10 mm"));
  }

  @Test
  void aLimitGivenByANameKeepsTheDigitsThatStandAtTheName() {
    assertEquals(
        new LimitShown("", "0.30", "mm"),
        shown(
            UnitSystem.METRIC,
            "lash",
            "lash [mm] = 0.2 mm\nworst [mm] = 0.30 mm\nworn = worst\nlimit lash: at most worn"));
  }

  @Test
  void aLimitThatWasWorkedOutHasNoDigitsOfAnyone() {
    assertEquals(
        new LimitShown("", "0.4", "mm"),
        shown(
            UnitSystem.METRIC,
            "lash",
            "lash [mm] = 0.2 mm\nworst [mm] = 0.30 mm\nlimit lash: at most worst + 0.10 mm"));
  }

  /** 4 thou is 0.1016 mm and 12 thou 0.3048 mm, the inch being 25.4 mm. */
  @Test
  void endsTypedInTwoUnitsAreEachTheirOwnNumber() {
    assertEquals(
        new LimitShown("0.1016", "0.30", "mm"),
        shown(UnitSystem.METRIC, "lash", "lash [mm] = 0.2 mm\nlimit lash: 4 thou .. 0.30 mm"));
    assertEquals(
        new LimitShown("0.1016", "0.3048", "mm"),
        shown(UnitSystem.METRIC, "lash", "lash [mm] = 0.2 mm\nlimit lash: 4 .. 12 thou"));
  }

  /** 0.10 mm is 3.937 thou, 0.30 mm 11.811 thou, 0.05 mm 1.96850 thou; rounded inwards. */
  @Test
  void aClearanceIsInThouOnAnImperialSheet() {
    assertEquals(
        new LimitShown("3.94", "11.81", "thou"),
        shown(UnitSystem.IMPERIAL, "lash", "lash [mm] = 0.2 mm\nlimit lash: 0.10 .. 0.30 mm"));
    assertEquals(
        new LimitShown("", "1.9685", "thou"),
        shown(UnitSystem.AMERICAN, "lash", "lash [mm] = 0.2 mm\nlimit lash: at most 0.05 mm"));
    assertEquals(
        new LimitShown("", "2", "thou"),
        shown(UnitSystem.IMPERIAL, "lash", "lash [mm] = 0.2 mm\nlimit lash: at most 2 thou"));
  }

  /** 60.00 mm is 2.362204... in, 60.05 mm 2.364173... in. */
  @Test
  void aSizeIsInInchesAndWhatWasTypedInInchesStays() {
    assertEquals(
        new LimitShown("2.362205", "2.364173", "in"),
        shown(UnitSystem.IMPERIAL, "bore", "bore [mm] = 60.02 mm\nlimit bore: 60.00 .. 60.05 mm"));
    assertEquals(
        new LimitShown("", "0.0120", "in"),
        shown(UnitSystem.IMPERIAL, "gap", "gap [in] = 0.010 in\nlimit gap: at most 0.0120 in"));
  }

  @Test
  void theUnitIsThatOfTheLimitsWhereverTheReadingMoves() {
    for (String reading : List.of("0.2", "1.9")) {
      assertEquals(
          "thou",
          shown(
                  UnitSystem.IMPERIAL,
                  "lash",
                  "lash [mm] = " + reading + " mm\nlimit lash: at most 0.30 mm")
              .unit());
    }
  }

  @Test
  void anotherNumberOfDigitsAtTheNameChangesWhatTheLimitedValueShows() {
    ValueGraph graph =
        ValueGraph.of(
            GraphSource.ofWorkings(
                "a [mm] = 0.2 mm\nlimit a: at most worst", "worst [mm] = 0.3 mm"));
    ValueGraph.Changed changed =
        graph.update(new Clause.Working("w2", "2", "worst [mm] = 0.30 mm"));
    assertTrue(changed.names().contains("a"), changed.names().toString());
    assertEquals("0.30", graph.figure("a").orElseThrow().judgements().get(0).highTyped());
  }
}
