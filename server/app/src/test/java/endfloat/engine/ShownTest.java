package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.units.UnitTable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShownTest {
  private static String text(double number, double expanded, String unit) {
    var u = UnitTable.find(unit);
    return Shown.number(u.toSi(number), u.interval().toSi(expanded), u, Optional.empty()).text();
  }

  /**
   * JCGM 100:2008, 7.2.6: 10.057 62 ohm with u_c = 27 mohm is given as 10.058 ohm. From memory of
   * the clause; the rule of two figures and the value to its place is the clause's own.
   */
  @Test
  void theUncertaintyHasTwoFiguresAndTheValueItsPlace() {
    assertEquals("10.058 \u00b1 0.027 ohm", text(10.05762, 0.027, "ohm").replace("\u03a9", "ohm"));
    assertEquals("0.335 \u00b1 0.016 mm", text(0.33512, 0.0157, "mm"));
    assertEquals("0.34 \u00b1 0.10 mm", text(0.33512, 0.0996, "mm"));
    assertEquals("100 \u00b1 12 mm", text(100.04, 12.3, "mm"));
    assertEquals("54300 \u00b1 1200 N", text(54321, 1234, "N"));
  }

  @Test
  void whatIsExactAndDoesNotEndHasFiveFigures() {
    assertEquals("0.3048 mm", text(0.3048, 0, "mm"));
    assertEquals("31416 W", text(31415.926535898, 0, "W"));
    assertEquals("0.69058 mm", text(0.690584963483, 0, "mm"));
    assertEquals("0", text(0, 0, "1"));
  }

  /** Doubles carry 2.2e-16 of a value (IEEE 754); a few operations make some hundred times that. */
  @Test
  void whatRoundingLeavesIsNoUncertainty() {
    assertEquals("\u22120.81386", text(-0.8138621856057517, 1.9e-15, "1"));
    assertEquals("1.0000000000 \u00b1 0.0000000020 mm", text(1, 2e-9, "mm"));
  }

  @Test
  void minusIsAMinus() {
    assertEquals("\u22120.0120 \u00b1 0.0030 mm", text(-0.012, 0.003, "mm"));
    assertEquals("\u22125 mm", text(-5, 0, "mm"));
  }

  @Test
  void aTemperatureIsSaidOnItsScaleAndItsSpreadAsAnInterval() {
    assertEquals("85.0 \u00b1 1.4 \u00b0C", text(85, 1.4, "degC"));
    assertEquals("185.0 \u00b1 2.5 \u00b0F", text(185, 2.52, "degF"));
  }

  @Test
  void smallAndLargeNumbersShareAPowerOfTen() {
    assertEquals(
        "23.00\u00d710\u207b\u2076 \u00b1 0.50\u00d710\u207b\u2076 1/K",
        text(23.0e-6, 0.5e-6, "1/K"));
    assertEquals("210\u00d710\u2079 Pa", text(2.1e11, 0, "Pa"));
  }

  @Test
  void anInputKeepsItsDigits() {
    var mm = UnitTable.find("mm");
    assertEquals(
        "480.0 \u00b1 0.10 mm", Shown.number(0.48, 0.1e-3, mm, Optional.of("480.0")).text());
    assertEquals(
        "23.0\u00d710\u207b\u2076 1/K",
        Shown.number(23e-6, 0, UnitTable.find("1/K"), Optional.of("23.0e-6")).text());
  }

  /**
   * ISO 286-1, 400 H7: 0 to 57 um. Rounded to five figures its upper limit would stand 3 um above
   * where it is.
   */
  @Test
  void anExactSizeStandsToItsLastFigure() {
    assertEquals("400.057", exact("x [mm] = iso_limits(400 mm, \"H7\").greatest_size"));
    assertEquals("299.991", exact("x [mm] = iso_limits(300 mm, \"M6\").greatest_size"));
    assertEquals("12.5012", exact("x [in] = 12.5 in + 1.2 thou"));
    assertEquals("0.33333", exact("x [mm] = 1 mm / 3"));
    assertEquals("3.1416", exact("x [rad] = pi"));
  }

  private static String exact(String line) {
    SheetOfLines sheet = SheetOfLines.of(line);
    assertEquals(List.of(), sheet.errors());
    return Shown.of(sheet.result("x").orElseThrow().figure(), GraphSettings.STANDARD)
        .orElseThrow()
        .value();
  }
}
