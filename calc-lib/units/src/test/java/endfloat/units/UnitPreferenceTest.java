package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The units of a sheet. Which unit is usual is common practice, without a source. */
class UnitPreferenceTest {

  @ParameterizedTest
  @CsvSource({
    "mm, in",
    "um, thou",
    "N.m, lbf.ft",
    "J, ft.lbf",
    "MPa, psi",
    "kN, lbf",
    "degC, degF",
    "K, delta_degF",
    "1/K, 1/delta_degF",
    "um/(m.degC), thou/(ft.delta_degF)",
    "N/um, lbf/in",
    "kg.m^2, lb.in^2",
    "mm^4, in^4",
    "L/min, gal_UK/min",
    "gal_US, gal_UK",
    "rpm, rpm",
    "deg, deg",
    "in, in",
    "thou, thou"
  })
  void imperialSheetShows(String typed, String shown) {
    assertEquals(shown, UnitPreference.shown(UnitTable.find(typed), UnitSystem.IMPERIAL).symbol());
  }

  @ParameterizedTest
  @CsvSource({
    "in, mm",
    "thou, mm",
    "lbf.ft, N.m",
    "lbf.in, N.m",
    "ft.lbf, J",
    "psi, MPa",
    "inHg, kPa",
    "degF, degC",
    "1/degF, 1/K",
    "lb/(hp.h), g/(kW.h)",
    "gal_US/min, L/min",
    "in^4, mm^4",
    "um, um",
    "bar, bar",
    "cm, cm"
  })
  void metricSheetShows(String typed, String shown) {
    assertEquals(shown, UnitPreference.shown(UnitTable.find(typed), UnitSystem.METRIC).symbol());
  }

  @Test
  void americanSheetHasItsOwnGallon() {
    assertEquals("gal_US", shownAmerican("L"));
    assertEquals("gal_US", shownAmerican("gal_US"));
    assertEquals("lbf.ft", shownAmerican("N.m"));
  }

  private static String shownAmerican(String typed) {
    return UnitPreference.shown(UnitTable.find(typed), UnitSystem.AMERICAN).symbol();
  }

  @Test
  void everyUnitIsShownInOneOfItsOwnDimension() {
    for (UnitTable.Entry entry : UnitTable.entries()) {
      for (UnitSystem system : UnitSystem.values()) {
        Unit shown = UnitPreference.shown(entry.unit(), system);
        assertEquals(entry.unit().dimension(), shown.dimension(), entry.symbol());
        assertEquals(entry.unit().isTemperaturePoint(), shown.isTemperaturePoint(), entry.symbol());
        assertEquals(shown, UnitPreference.shown(shown, system), entry.symbol() + " settles");
      }
    }
  }

  @Test
  void resultWithoutAUnitGoesByItsDimension() {
    assertEquals(List.of("mm", "in"), both("m"));
    assertEquals(List.of("N.m", "lbf.ft"), both("J"));
    assertEquals(List.of("N.m/rad", "lbf.ft/rad"), both("N.m/rad"));
    assertEquals(List.of("deg", "deg"), both("rad"));
    assertEquals(List.of("rpm", "rpm"), both("rad/s"));
    assertEquals(List.of("1", "1"), both("1"));
    assertEquals(List.of("m^5/s", "m^5/s"), both("m^5/s"));
    assertEquals("degF", UnitPreference.temperature(UnitSystem.IMPERIAL).symbol());
    assertTrue(UnitPreference.temperature(UnitSystem.METRIC).isTemperaturePoint());
  }

  private static List<String> both(String unit) {
    Dimension dimension = UnitTable.find(unit).dimension();
    return List.of(
        UnitPreference.of(dimension, UnitSystem.METRIC).symbol(),
        UnitPreference.of(dimension, UnitSystem.IMPERIAL).symbol());
  }
}
