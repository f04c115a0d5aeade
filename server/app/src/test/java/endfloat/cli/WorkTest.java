package endfloat.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code endfloat work}. */
class WorkTest {

  /**
   * The inch is 25.4 mm exactly: international yard and pound agreement of 1959; NIST SP 811, B.8.
   */
  @ParameterizedTest
  @CsvSource({"a [mm] = 12 thou,0.3048", "a [mm] = 1.5 thou,0.0381"})
  void readsThouExactly(String line, double millimetres) {
    JsonNode a = Run.of(line, "work", "--json").result("a");
    assertEquals(millimetres, a.path("value").asDouble());
    assertEquals("mm", a.path("unit").asText());
  }

  /** Common practice, no source: at the bench 12 thou is called 0.3 mm and 1.5 thou 0.04 mm. */
  @ParameterizedTest
  @CsvSource({"a [mm] = 12 thou,0.3,1", "a [mm] = 1.5 thou,0.04,2"})
  void comesOutAsTheTradeRounds(String line, double millimetres, int places) {
    double value = Run.of(line, "work", "--json").result("a").path("value").asDouble();
    double step = StrictMath.pow(10, -places);
    assertEquals(millimetres, Math.round(value / step) * step, 1e-12);
  }

  /**
   * P = T ω with ω = 2π n / 60, v = ω r: SI Brochure, 9th ed.; 100 N·m at 3000 rpm is 31 415.93 W.
   */
  @Test
  void countsRevolutionsAsAngleInPowerAndSpeed() {
    Run run = Run.of("p [W] = 100 N.m * 3000 rpm\nv [m/s] = 40 mm * 3000 rpm", "work", "--json");
    assertEquals(31415.93, run.result("p").path("value").asDouble(), 0.005);
    assertEquals(12.566, run.result("v").path("value").asDouble(), 0.0005);
    assertEquals(Exit.DONE, run.code());
  }

  @Test
  void whatIsSubtractedFromItselfLeavesNothing() {
    Run run = Run.of("x = 10 mm ± 0.2 mm\ny = x - x", "work", "--json");
    assertEquals(0.0, run.result("y").path("value").asDouble());
    assertEquals(0.0, run.result("y").path("u").asDouble());
    assertEquals(0.1, run.result("x").path("u").asDouble(), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "f [Hz] = 60 rpm",
        "q [degC] = 20 degC + 30 degC",
        "z = 1 mm + 1 deg",
        "a = b\nb = a"
      })
  void refusesWithLineColumnAndWayOut(String lines) {
    Run run = Run.of("ok = 1 mm\n" + lines, "work", "--json");
    assertEquals(Exit.BAD_INPUT, run.code());
    JsonNode errors = run.json().path("errors");
    assertTrue(errors.size() >= 1, run.out());
    for (JsonNode error : errors) {
      assertTrue(error.path("line").asInt() >= 2, run.out());
      assertTrue(error.path("column").asInt() >= 1, run.out());
      // The sentence that says what is wrong, and the one that says what to do.
      assertTrue(error.path("message").asText().length() > 30, run.out());
    }
    assertEquals(1.0, run.result("ok").path("value").asDouble());
  }

  @Test
  void namesTheWayOutOfAFrequencyInRevolutions() {
    JsonNode error = Run.of("f [Hz] = 60 rpm", "work", "--json").json().at("/errors/0");
    assertTrue(error.path("message").asText().contains("1 rev"), error::toString);
  }

  @Test
  void printsExactlyTheseKeys() {
    Run run = Run.of("a [mm] = 0.2 mm\nlimit a: 0.1 .. 0.3 mm\nb = a + 1 s", "work", "--json");
    assertEquals(List.of("results", "errors"), keys(run.json()));
    assertEquals(List.of("name", "value", "unit", "u", "verdict"), keys(run.result("a")));
    assertEquals("within", run.result("a").path("verdict").asText());
    assertEquals(List.of("line", "column", "message"), keys(run.json().at("/errors/0")));
  }

  @Test
  void givesRecordsByFieldTextsWithoutUnitAndListsAsArrays() {
    Run run =
        Run.of(
            "fit = iso_fit(25 mm, \"H7/g6\")\n"
                + "word = if 1 mm < 2 mm then \"tight\" else \"loose\"\n"
                + "holds = 1 mm < 2 mm\n"
                + "sizes [mm] = [1 mm, 2 mm ]",
            "work",
            "--json");
    assertTrue(run.out().contains("\"fit."), run.out() + run.err());
    assertEquals("tight", run.result("word").path("value").asText());
    assertTrue(run.result("word").path("unit").isNull());
    assertTrue(run.result("holds").path("value").asBoolean());
    assertTrue(run.result("holds").path("unit").isNull());
    assertEquals("[1.0,2.0]", run.result("sizes").path("value").toString());
    assertEquals(2, run.result("sizes").path("u").size());
  }

  @Test
  void endsWithOneWhereAVerdictIsOutsideAndWithNoughtWhereItIsNotProven() {
    assertEquals(
        Exit.OUTSIDE, Run.of("a = 0.4 mm\nlimit a: 0.1 .. 0.3 mm", "work", "--json").code());
    Run close =
        Run.of(
            "a = 0.3 mm ± 0.1 mm\nlimit a: 0.1 .. 0.31 mm (rule: \"guarded\")", "work", "--json");
    assertEquals("not proven", close.result("a").path("verdict").asText());
    assertEquals(Exit.DONE, close.code());
    assertEquals(Exit.BAD_INPUT, Run.of("a = 0.4 mm\nlimit a: 0.1 .. 0.3 mm\nb = ", "work").code());
  }

  @Test
  void printsATableForPeople() {
    Run run = Run.of("gap [mm] = 0.2 mm ± 0.02 mm\nlimit gap: 0.1 .. 0.3 mm", "work");
    assertEquals(Exit.DONE, run.code(), run.err());
    assertTrue(run.out().matches("(?s)gap +0\\.2 ± 0\\.02 mm +within.*"), run.out());
  }

  @Test
  void standsWhateverIsTyped() {
    for (String input :
        new String[] {
          "",
          "\n\n",
          "(".repeat(10_000),
          "a = " + "-".repeat(10_000) + "1",
          "\0",
          "limit",
          "a = \"",
          "𝛼 = 1"
        }) {
      Run run = Run.of(input, "work", "--json");
      assertFalse((run.out() + run.err()).contains("\tat "), run.err());
      assertFalse((run.out() + run.err()).contains("Exception"), run.err());
      assertTrue(run.json().has("errors"));
    }
    Run bytes = Run.of(new byte[] {(byte) 0xff, (byte) 0xfe}, "work", "--json");
    assertEquals(Exit.BAD_INPUT, bytes.code());
    assertTrue(bytes.err().contains("not UTF-8"), bytes.err());
  }

  /** Every formula of the truth set, as formulas.txt names it with its source. */
  @Test
  void reproducesThePublishedFormulas() throws Exception {
    String all;
    try (var in = WorkTest.class.getResourceAsStream("formulas.txt")) {
      all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    List<String> wrong = new ArrayList<>();
    int count = 0;
    for (String block : all.split("\n\\s*\n")) {
      if (block.startsWith("id: ")) {
        count++;
        check(block, wrong);
      }
    }
    assertEquals(58, count);
    assertEquals(List.of(), wrong);
  }

  private static void check(String block, List<String> wrong) {
    StringBuilder lines = new StringBuilder();
    List<String[]> expected = new ArrayList<>();
    String id = "";
    for (String line : block.split("\n")) {
      if (line.startsWith("id: ")) {
        id = line.substring(4);
      } else if (line.startsWith("expect ")) {
        expected.add(line.split(" "));
      } else if (!line.startsWith("source: ")) {
        lines.append(line).append('\n');
      }
    }
    Run run = Run.of(lines.toString(), "work", "--json");
    if (run.code() != Exit.DONE) {
      wrong.add(id + ": " + run.json().path("errors"));
      return;
    }
    for (String[] one : expected) {
      String key = one[1].equals("standard_uncertainty") ? "u" : one[1];
      double value = run.result("result").path(key).asDouble();
      double want = Double.parseDouble(one[2]);
      double tolerance =
          Double.parseDouble(one[4]) * (one[5].equals("relative") ? Math.abs(want) : 1);
      if (!(Math.abs(value - want) <= tolerance)) {
        wrong.add(id + ": " + key + " " + value + ", not " + want);
      }
    }
  }

  private static List<String> keys(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** "Center", "percent", "sleeve": the other country's words; common practice, no source. */
  @Test
  void messagesAreInTheWordsOfTheSideAskedFor() {
    String lines = "a = recommended_backlash_coarse(1 1/in, 500 in)\nb = 5 mm * %";
    assertTrue(errors(lines, "american").contains("at this center distance"));
    assertTrue(errors(lines, "american").contains("Write the percent as"));
    assertTrue(errors(lines, "british").contains("at this centre distance"));
    assertEquals(errors(lines, "british"), Run.of(lines, "work", "--json").out());
  }

  @Test
  void whatAPersonWroteIsNeverSaidOtherwise() {
    String lines =
        "liner = sump + liner\nsump = liner\na [\"] = \"gudgeon pin\" + 1\ncolour = metre\n"
            + "b = material(\"liner of colour\").yield";
    assertEquals(errors(lines, "british"), errors(lines, "american"));
    assertTrue(errors(lines, "american").contains("liner, sump"), errors(lines, "american"));
  }

  private static String errors(String lines, String terms) {
    return Run.of(lines, "work", "--json", "--terms", terms).out();
  }

  @Test
  void termsOfNoCountryAreRefused() {
    Run run = Run.of("a = 1", "work", "--terms", "welsh");
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("Write british or american"), run.err());
  }

  @Test
  void linesMayBeWorkedOutAmongThoseOfARecord() {
    Run run =
        Run.of(
            "twice [mm] = 2 * max(dial)",
            "work",
            "--json",
            "--record",
            "../../notebooks/w6-bevel-mesh.json");
    assertEquals(1, run.json().path("results").size(), run.out());
    assertEquals(Exit.DONE, run.code());
    run = Run.of("dial = 1", "work", "--record", "../../notebooks/w6-bevel-mesh.json");
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("The name dial is defined twice"), run.err());
  }

  /**
   * Effective degrees of freedom by Welch and Satterthwaite, JCGM 100:2008, G.4.2: two inputs of
   * one size with 4 and 12, (1 + 1)²/(1/4 + 1/12) = 12.
   */
  @Test
  void degreesOfFreedomComeWithTheUncertaintyWhereTheyAreFinite() {
    Run run =
        Run.of(
            "a = 1 mm ± 0.2 mm (k = 2, dof = 4)\nb = 3 mm ± 0.2 mm (dof = 12)\nc = a + b\nd = 1 mm ± 0.1 mm",
            "work",
            "--json");
    assertEquals(4, run.result("a").path("dof").asDouble());
    assertEquals(12, run.result("c").path("dof").asDouble(), 1e-12);
    assertFalse(run.result("d").has("dof"));
  }

  @Test
  void aWordThatALimitDoesNotKnowIsMarkedWhereItStands() {
    Run run = Run.of("a = 1 mm\nlimit a: at least 1 mm (state: \"worm\")", "work", "--json");
    JsonNode error = run.json().path("errors").path(0);
    assertEquals(25, error.path("column").asInt(), error::toString);
    assertTrue(error.path("message").asText().contains("\"worn\""), error::toString);
  }
}
