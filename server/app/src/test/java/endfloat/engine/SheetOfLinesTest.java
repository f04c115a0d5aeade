package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SheetOfLinesTest {
  private static double value(String lines, String name) {
    SheetOfLines sheet = SheetOfLines.of(lines);
    assertEquals(List.of(), sheet.errors());
    return (double) sheet.result(name).orElseThrow().value();
  }

  /**
   * A01-thou and its neighbours. Source: NIST Special Publication 811 (2008 ed.), Appendix B.8: one
   * thousandth of an inch is 25.4 um exactly. That 12 thou is called 0.3 mm and one and a half thou
   * 0.04 mm at the bench is common practice, no source.
   */
  @Test
  void thousComeOutExactly() {
    assertEquals(0.3048, value("a [mm] = 12 thou", "a"));
    assertEquals(0.0381, value("a [mm] = 1.5 thou", "a"));
    assertEquals(0.3, Math.rint(value("a [mm] = 12 thou", "a") * 10) / 10);
    assertEquals(0.04, Math.rint(value("a [mm] = 1.5 thou", "a") * 100) / 100);
  }

  /** 100 N.m times 100 pi rad/s, and 40 mm times 100 pi rad/s; the angle drops out of both. */
  @Test
  void revolutionsAMinuteGivePowerAndSpeed() {
    assertEquals(10000 * Math.PI, value("p [W] = 100 N.m * 3000 rpm", "p"), 1e-9);
    assertEquals(4 * Math.PI, value("v [m/s] = 40 mm * 3000 rpm", "v"), 1e-13);
  }

  @Test
  void eachBadLineIsRefusedAtItsPlaceWithAWayOut() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            f [Hz] = 60 rpm
            q [degC] = 20 degC + 30 degC
            s = 1 mm + 1 deg
            a = b
            b = a
            good = 1
            """);
    assertEquals(5, sheet.errors().size());
    for (int i = 0; i < 5; i++) {
      assertEquals(i + 1, sheet.errors().get(i).span().line());
      assertTrue(sheet.errors().get(i).span().from() >= 1);
      assertTrue(!sheet.errors().get(i).wayOut().isEmpty(), sheet.errors().get(i).toString());
    }
    assertEquals(List.of("good"), sheet.results().stream().map(SheetOfLines.Result::name).toList());
  }

  @Test
  void recordsSeriesTextsAndTruthsEachHaveTheirForm() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            steel = material("steel 4140")
            lengths [mm] = [1 mm, 2 mm]
            text = "dowel"
            truth = 2 > 1
            t [degC] = 20 degC ± 1 K
            """);
    assertEquals(List.of(), sheet.errors());
    assertEquals("1/K", sheet.result("steel.expansion").orElseThrow().unit());
    SheetOfLines.Result lengths = sheet.result("lengths").orElseThrow();
    assertEquals(List.of(1.0, 2.0), lengths.value());
    assertEquals(2, ((List<?>) lengths.u()).size());
    assertEquals("dowel", sheet.result("text").orElseThrow().value());
    assertEquals(null, sheet.result("text").orElseThrow().unit());
    assertEquals(true, sheet.result("truth").orElseThrow().value());
    assertEquals(20.0, sheet.result("t").orElseThrow().value());
    assertEquals(0.5, (double) sheet.result("t").orElseThrow().u(), 1e-15);
  }
}
