package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The slips that everybody makes; common practice, no source. */
class UnitSlipTest {

  private static Optional<String> slip(String written, String wanted) {
    return UnitSlip.between(UnitTable.find(written), UnitTable.find(wanted).dimension());
  }

  @Test
  void poundOfMassIsNotThePoundOfForce() {
    assertEquals(Optional.of("lb is a mass, lbf is a force; write lbf.ft"), slip("lb.ft", "N.m"));
    assertEquals(
        Optional.of("lb is a mass, lbf is a force; write lbf/in^2"), slip("lb/in^2", "Pa"));
    assertEquals(
        Optional.of("kg is a mass, kgf is a force; write kgf/cm^2"), slip("kg/cm^2", "bar"));
    assertEquals(
        Optional.of("lbf is a force, lb is a mass; write lb.in^2"), slip("lbf.in^2", "kg.m^2"));
  }

  @Test
  void letterIsNotATemperature() {
    assertEquals(Optional.of("C is a charge, degC is a temperature; write degC"), slip("C", "K"));
  }

  @Test
  void whatIsNoUsualSlipHasNoAdvice() {
    assertEquals(Optional.empty(), slip("mm", "N"));
    assertEquals(Optional.empty(), slip("lb", "s"));
  }
}
