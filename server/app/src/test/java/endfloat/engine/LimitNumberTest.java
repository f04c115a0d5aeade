package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Converted limits are printed as finely as their tolerance needs and no finer, rounded inwards.
 * The inch is 25.4 mm and the pound force 4.4482216 N by definition; the numbers are by hand.
 */
class LimitNumberTest {

  /** The inch is 25.4 mm: 0.10 mm = 0.003937..., 88.02 mm = 3.4653543... in. */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.30, mm, in, 0.00394, 0.01181",
    "0.10, 0.30, mm, thou, 3.94, 11.81",
    "0.08, 0.15, mm, thou, 3.15, 5.90",
    "88.00, 88.02, mm, in, 3.464567, 3.465354",
    "15, 25, degC, degF, 59, 77",
    "0.002, 0.006, in, mm, 0.0508, 0.1524",
    "40, 45, lbf.ft, N.m, 54.24, 61.01",
    "-0.10, 0.10, mm, in, −0.00393, 0.00393"
  })
  void twoLimitsAreFineEnoughForTheirWidth(
      String low, String high, String typed, String shown, String lowText, String highText) {
    double from = in(low, typed, shown);
    double to = in(high, typed, shown);
    assertEquals(lowText, LimitNumber.low(from, to - from));
    assertEquals(highText, LimitNumber.high(to, to - from));
  }

  @ParameterizedTest
  @CsvSource({
    "0.06, mm, in, 0.0023623, 0.0023622",
    "0.05, mm, thou, 1.9686, 1.9685",
    "40, lbf.ft, N.m, 54.233, 54.232",
    "20000, psi, MPa, 137.90, 137.89",
    "0.15, mm, thou, 5.9056, 5.9055"
  })
  void oneLimitHasFiveFigures(String at, String typed, String shown, String low, String high) {
    assertEquals(low, LimitNumber.low(in(at, typed, shown), Double.NaN));
    assertEquals(high, LimitNumber.high(in(at, typed, shown), Double.NaN));
  }

  private static double in(String number, String typed, String shown) {
    Unit unit = UnitTable.find(typed);
    return UnitTable.find(shown).fromSi(unit.toSi(number));
  }

  @Property
  void printIsNeverOffByMoreThanATwoHundredthOfTheWidthAndNeverOutwards(
      @ForAll @DoubleRange(min = -1000, max = 1000) @Scale(9) double at,
      @ForAll @DoubleRange(min = 1e-6, max = 100) @Scale(9) double width) {
    double low = number(LimitNumber.low(at, width));
    double high = number(LimitNumber.high(at, width));
    assertTrue(low >= at - 1e-12 && low - at <= width / 200 + 1e-12);
    assertTrue(high <= at + 1e-12 && at - high <= width / 200 + 1e-12);
  }

  private static double number(String text) {
    return new BigDecimal(text.replace('\u2212', '-')).doubleValue();
  }
}
