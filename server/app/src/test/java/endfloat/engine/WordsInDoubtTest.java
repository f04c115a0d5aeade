package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Words that a calculation gives, and what its arguments do not know. Derived by hand. */
class WordsInDoubtTest {
  private static List<String> hints(String lines) {
    SheetOfLines sheet = SheetOfLines.of(lines);
    assertEquals(List.of(), sheet.errors());
    return sheet.hints().stream().map(hint -> hint.message()).toList();
  }

  private static String float100(String temperature) {
    return """
        t [degC] = %s
        hot = end_float([float_link(100.05 mm, "housing"), float_link(100 mm, "shaft", 12e-6 1/K, t)], "a", "b")
        """
        .formatted(temperature);
  }

  /** 0.05 mm is used up at 20 + 0.05/(100 x 12e-6) = 61.7 degC. */
  @Test
  void aStateThatWouldBeAnotherWithinTheUncertaintySaysSo() {
    List<String> hints = hints(float100("65 degC ± 5 degC"));
    assertEquals(1, hints.size());
    assertEquals(
        "state would be \"float left\" elsewhere within the uncertainty of links.", hints.get(0));
    assertEquals(List.of(), hints(float100("65 degC ± 3 degC")));
    assertEquals(List.of(), hints(float100("65 degC")));
  }

  /** One thermometer reads both parts 3 K wrong: they grow alike, and nothing is in doubt. */
  @Test
  void readingsThatAreWrongTogetherAreMovedTogether() {
    String lines =
        """
        offset [K] = 0 K ± 30 K
        t_a [degC] = 80 degC + offset
        t_b [degC] = 80 degC + offset
        hot = end_float([float_link(100.01 mm, "housing", 12e-6 1/K, t_a), float_link(100 mm, "shaft", 12e-6 1/K, t_b)], "a", "b")
        """;
    assertEquals(List.of(), hints(lines));
    assertEquals(1, hints(lines.replace("80 degC + offset\nhot", "80 degC ± 30 K\nhot")).size());
  }

  /** Proof counts the uncertainty: 0.29 mm with U = 0.005 mm is proven below 0.30 mm. */
  @Test
  void wordsThatCountTheUncertaintyThemselvesAreNotDoubtedAgain() {
    String lines =
        """
        found [mm] = 0.29 mm ± %s mm
        fit = fit_verdict(0.10 mm, 0.20 mm, 0.30 mm, found)
        proof = fit.proof
        """;
    SheetOfLines sure = SheetOfLines.of(lines.formatted("0.005"));
    assertEquals("proven", sure.result("proof").orElseThrow().value());
    assertTrue(sure.hints().isEmpty());
    SheetOfLines unsure = SheetOfLines.of(lines.formatted("0.02"));
    assertEquals("not proven", unsure.result("proof").orElseThrow().value());
    assertTrue(unsure.hints().isEmpty());
  }

  /** A probability of 0.79 that was itself said to be uncertain by 0.58 counted the doubt twice. */
  @Test
  void theProbabilityThatACauseIsBigEnoughHasNoUncertaintyOfItsOwn() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            adds [mm] = 0.10 mm ± 0.05 mm
            size = big_enough(adds, 0.08 mm)
            p = size.probability
            """);
    assertEquals(List.of(), sheet.errors());
    // 0.02 mm over 0.025 mm is 0.8 standard deviations: 0.78814, NIST/SEMATECH e-Handbook 1.3.6.7.1
    assertEquals(0.78814, (double) sheet.result("p").orElseThrow().value(), 5e-6);
    assertEquals(0, (double) sheet.result("p").orElseThrow().u());
  }

  /** At 20 degC no expansion is asked for; beside it there is, and that is what must be said. */
  @Test
  void anUncertaintyThatCannotBeStatedNamesWhatIsRefusedBesideTheValue() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            room [degC] = 20 degC ± 1 degC
            hub [degC] = heat_to_fit(50 mm, 0.05 mm, 0.05 mm, 12e-6 1/K, temperature_shaft: room)
            """);
    assertEquals(1, sheet.errors().size());
    assertTrue(
        sheet.errors().get(0).wayOut().contains("expansion_shaft"), sheet.errors().toString());
  }
}
