package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers go to SI with one rounding and come back as they were typed. */
class ReckoningTest {

  @Provide
  Arbitrary<Unit> units() {
    return Arbitraries.of(UnitTable.entries()).map(UnitTable.Entry::unit);
  }

  @Provide
  Arbitrary<Unit> scales() {
    return units().filter(u -> !u.isTemperaturePoint());
  }

  /** Up to 15 figures, the most that every double keeps. */
  @Provide
  Arbitrary<BigDecimal> typed() {
    return Combinators.combine(
            Arbitraries.longs().between(-999_999_999_999_999L, 999_999_999_999_999L),
            Arbitraries.integers().between(-12, 24))
        .as(BigDecimal::valueOf);
  }

  /** Any bits, 1e-12 to 1e12. */
  @Provide
  Arbitrary<Double> results() {
    return Combinators.combine(
            Arbitraries.longs().between(1L << 52, (1L << 53) - 1),
            Arbitraries.integers().between(-92, -12))
        .as((bits, power) -> StrictMath.scalb((double) bits, power));
  }

  @Property(tries = 5000)
  void whatWasTypedComesBack(@ForAll("scales") Unit unit, @ForAll("typed") BigDecimal typed) {
    assertEquals(typed.doubleValue(), unit.fromSi(unit.toSi(typed.toString())));
  }

  @Property
  void temperaturesComeBackToNinePlaces(@ForAll("typed") BigDecimal typed) {
    BigDecimal reading =
        typed.remainder(BigDecimal.valueOf(2000)).setScale(9, java.math.RoundingMode.DOWN);
    for (String scale : new String[] {"degC", "degF"}) {
      Unit unit = UnitTable.find(scale);
      assertEquals(reading.doubleValue(), unit.fromSi(unit.toSi(reading.toString())), scale);
    }
  }

  /** A second way: the exact rational product, rounded once by BigDecimal. */
  @Property
  void isRoundedOnce(@ForAll("typed") BigDecimal typed) {
    assertEquals(
        typed.multiply(new BigDecimal("0.0000254")).doubleValue(),
        UnitTable.find("thou").toSi(typed.toString()));
    assertEquals(
        typed
            .multiply(new BigDecimal("0.45359237"))
            .multiply(new BigDecimal("9.80665"))
            .divide(new BigDecimal("0.00064516"), new MathContext(120))
            .doubleValue(),
        UnitTable.find("psi").toSi(typed.toString()));
  }

  /** The quick way for short decimals gives what the general way gives, or leaves it to it. */
  @Property(tries = 5000)
  void quickWayGivesTheSameBits(@ForAll("scales") Unit unit, @ForAll("typed") BigDecimal typed) {
    double general = ((ExactUnit) unit).toSi(NumberText.read(typed.toString()));
    assertEquals(general, unit.toSi(typed.toString()));
    assertEquals(general, unit.toSi(typed.toPlainString()));
  }

  /** Of a result with 17 figures no shorter one reads back, and the quotient is shown. */
  @Property(tries = 5000)
  void whatIsShownReadsBackOrIsTheQuotient(
      @ForAll("scales") Unit unit, @ForAll("results") double si) {
    double shown = unit.fromSi(si);
    BigDecimal quotient = ((ExactUnit) unit).factor().under(ShortestDecimal.of(si));
    assertTrue(unit.toSi(shown) == si || shown == quotient.doubleValue());
    assertEquals(quotient.doubleValue(), shown, 5e-16 * shown);
  }

  @ParameterizedTest
  @CsvSource({"1.e5", "e5", "1e", "1e+", "-", ".", "1.2.3", "1e5x", "--1"})
  void quickWayLeavesWhatIsNoNumberToTheGeneralWay(String typed) {
    assertThrows(UnitException.class, () -> UnitTable.find("mm").toSi(typed));
  }

  @Property
  void keepsTheOrder(
      @ForAll("units") Unit unit,
      @ForAll("typed") BigDecimal one,
      @ForAll("typed") BigDecimal other) {
    int order = Double.compare(unit.toSi(one.toString()), unit.toSi(other.toString()));
    assertTrue(order * one.compareTo(other) >= 0);
  }

  @Property
  void productAndQuotientOfUnitsMultiplyAndDivide(
      @ForAll("scales") Unit a, @ForAll("scales") Unit b) {
    org.junit.jupiter.api.Assumptions.assumeFalse(a.symbol().equals("1") || b.symbol().equals("1"));
    double factorA = a.toSi("1");
    double factorB = b.toSi("1");
    Unit product = UnitTable.find(a.symbol() + "." + b.symbol());
    Unit quotient = UnitTable.find(a.symbol() + "/" + b.symbol());
    assertEquals(a.dimension().times(b.dimension()), product.dimension());
    assertEquals(a.dimension().over(b.dimension()), quotient.dimension());
    assertEquals(factorA * factorB, product.toSi("1"), 4e-16 * factorA * factorB);
    assertEquals(factorA / factorB, quotient.toSi("1"), 4e-16 * factorA / factorB);
  }

  @Property
  void shortestDecimalReadsBackAndIsNoLongerThanTheJdks(@ForAll double value) {
    BigDecimal shortest = ShortestDecimal.of(value);
    assertEquals(value + 0.0, shortest.doubleValue());
    assertTrue(shortest.precision() <= 17);
    assertTrue(
        shortest.precision()
            <= new BigDecimal(Double.toString(value)).stripTrailingZeros().precision());
  }

  /** Plain doubles misprint 20 of the first 100. */
  @Test
  void first1000WholeThouPrintExactlyInMillimetres() {
    for (int thou = 1; thou <= 1000; thou++) {
      double si = UnitTable.find("thou").toSi(Integer.toString(thou));
      BigDecimal exact = new BigDecimal("0.0254").multiply(BigDecimal.valueOf(thou));
      double shown = UnitTable.find("mm").fromSi(si);
      assertEquals(0, exact.compareTo(ShortestDecimal.of(shown)), thou + " thou");
      assertEquals(thou, UnitTable.find("thou").fromSi(si));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "1 15/16, in, 0.0492125",
    "3/8, in, 0.009525",
    "-3/8, in, -0.009525",
    ".005, in, 0.000127",
    "23e-6, 1/K, 23e-6",
    "+2.5, mm, 0.0025",
    "−40, degF, 233.15",
    "1/3, ft, 0.1016",
    "80 1/2, degF, 300.0944444444444444",
    "98.6, degF, 310.15",
    "0, degC, 273.15"
  })
  void readsNumbersAsTheyAreTyped(String typed, String unit, double si) {
    assertEquals(si, UnitTable.find(unit).toSi(typed), 0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; there is no number; write one, such as 2.1235 or 1 15/16",
        "1,5; \"1,5\" has a comma, which some read as a decimal point and some as thousands;"
            + " write a point for decimals and nothing between thousands",
        "5.; \"5.\" ends in a point; write 5.0 or leave the point out",
        "1/0; 1/0 divides by zero; write the lower number of the fraction",
        "1 17/16; 1 17/16 adds a fraction that is not below 1; write the sum as one number",
        "NaN; \"NaN\" is not a number; write it as 2.1235, 23e-6, 3/8 or 1 15/16",
        "0x1p3; \"0x1p3\" is not a number; write it as 2.1235, 23e-6, 3/8 or 1 15/16",
        "1d; \"1d\" is not a number; write it as 2.1235, 23e-6, 3/8 or 1 15/16",
        "1e400; 1E+400 mm is beyond what can be reckoned with; check the exponent",
        "1e-330; 1E-330 mm is beyond what can be reckoned with; check the exponent",
        "1e999999999; \"1e999999999\" is not a number; write it as 2.1235, 23e-6, 3/8 or 1 15/16"
      })
  void refusesWhatIsNoNumber(String typed, String message, String wayOut) {
    UnitException e = assertThrows(UnitException.class, () -> UnitTable.find("mm").toSi(typed));
    assertEquals(message, e.getMessage());
    assertEquals(wayOut, e.wayOut());
  }
}
