package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every unit text of the truth set (both parts) is read, with {@code *} and with {@code .}. Its
 * "text", "list" and "mm, N" mark values that are no quantities, and its "person-years" is written
 * year here.
 */
class TruthSetUnitsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "%",
        "1",
        "1/K",
        "1/delta_degF",
        "1/in",
        "1/mm",
        "1/s",
        "A",
        "GPa",
        "Hz",
        "J/(kg*K)",
        "K",
        "L",
        "MPa",
        "Mlbf/in",
        "Mpsi",
        "Mrev",
        "N",
        "N*m",
        "N*m*s/rad",
        "N*m/rad",
        "N*mm",
        "N*mm/mm",
        "N*mm/rad",
        "N*s/m",
        "N/m",
        "N/mm",
        "N/mm^2",
        "N/um",
        "Pa",
        "Pa*s",
        "V",
        "W",
        "arcmin",
        "arcsec",
        "bar",
        "cSt",
        "cm",
        "cm^3",
        "d",
        "deg",
        "degC",
        "degF",
        "ft/min",
        "g",
        "g/(kW*h)",
        "g/cm^3",
        "gal_UK",
        "h",
        "hp",
        "in",
        "inH2O",
        "inHg",
        "inHg_60degF",
        "in^2",
        "in^3",
        "kN",
        "kN/mm",
        "kPa",
        "kg",
        "kg*m^2",
        "kg/m^3",
        "kgf",
        "kip",
        "km/s",
        "kpsi",
        "lb*in^2",
        "lb/(hp*h)",
        "lbf",
        "lbf*ft",
        "lbf*in",
        "m",
        "m/s",
        "m/s^2",
        "m^2",
        "m^2/s",
        "m^4",
        "mg",
        "mm",
        "mm/m",
        "mmHg",
        "mm^2",
        "mm^2/s",
        "mm^3",
        "mm^3/(N*m)",
        "ms",
        "nm",
        "ohm",
        "ozf*in",
        "psi",
        "rad",
        "rad/s",
        "rev/s",
        "reyn",
        "rpm",
        "s",
        "thou",
        "tonf_UK/in^2",
        "um",
        "um/mm",
        "week",
        "year"
      })
  void isReadInBothSpellings(String text) {
    Unit unit = UnitTable.find(text);
    assertEquals(unit, UnitTable.find(text.replace('*', '.')));
    assertEquals(unit, UnitTable.find(unit.symbol()), "its own symbol");
    assertFalse(unit.print().isEmpty());
  }
}
