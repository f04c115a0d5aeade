package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Propagation of uncertainty through the language against the examples of the Guide. */
class UncertaintyTest {
  private static SheetOfLines.Result result(String lines, String name) {
    SheetOfLines sheet = SheetOfLines.of(lines);
    assertEquals(List.of(), sheet.errors());
    return sheet.result(name).orElseThrow();
  }

  /**
   * uncertainty-gum-h1-end-gauge. Source: JCGM 100:2008 (GUM), annex H.1: l = 50.000 838 mm, u_c =
   * 32 nm, effective degrees of freedom 16.
   */
  @Test
  void reproducesTheEndGaugeOfJcgm100AnnexH1() {
    String lines =
        """
        l_s [nm] = 50000623 nm ± 50 nm (k = 2, dof = 18)
        d [nm] = 215 nm ± 19.4 nm (k = 2, dof = 25.6)
        delta_alpha [1/K] = 0 1/K ± 1e-6 1/K (k = 1.7320508075688772, dof = 50)
        theta [K] = -0.1 K ± 0.41 K (k = 1)
        alpha_s [1/K] = rectangular(9.5e-6 1/K, 13.5e-6 1/K)
        delta_theta [K] = 0 K ± 0.05 K (k = 1.7320508075688772, dof = 2)
        l [nm] = l_s + d - l_s * (delta_alpha * theta + alpha_s * delta_theta)
        """;
    SheetOfLines.Result l = result(lines, "l");
    assertEquals(50000838, (double) l.value(), 0.5);
    assertEquals(32, (double) l.u(), 0.5);
    // truncated in the print; 16.76 from unrounded contributions
    assertEquals(16, Math.floor(l.figure().degreesOfFreedom()));
    Trace trace = ValueGraph.of(GraphSource.ofWorkings(lines)).trace("l").orElseThrow();
    double[] components = {25, 16.6, 9.7, 2.9};
    for (int i = 0; i < components.length; i++) {
      assertEquals(
          components[i],
          Math.abs(trace.contributions().get(i).standardUncertainty()) * 1e9,
          0.05,
          trace.contributions().get(i).subject());
    }
  }

  /**
   * Derived: the shims are changed by what a reading asks for, so the true backlash after is the
   * target and what the reading was wrong by. An exact figure there would be judged within any
   * limit round the target.
   */
  @Test
  void theBacklashAfterAChangeOfShimsIsAsUncertainAsTheReadingBefore() {
    SheetOfLines.Result after =
        result(
            """
            read [mm] = 0.30 mm ± 0.04 mm
            shims = bevel_shims(read, 0.15 mm, 20, 40, "away from apex", "away from apex")
            after [mm] = shims.backlash
            """,
            "after");
    assertEquals(0.15, (double) after.value(), 1e-12);
    assertEquals(0.02, (double) after.u(), 1e-12);
  }

  /**
   * JCGM 100:2008, annex H.3: a straight line through n points leaves n - 2 degrees of freedom, one
   * for three trials; next shim and change vary together, so their difference is exact.
   */
  @Test
  void aRateFromThreeTrialsHasOneDegreeOfFreedom() {
    String lines =
        """
        rate = backlash_rate_measured([shim_trial(1.00 mm, 0.10 mm), shim_trial(1.10 mm, 0.15 mm), shim_trial(1.20 mm, 0.205 mm)], 0.18 mm)
        slope = rate.slope
        last [mm] = rate.next_shim - rate.change
        """;
    SheetOfLines.Result slope = result(lines, "slope");
    assertEquals(1, slope.figure().degreesOfFreedom());
    // s = 0.002041 mm over sqrt(0.02) mm
    assertEquals(0.014434, (double) slope.u(), 1e-6);
    assertEquals(0, (double) result(lines, "last").u(), 1e-12);
  }

  /**
   * uncertainty-gum-h2-impedance. Source: JCGM 100:2008 (GUM), annex H.2, Tables H.2 to H.4: five
   * simultaneous readings, correlated means.
   */
  @Test
  void reproducesTheImpedanceOfJcgm100AnnexH2() {
    double[][] read = {
      {5.007, 4.994, 5.005, 4.99, 4.999},
      {0.019663, 0.019639, 0.01964, 0.019685, 0.019678},
      {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
    };
    String lines =
        line("v", read[0], "V")
            + line("i", read[1], "A")
            + line("phi", read[2], "rad")
            + correlate("v", "i", read[0], read[1])
            + correlate("v", "phi", read[0], read[2])
            + correlate("i", "phi", read[1], read[2])
            + "r [ohm] = v * cos(phi) / i\nx [ohm] = v * sin(phi) / i\nz [ohm] = v / i\n";
    check(lines, "r", 127.732, 0.071);
    check(lines, "x", 219.847, 0.295);
    check(lines, "z", 254.260, 0.236);
    ValueGraph graph = ValueGraph.of(GraphSource.ofWorkings(lines));
    // Table H.4
    assertEquals(-0.588, correlation(graph, "r", "x"), 0.0006);
    assertEquals(-0.485, correlation(graph, "r", "z"), 0.0006);
    assertEquals(0.993, correlation(graph, "x", "z"), 0.0006);
  }

  private static void check(String lines, String name, double value, double u) {
    SheetOfLines.Result result = result(lines, name);
    assertEquals(value, (double) result.value(), 0.0006, name);
    assertEquals(u, (double) result.u(), 0.0006, name);
  }

  private static double correlation(ValueGraph graph, String a, String b) {
    Gradient x = ((Value.Scalar) graph.figure(a).orElseThrow().value().orElseThrow()).gradient();
    Gradient y = ((Value.Scalar) graph.figure(b).orElseThrow().value().orElseThrow()).gradient();
    return graph.correlations().covariance(x, y)
        / graph.correlations().standardUncertainty(x)
        / graph.correlations().standardUncertainty(y);
  }

  private static double mean(double[] x) {
    return java.util.Arrays.stream(x).average().orElseThrow();
  }

  private static double covariance(double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += (x[i] - mean(x)) * (y[i] - mean(y));
    }
    return sum / (x.length - 1) / x.length;
  }

  private static String line(String name, double[] read, String unit) {
    return String.format(
        Locale.ROOT,
        "%s [%s] = %.12f %s \u00b1 %.15f %s (k = 1)%n",
        name,
        unit,
        mean(read),
        unit,
        Math.sqrt(covariance(read, read)),
        unit);
  }

  private static String correlate(String a, String b, double[] x, double[] y) {
    double r = covariance(x, y) / Math.sqrt(covariance(x, x) * covariance(y, y));
    return String.format(Locale.ROOT, "correlate %s, %s: %.12f%n", a, b, r);
  }

  /** JCGM 100, 4.3 and F.2.2.1 (uncertainty-type-b-standard-uncertainties), a = 5 um. */
  @Test
  void distributionsHaveTheDeviationsOfTheGuide() {
    String lines =
        """
        rectangle [um] = rectangular(-5 um, 5 um)
        triangle [um] = triangular(-5 um, 0 um, 5 um)
        sine [um] = arcsine(-5 um, 5 um)
        bell [um] = normal(3 um, 0.7 um)
        """;
    assertEquals(2.886751346, (double) result(lines, "rectangle").u(), 1e-9);
    assertEquals(2.041241452, (double) result(lines, "triangle").u(), 1e-9);
    assertEquals(3.535533906, (double) result(lines, "sine").u(), 1e-9);
    assertEquals(0.7, (double) result(lines, "bell").u(), 1e-12);
    assertEquals(3.0, (double) result(lines, "bell").value(), 1e-12);
  }

  @Test
  void xLessXIsNothing() {
    SheetOfLines.Result none = result("x [mm] = 10 mm \u00b1 0.2 mm\nd [mm] = x - x", "d");
    assertEquals(0.0, (double) none.value());
    assertEquals(0.0, (double) none.u());
  }

  @Test
  void aPerCentAfterPlusMinusIsOfTheValue() {
    assertEquals(1.0, (double) result("f [N] = 100 N \u00b1 2 %", "f").u(), 1e-12);
  }

  @Test
  void correlationsThatCannotAllHoldAreRefusedAndLeftOut() {
    String lines =
        """
        a = 1 \u00b1 2
        b = 1 \u00b1 2
        c = 1 \u00b1 2
        correlate a, b: -0.9
        correlate b, c: -0.9
        correlate a, c: -0.9
        s = a + b
        """;
    SheetOfLines sheet = SheetOfLines.of(lines);
    assertEquals(3, sheet.errors().size());
    assertEquals("These correlations cannot all hold together.", sheet.errors().get(0).message());
    assertEquals(4, sheet.errors().get(0).span().line());
    assertEquals(Math.sqrt(2), (double) sheet.result("s").orElseThrow().u(), 1e-15);
  }

  @Test
  void onlyInputsCanBeCorrelated() {
    SheetOfLines sheet =
        SheetOfLines.of("a = 1 \u00b1 2\nb = 2 * a\nc = 3 \u00b1 1\ncorrelate b, c: 0.5");
    assertTrue(
        sheet.errors().get(0).message().startsWith("The name b is no input"),
        sheet.errors().toString());
  }

  @Test
  void aChoiceByStepsIsExactAndSaysWhereTheNextStepIsPossible() {
    SheetOfLines sheet =
        SheetOfLines.of(
            "a [mm] = 0.49 mm \u00b1 0.02 mm\nshim [mm] = ceil(a, 0.05 mm)\n"
                + "b [mm] = 0.475 mm \u00b1 0.02 mm\nother [mm] = ceil(b, 0.05 mm)");
    assertEquals(0.5, (double) sheet.result("shim").orElseThrow().value(), 1e-15);
    assertEquals(0.0, (double) sheet.result("shim").orElseThrow().u());
    assertEquals(1, sheet.hints().size());
    assertEquals(2, sheet.hints().get(0).span().line());
  }

  @Test
  void aConditionWithinItsUncertaintyIsPointedOut() {
    SheetOfLines sheet =
        SheetOfLines.of(
            "a = 1.0 \u00b1 0.4\nb = if a < 1.1 then a else 2 * a\nc = if a < 9 then a else 2");
    assertEquals(1, sheet.hints().size());
    assertEquals(2, sheet.hints().get(0).span().line());
    assertEquals(0.2, (double) sheet.result("b").orElseThrow().u(), 1e-15);
  }

  /** Derived: 5 % of 0 is 0, and a reading of nought is no more exact than another. */
  @Test
  void aShareOfNoughtIsNoUncertainty() {
    SheetOfLines sheet = SheetOfLines.of("a = 0 mm ± 5 %");
    assertTrue(sheet.errors().get(0).message().contains("share of nought"));
  }

  /**
   * Largest double 1.8e308 (IEEE 754): its square, or the same number in a smaller unit, is none.
   */
  @Test
  void whatIsTooLargeIsRefusedAtItsLineAndHarmsNoOther() {
    SheetOfLines sheet =
        SheetOfLines.of("a = 1e308 mm\nb = a * 10\nc = 5 mm ± 1e308 mm\nd = 1 mm + 1 mm");
    assertEquals(List.of(1, 3), sheet.errors().stream().map(e -> e.span().line()).toList());
    assertEquals(2.0, sheet.result("d").orElseThrow().value());
  }
}
