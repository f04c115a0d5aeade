package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a unit text means, how it is printed, and what is said to one that means nothing. */
class UnitTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "lbf.ft; lbf.ft; lbf·ft",
        "lbf*ft; lbf.ft; lbf·ft",
        "lbf·ft; lbf.ft; lbf·ft",
        "ft.lbf; ft.lbf; ft·lbf",
        "mm^2/s; mm^2/s; mm²/s",
        "mm²; mm^2; mm²",
        "mm2; mm^2; mm²",
        "m.s-1; m/s; m/s",
        "s⁻¹; 1/s; 1/s",
        "1/K; 1/K; 1/K",
        "1/(m.K); 1/(m.K); 1/(m·K)",
        "N/mm/rad; N/(mm.rad); N/(mm·rad)",
        "g/(kW.h); g/(kW.h); g/(kW·h)",
        "µm; um; µm",
        "μm; um; µm",
        "°C; degC; °C",
        "deg; deg; °",
        "kΩ; kohm; kΩ",
        "ml; mL; mL",
        "MPa.m^(1/2); MPa.m^(1/2); MPa·m^(1/2)",
        "[lbf_av].[ft_i]; lbf.ft; lbf·ft",
        "[in_i'Hg]; inHg; inHg",
        "mm[Hg]; mmHg; mmHg",
        "Cel; degC; °C",
        "r/min; rev/min; rev/min",
        "1; 1; 1"
      })
  void isReadWrittenAndPrinted(String typed, String symbol, String printed) {
    assertEquals(symbol, UnitTable.find(typed).symbol());
    assertEquals(printed, UnitTable.find(typed).print());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "thuo; \"thuo\" is not a unit; nearest: thou, ftH2O",
        "MPA; \"MPA\" is not a unit; nearest: MPa, mPa, Pa",
        "Nm; \"Nm\" is not a unit; nearest: nm, N.m, N",
        "KW; \"KW\" is not a unit; nearest: kW, K.W, K",
        "mm/x; \"x\" in \"mm/x\" is not a unit; write a unit of the table, such as mm, N.m or 1/K",
        "gal; \"gal\" is two gallons, 20 % apart; write gal_UK or gal_US",
        "gal/min; \"gal\" is two gallons, 20 % apart; write gal_UK or gal_US",
        "tsi; \"tsi\" counts long tons in Britain and short tons in America, 12 % apart;"
            + " write tonf_UK/in^2 or tonf_US/in^2",
        "ftlb; lb is a mass, the pound of force is lbf; a torque is lbf.ft",
        "ft-lb; \"ft-lb\" joins units with a dash; join them with a point: lbf.ft",
        "N m; \"N m\" has a blank inside; join units with a point: N.m",
        "J/kg.K; \"J/kg.K\" can be read two ways; write J/(kg.K) or J.K/kg",
        "{rev}/min; \"{rev}/min\" has a remark in braces, which counts as 1;"
            + " leave it out, a revolution is rev, so a speed is rev/min",
        "mm^; \"mm^\" has a power that is no whole number; write it as mm^2 or s^-1",
        "mm^0; \"mm^0\" has a power of 0; leave that unit out",
        "mm^21; \"mm^21\" has a power above 20; check the power",
        "(N.m); \"(N.m)\" has a bracket that does not follow a stroke;"
            + " brackets stand only below: g/(kW.h)",
        "g/(kW.h; the bracket of \"g/(kW.h\" is not closed; inside it only products stand: g/(kW.h)",
        "1/; \"1/\" ends too early; write the unit that follows, or leave the sign out",
        "''; the unit is empty; write one, such as mm, or 1 for a pure number",
        "1e-6/K; \"1\" in \"1e-6/K\" belongs to no unit;"
            + " write symbols, whole powers, . and /, such as kg.m^2 or g/(kW.h)"
      })
  void isRefusedWithAWayOut(String typed, String message, String wayOut) {
    UnitException e = assertThrows(UnitException.class, () -> UnitTable.find(typed));
    assertEquals(message, e.getMessage());
    assertEquals(wayOut, e.wayOut());
  }

  @Test
  void gaugeAndAbsolutePressureAreNoUnits() {
    for (String unit : new String[] {"psig", "psia", "barg", "bara"}) {
      UnitException e = assertThrows(UnitException.class, () -> UnitTable.find(unit));
      assertTrue(e.getMessage().startsWith("whether a pressure is gauge or absolute"), unit);
      assertTrue(e.wayOut().contains("oil_pressure_gauge"), unit);
    }
  }

  @Test
  void textsFromOutsideAreBounded() {
    assertThrows(UnitException.class, () -> UnitTable.find("m.".repeat(101)));
    assertThrows(UnitException.class, () -> UnitTable.find("]"));
    assertThrows(UnitException.class, () -> UnitTable.find("[in_i"));
    assertSame(UnitTable.find("lbf.ft"), UnitTable.find("lbf.ft"), "kept once found");
  }

  @Test
  void everyEntryOfTheTableIsFoundByAllItsNames() {
    assertAll(
        UnitTable.entries().stream()
            .map(
                entry ->
                    () -> {
                      assertEquals(entry.symbol(), entry.unit().symbol());
                      assertFalse(entry.meaning().isEmpty(), entry.symbol());
                      for (String alias : entry.aliases()) {
                        assertEquals(entry.unit(), UnitTable.find(alias), alias);
                      }
                      if (!entry.ucum().isEmpty()) {
                        assertEquals(entry.unit(), UnitTable.find(entry.ucum()), entry.ucum());
                      }
                    }));
  }

  @Test
  void torqueIsNotEnergyInPrint() {
    assertEquals("N·m", UnitTable.find("N.m").print());
    assertEquals("J", UnitTable.find("J").print());
    assertEquals(UnitTable.find("J").dimension(), UnitTable.find("N.m").dimension());
  }

  @Test
  void temperatureScaleIsAPointAloneAndAnIntervalInAProduct() {
    assertTrue(UnitTable.find("degC").isTemperaturePoint());
    assertTrue(UnitTable.find("degF").isTemperaturePoint());
    assertFalse(UnitTable.find("K").isTemperaturePoint());
    assertFalse(UnitTable.find("1/degF").isTemperaturePoint());
    assertEquals("K", UnitTable.find("degC").interval().symbol());
    assertEquals("delta_degF", UnitTable.find("degF").interval().symbol());
    assertEquals(1.8, UnitTable.find("1/degF").toSi("1"), 0);
    assertEquals(5.0, UnitTable.find("degC").interval().toSi("5"), 0);
  }

  @Provide
  Arbitrary<String> nearlyUnits() {
    Arbitrary<String> piece =
        Arbitraries.of(
            "mm",
            "lbf",
            "N",
            "K",
            "1",
            "2",
            "/",
            ".",
            "*",
            "^",
            "-",
            "(",
            ")",
            "[",
            "]",
            "{",
            "°",
            "%",
            " ",
            "in_i",
            "²",
            "⁻",
            "degC",
            "x",
            "9999999999");
    return piece.list().ofMaxSize(9).map(pieces -> String.join("", pieces));
  }

  /** Nothing but a unit or a refusal with a way out, and a unit reads back as itself. */
  @Property(tries = 20_000)
  void anyTextIsAUnitOrRefused(@ForAll("nearlyUnits") String text) {
    Unit unit;
    try {
      unit = UnitTable.find(text);
    } catch (UnitException e) {
      assertFalse(e.wayOut().isEmpty(), text);
      return;
    }
    assertEquals(unit, UnitTable.find(unit.symbol()));
    assertEquals(unit.dimension(), UnitTable.find(unit.symbol()).dimension());
  }

  @Property
  void anythingTypedIsAUnitOrRefused(@ForAll String text) {
    try {
      UnitTable.find(text);
    } catch (UnitException e) {
      assertFalse(e.wayOut().isEmpty(), text);
    }
  }
}
