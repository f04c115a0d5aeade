package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Every answer is also known in closed form. */
class SolveTest {
  private static SheetOfLines sheet(String lines) {
    return SheetOfLines.of(lines);
  }

  private static SheetOfLines.Result result(String lines, String name) {
    SheetOfLines sheet = sheet(lines);
    assertEquals(List.of(), sheet.errors());
    return sheet.result(name).orElseThrow();
  }

  /** x² = a: x = sqrt(a), u(x) = u(a)/(2 sqrt a). */
  @Test
  void theUncertaintyFollowsFromTheImplicitFunction() {
    SheetOfLines.Result x =
        result("a = 2 \u00b1 0.04\nx = solve x^2 = a for x between 0 and 5", "x");
    assertEquals(Math.sqrt(2), (double) x.value(), 1e-15);
    assertEquals(0.02 / (2 * Math.sqrt(2)), (double) x.u(), 1e-15);
  }

  /** The answer moves with its inputs as the formula solved by hand does: nothing is left over. */
  @Test
  void anAnswerAndItsClosedFormAreOneAndTheSame() {
    SheetOfLines.Result rest =
        result(
            """
            lash [mm] = 0.35 mm \u00b1 0.02 mm
            slope = 0.4 \u00b1 0.01
            shim [mm] = solve lash - slope * shim = 0.15 mm for shim between 0 mm and 2 mm
            rest [mm] = shim - (lash - 0.15 mm) / slope
            """,
            "rest");
    assertEquals(0, (double) rest.value(), 1e-15);
    assertEquals(0, (double) rest.u(), 1e-12);
  }

  @Test
  void anInputOfTheRecordCanBeTheUnknownAndKeepsItsOwnValue() {
    String lines =
        """
        shim [mm] = 0.5 mm \u00b1 0.01 mm
        slope = 0.4 \u00b1 0.01
        part [mm] = slope * shim
        lash [mm] = 0.35 mm - part
        needed [mm] = solve lash = 0.05 mm for shim between 0 mm and 2 mm
        """;
    assertEquals(0.75, (double) result(lines, "needed").value(), 1e-14);
    // u(0.3/slope) = 0.3/0.16 * 0.005; the shim's own spread has no part in it
    assertEquals(0.3 / 0.16 * 0.005, (double) result(lines, "needed").u(), 1e-12);
    assertEquals(0.5, (double) result(lines, "shim").value());
  }

  /** The two lines of the language's own description. */
  @Test
  void theUnknownMayReachTheEquationThroughOtherLines() {
    String lines =
        """
        lash_cold [mm] = 0.1 mm + shim * 0.5
        shim [mm] = solve lash_cold = 0.15 mm for shim between 0 mm and 2.5 mm
        """;
    assertEquals(0.1, (double) result(lines, "shim").value(), 1e-15);
    assertEquals(0.15, (double) result(lines, "lash_cold").value(), 1e-15);
  }

  /**
   * x = shim by hand: free + slope x - droop x² = 0.15 mm has the lower root (slope - sqrt(slope² -
   * 4 droop (0.15 - free)))/(2 droop); its uncertainty by differences of that form, one input after
   * the other.
   */
  @Test
  void theUncertaintyOfAnAnswerThroughOtherLinesIsThatOfItsClosedForm() {
    String lines =
        """
        free [mm] = 0.1 mm ± 0.01 mm
        slope = 0.5 ± 0.02
        droop [1/mm] = 0.1 1/mm ± 0.02 1/mm
        by_shim [mm] = slope * shim
        bent [mm] = droop * shim^2
        lash [mm] = free + by_shim - bent
        shim [mm] = solve lash = 0.15 mm for shim between 0 mm and 2 mm
        twice [mm] = 2 * shim
        """;
    double[] mean = {0.1, 0.5, 0.1};
    double[] u = {0.005, 0.01, 0.01};
    double variance = 0;
    for (int i = 0; i < 3; i++) {
      double[] up = mean.clone();
      double[] down = mean.clone();
      up[i] += 1e-6;
      down[i] -= 1e-6;
      double slope = (lowerRoot(up) - lowerRoot(down)) / 2e-6;
      variance += slope * slope * u[i] * u[i];
    }
    assertEquals(lowerRoot(mean), (double) result(lines, "shim").value(), 1e-13);
    assertEquals(Math.sqrt(variance), (double) result(lines, "shim").u(), 1e-10);
    assertEquals(2 * Math.sqrt(variance), (double) result(lines, "twice").u(), 1e-10);
    // what was asked for is met whatever the inputs are
    assertEquals(0.15, (double) result(lines, "lash").value(), 1e-13);
    assertEquals(0, (double) result(lines, "lash").u(), 1e-13);
  }

  private static double lowerRoot(double[] p) {
    double free = p[0];
    double slope = p[1];
    double droop = p[2];
    return (slope - Math.sqrt(slope * slope - 4 * droop * (0.15 - free))) / (2 * droop);
  }

  /** The shim needed, and the one fitted that is rounded from it: no circle to one who reads it. */
  @Test
  void anInputMayBeChosenByTheSolveForIt() {
    String lines =
        """
        lash [mm] = 0.1 mm + fitted * 0.5
        needed [mm] = solve lash = 0.15 mm for fitted between 0 mm and 2.5 mm
        fitted [mm] = round(needed, 0.03 mm)
        """;
    assertEquals(0.1, (double) result(lines, "needed").value(), 1e-15);
    assertEquals(0.09, (double) result(lines, "fitted").value(), 1e-15);
    assertEquals(0.145, (double) result(lines, "lash").value(), 1e-15);
  }

  /** Editing a line of the circle leaves the others as a fresh graph has them. */
  @Test
  void anEditOfALineOfTheCircleReachesTheAnswer() {
    String lines =
        "a = A\nlash = a + shim / 2\nshim = solve lash = 3 for shim between 0 and 90\nb = shim + 1";
    ValueGraph graph = ValueGraph.of(GraphSource.ofWorkings(lines.replace("A", "1")));
    assertEquals(5, graph.figure("b").orElseThrow().si(), 1e-13);
    graph.update(new Clause.Working("w1", "1", lines.replace("A", "2")));
    assertEquals(3, graph.figure("b").orElseThrow().si(), 1e-13);
    String steeper = lines.replace("A", "2").replace("shim / 2", "shim / 4");
    graph.update(new Clause.Working("w1", "1", steeper));
    assertEquals(5, graph.figure("b").orElseThrow().si(), 1e-13);
    graph.update(new Clause.Working("w1", "1", steeper.replace("shim / 4", "shim / 4 mm")));
    assertEquals(Figure.State.ERROR, graph.figure("lash").orElseThrow().state());
    assertEquals("lash", graph.figure("b").orElseThrow().waitingOn().get(0).name());
    graph.update(new Clause.Working("w1", "1", steeper));
    assertEquals(5, graph.figure("b").orElseThrow().si(), 1e-13);
  }

  /** lash = free + shim/2 = 3, so shim = 2 (3 - free); shim + lash = 5 where free = 2. */
  @Test
  void aSolveWorksThroughAnotherSolveAndItsCircle() {
    String lines =
        """
        free = 1 ± 0.2
        lash = free + shim / 2
        shim = solve lash = 3 for shim between 0 and 9
        both = shim + lash
        wanted = solve both = 5 for free between 0 and 3
        """;
    assertEquals(4, (double) result(lines, "shim").value(), 1e-13);
    assertEquals(0.2, (double) result(lines, "shim").u(), 1e-12);
    assertEquals(2, (double) result(lines, "wanted").value(), 1e-13);
  }

  @Test
  void aCircleBesideTheOneThatASolveClosesIsStillOne() {
    SheetOfLines sheet =
        sheet(
            """
            lash = shim / 2 + p
            shim = solve lash = 3 for shim between 0 and 9
            p = q + 1
            q = p - lash
            """);
    List<String> messages = sheet.errors().stream().map(e -> e.message()).toList();
    assertTrue(
        messages.contains("These rest on one another in a circle: p, q, p."), messages.toString());
  }

  @Test
  void twoSolvesForOneAnothersNamesAreSentToOneLine() {
    SheetOfLines sheet =
        sheet(
            """
            e = solve f + 1 = 3 for f between 0 and 9
            f = solve e + 1 = 3 for e between 0 and 9
            """);
    assertEquals(
        "These rest on one another in a circle: e, f, e.", sheet.errors().get(0).message());
    assertEquals(
        "Solve for all of them in one line, with an equation for each.",
        sheet.errors().get(0).wayOut());
  }

  @Test
  void aBracketThatRestsOnItsOwnAnswerIsACircle() {
    SheetOfLines sheet =
        sheet("top = shim + 1\nshim = solve 2 * shim = 3 for shim between 0 and top");
    assertTrue(sheet.errors().get(0).message().contains("in a circle"), sheet.errors().toString());
  }

  @Test
  void aLineWithoutAValueOnTheWayIsToldOfWhereTheSolveStands() {
    SheetOfLines sheet =
        sheet("lash = sqrt(shim - 9)\nshim = solve lash = 3 for shim between 0 and 5");
    assertTrue(
        sheet.errors().get(0).message().startsWith("On the way, lash has no value"),
        sheet.errors().toString());
    assertEquals(2, sheet.errors().get(0).span().line());
  }

  /** The line between changes but not its present value: the answer must not stay behind. */
  @Test
  void aNewRelationOfTheSameValueGivesANewAnswer() {
    String lines =
        "shim = 0.5\nlash = 0.75 - SLOPE * (shim - 0.5)\nx = solve lash = 0.25 for shim between 0 and 9";
    ValueGraph graph = ValueGraph.of(GraphSource.ofWorkings(lines.replace("SLOPE", "0.5")));
    assertEquals(1.5, graph.figure("x").orElseThrow().si(), 1e-14);
    graph.update(new Clause.Working("w1", "1", lines.replace("SLOPE", "0.25")));
    assertEquals(2.5, graph.figure("x").orElseThrow().si(), 1e-14);
    String apart =
        "shim = 0.5\nslope = S\nlash = 0.75 - slope * (shim - 0.5)\n"
            + "x = solve lash = 0.25 for shim between 0 and 9";
    graph.update(new Clause.Working("w1", "1", apart.replace("S", "0.5")));
    graph.update(new Clause.Working("w1", "1", apart.replace("S", "0.125")));
    assertEquals(4.5, graph.figure("x").orElseThrow().si(), 1e-14);
  }

  @Test
  void severalUnknownsAreSolvedTogether() {
    String lines =
        """
        s = 10 \u00b1 0.2
        p = solve a + b = s, a * b = 21 for a between 0 and 5, b between 5 and 10
        a_found = p.a
        b_found = p.b
        """;
    assertEquals(3, (double) result(lines, "a_found").value(), 1e-12);
    assertEquals(7, (double) result(lines, "b_found").value(), 1e-12);
    // da/ds = a/(a - b) = -3/4 and db/ds = b/(b - a) = 7/4
    assertEquals(0.075, (double) result(lines, "a_found").u(), 1e-10);
    assertEquals(0.175, (double) result(lines, "b_found").u(), 1e-10);
  }

  @Test
  void noAnswerIsAnErrorThatSaysHowFarTheEndsAreOff() {
    String message =
        sheet("x [mm] = solve 2 * x = 9 mm for x between 1 mm and 2 mm").errors().get(0).message();
    assertTrue(message.contains("No x between 1 mm and 2 mm"), message);
    assertTrue(message.contains("at 1 mm the left one is 7 mm less"), message);
    assertTrue(message.contains("at 2 mm the left one is 5 mm less"), message);
  }

  @Test
  void severalAnswersAreAnErrorThatNamesThem() {
    String message = sheet("x = solve x^2 = 4 for x between -5 and 5").errors().get(0).message();
    assertTrue(message.contains("2 answers: \u22122, 2"), message);
    message =
        sheet("x = solve (x - 1.03)^2 = 1e-6 for x between 0 and 5").errors().get(0).message();
    assertTrue(message.contains("1.029, 1.031"), message);
  }

  @Test
  void anEquationThatDoesNotHangOnTheUnknownSaysSo() {
    String message =
        sheet("a = 1\nb = 2\nx = solve a = 1 for b between 0 and 5").errors().get(0).message();
    assertEquals(
        "Every b between 0 and 5 makes the two sides equal: they do not hang on it.", message);
  }

  @Test
  void aPoleIsNoAnswer() {
    String message =
        sheet("x = solve 1 / (x - 1.01) = 0 for x between 0 and 5").errors().get(0).message();
    assertTrue(message.startsWith("No x between"), message);
  }

  @Test
  void whereTheSidesOnlyTouchTheUncertaintyIsRefused() {
    SheetOfLines sheet = sheet("a = 0 \u00b1 0.1\nx = solve x^2 = a for x between -1 and 1");
    assertTrue(sheet.errors().get(0).message().contains("only touch"), sheet.errors().toString());
  }
}
