package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes as the bench says them; the inch is 25.4 mm (SP 811, B.8). */
class SizeTest {
  private static final Unit FIELD = UnitTable.find("mm");

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '`',
      value = {
        "2.1235 in; 0.0539369; in",
        "2.1235; 0.0021235; mm",
        "1 15/16 in; 0.0492125; in",
        "12 thou; 0.0003048; thou",
        ".0015in; 0.0000381; in",
        "2.5\"; 0.0635; in",
        "2'; 0.6096; ft",
        "5 ft 2 1/2 in; 1.5875; in",
        "5' 2.5\"; 1.5875; in",
        "-1 ft 6 in; -0.4572; in",
        "85 degC; 358.15; degC",
        "2.1235 in less two thou; 0.0538861; in",
        "2.1235 in less 2 thou; 0.0538861; in",
        "2.1235 in minus half a thou; 0.0539242; in",
        "20 thou under 2.125 in; 0.053467; in",
        "1 15/16 in plus one and a half thou; 0.0492506; in",
        "60.00 less 0.02; 0.05998; mm",
        "60 plus 5 um; 0.060005; mm",
        "one and a half thou; 0.0000381; thou",
        "1 and a half thou; 0.0000381; thou",
        "40 lbf.ft; 54.232717933256016; lbf.ft"
      })
  void isRead(String typed, double si, String unit) {
    Size size = Size.read(typed, FIELD);
    assertEquals(si, size.si(), Math.abs(si) * 1e-15);
    assertEquals(unit, size.unit().symbol());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "worn; \"worn\" is not a size; write a number and its unit, such as 2.1235 in",
        "5 ft 13 in; 13 in after feet is not below 12 in; write the size in inches",
        "1 15/16; \"1 15/16\" is a fraction without a unit, and the field is in mm; write 1 15/16 in, or"
            + " 1 15/16 mm",
        "2.1235 less two thou; \"2.1235\" has no unit, and beside thou it is hardly mm; write 2.1235"
            + " in, or 2.1235 mm",
        "2.1235 in less 2; \"2\" has no unit; write it with its unit, such as 2 thou",
        "2.1235 in less 2 N; \"2 N\" cannot be put to \"2.1235 in\"; write the sum as one number",
        "85 degC less 2 degC; \"2 degC\" cannot be put to \"85 degC\"; write the sum as one number",
        "two tenths; a tenth is 0.0001 in to some and 0.1 mm to others; write 0.1 thou or 0.1 mm for"
            + " each",
        "12 thuo; \"thuo\" is not a unit; nearest: thou, ftH2O"
      })
  void isRefused(String typed, String message, String wayOut) {
    UnitException e = assertThrows(UnitException.class, () -> Size.read(typed, FIELD));
    assertEquals(message, e.getMessage());
    assertEquals(wayOut, e.wayOut());
  }

  /** In an inch field nobody means anything else. */
  @Test
  void whatIsTwoThingsInAMetricFieldIsOneInAnImperialOne() {
    Unit inch = UnitTable.find("in");
    assertEquals(1.9375 * 0.0254, Size.read("1 15/16", inch).si(), 1e-17);
    assertEquals(2.1215 * 0.0254, Size.read("2.1235 less two thou", inch).si(), 1e-17);
  }

  @Test
  void commaIsRefusedAsTheTwoThingsItCanMean() {
    assertThrows(UnitException.class, () -> Size.read("1,250 mm", FIELD));
  }

  @net.jqwik.api.Property
  void anythingTypedIsASizeOrRefused(@net.jqwik.api.ForAll String typed) {
    try {
      Size.read(typed, FIELD);
      Size.read("1 " + typed, FIELD);
    } catch (UnitException e) {
      org.junit.jupiter.api.Assertions.assertFalse(e.wayOut().isEmpty(), typed);
    }
  }
}
