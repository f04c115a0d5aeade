package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CompletionTest {
  private final KnownNames names =
      KnownNames.of(
          "lash_cold = 0.15 mm ± 0.01 mm\nlash_hot = 0.3 mm\ndepth = 3 mm\n"
              + "fit = iso_fit(25 mm, \"H7/g6\")");

  /** The place is where the bar stands. */
  private Completion at(String text) {
    int place = text.indexOf('|');
    return Completion.at(text.replace("|", ""), place, names, KnownNames.LIBRARY);
  }

  private List<String> labels(String text) {
    return at(text).options().stream().map(Completion.Option::label).toList();
  }

  @Test
  void namesOfTheRecordComeFirst() {
    assertEquals("lash_cold", labels("a = la|").get(0));
    assertEquals(4, at("a = la|").from());
    Completion.Option option = at("a = la|").options().get(0);
    assertEquals("length, mm", option.detail());
    assertEquals("name", option.kind());
  }

  @Test
  void calculationsAreOfferedWithWhatTheyDo() {
    assertTrue(labels("a = therm|").contains("thermal_growth"));
    Completion.Option option =
        at("a = thermal_gr|").options().stream()
            .filter(o -> o.label().equals("thermal_growth"))
            .findFirst()
            .orElseThrow();
    assertEquals("thermal_growth(", option.apply());
    assertFalse(option.detail().isEmpty());
  }

  @Test
  void argumentsStillMissingAreOfferedInACall() {
    List<String> first = labels("a = thermal_growth(|");
    assertEquals(List.of("length:", "expansion:", "temperature_change:"), first.subList(0, 3));
    List<String> later = labels("a = thermal_growth(lash_cold, |");
    assertEquals("expansion:", later.get(0));
    List<String> named = labels("a = thermal_growth(expansion: 1e-6 1/K, |");
    assertFalse(named.contains("expansion:"));
    assertTrue(named.contains("length:"));
    assertEquals(
        "temperature_change: ", at("a = thermal_growth(lash_cold, tem|").options().get(0).apply());
  }

  @Test
  void unitsAreOfferedAfterANumberAndInAUnitMark() {
    assertEquals("mm", labels("a = 5 mm|").get(0));
    assertTrue(labels("a = 5 |").contains("mm"));
    assertTrue(labels("a [|").contains("mm"));
    assertTrue(labels("a [k|").contains("kg"));
    assertTrue(labels("a = 5 N/m|").contains("mm"));
    assertEquals(8, at("a = 5 N/m|").from());
    assertFalse(labels("a = lash|").contains("mm"));
  }

  @Test
  void textsAreOfferedBetweenQuotes() {
    assertTrue(labels("a = material(\"alu|").stream().anyMatch(l -> l.startsWith("alu")));
    assertTrue(labels("limit lash_hot: 0 .. 1 mm (rule: \"|").contains("guarded"));
    assertTrue(labels("limit lash_hot: 0 .. 1 mm \"x\" (state: \"|").contains("worn"));
  }

  @Test
  void choicesOfAnArgumentAreOfferedBetweenQuotes() {
    var chosen =
        KnownNames.LIBRARY.all().stream()
            .flatMap(
                c ->
                    c.parameters().stream()
                        .filter(p -> !p.choices().isEmpty())
                        .map(p -> List.of(c.name(), p.name(), p.choices().get(0))))
            .findFirst()
            .orElseThrow();
    assertTrue(
        labels("a = " + chosen.get(0) + "(" + chosen.get(1) + ": \"|").contains(chosen.get(2)));
  }

  @Test
  void resultsAreOfferedAfterAPoint() {
    assertEquals(List.of("least_clearance", "greatest_clearance", "kind"), labels("a = fit.|"));
    assertEquals(List.of("least_clearance"), labels("a = fit.lea|"));
  }

  @Test
  void aLineBeginsWithAWordOrAName() {
    assertEquals(
        List.of("limit", "lash_cold", "lash_hot"),
        labels("a = 1\nl|").stream().filter(l -> l.startsWith("l")).toList());
    assertTrue(labels("limit |").contains("lash_hot"));
    assertFalse(labels("limit |").contains("sin"));
    assertEquals(List.of("least", "most"), labels("limit lash_hot: at |"));
  }

  @Test
  void behindAValueOnlyWhatCanFollowIsOffered() {
    assertEquals(List.of(), labels("limit lash_hot: 0 .. 1 mm \"table 2\" |"));
    assertEquals(List.of(), labels("limit lash_hot: 0 .. 1 mm \"table 2\" (condition: \"hot\"|"));
    assertEquals(List.of(), labels("limit lash_hot: 0 .. 1 mm \"table 2\" (condition: \"hot\" |"));
    assertEquals(List.of(), labels("a = material(\"steel 4140\"|"));
    assertEquals(List.of(), labels("a = lash_cold |"));
    assertEquals(List.of(), labels("lash_new |"));
    assertEquals(List.of(), labels("lash_new [mm] |"));
    assertEquals(List.of("at least", "at most"), labels("limit lash_hot: |").subList(0, 2));
  }

  @Test
  void behindAConditionStandsWhatContinuesIt() {
    assertEquals(List.of("then", "and", "or"), labels("a = if lash_cold > depth |"));
    assertEquals(List.of(), labels("a = if lash_cold |"));
    assertEquals(List.of("else"), labels("a = if lash_cold > depth then lash_cold |"));
    assertEquals(List.of(), labels("a = if lash_cold > depth then 1 mm else depth |"));
    assertEquals(List.of("then"), labels("a = if fit.kind = \"clearance\" th|"));
    assertEquals(List.of("and", "or"), labels("a = lash_cold > depth |"));
    assertEquals(List.of("then", "and", "or"), labels("a = max(1, if lash_cold > 5 mm |"));
  }

  @Test
  void aSolveIsLedThroughItsWords() {
    assertEquals(List.of(), labels("a = solve lash_cold |"));
    assertEquals(List.of("for"), labels("a = solve lash_cold = 2 * a |"));
    assertEquals(List.of("between"), labels("a = solve lash_cold = 2 * a for a |"));
    assertEquals(List.of("and"), labels("a = solve lash_cold = 2 * a for a between depth |"));
    assertEquals(List.of(), labels("a = solve lash_cold = 2 * a for a between 1 mm and depth |"));
  }

  @Test
  void nothingIsOfferedInAComment() {
    assertEquals(List.of(), labels("a = 1 -- la|"));
  }

  @Test
  void aCallMayReachOverLines() {
    assertTrue(labels("a = thermal_growth(lash_cold,\n  |").contains("expansion:"));
  }

  @Test
  void pointingAtAWordExplainsIt() {
    String text = "a = thermal_growth(lash_cold, 1e-6 1/K, 5 K) + sin(20 deg)";
    Hover call = Hover.at(text, 6, names, KnownNames.LIBRARY).orElseThrow();
    assertEquals("thermal_growth(length, expansion, temperature_change)", call.title());
    assertTrue(call.lines().stream().anyMatch(l -> l.startsWith("source: ")));
    assertEquals(
        List.of("length, mm"), Hover.at(text, 20, names, KnownNames.LIBRARY).orElseThrow().lines());
    assertEquals(
        "degree of angle",
        Hover.at(text, text.indexOf("deg"), names, KnownNames.LIBRARY)
            .orElseThrow()
            .lines()
            .get(0));
    assertTrue(Hover.at("a = 5 ", 5, names, KnownNames.LIBRARY).isEmpty());
    assertTrue(Hover.of("fit", names, KnownNames.LIBRARY).isPresent());
  }
}
