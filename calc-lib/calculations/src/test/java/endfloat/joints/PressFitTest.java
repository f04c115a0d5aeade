package endfloat.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The published joints are in checks/press_fit.check; here the limits that physics gives. */
class PressFitTest {
  private static final double NONE = Double.NaN;
  private static final double STEEL = 207e9;

  private static PressFit.Joint joint(double outside, double bore, double interference) {
    return PressFit.pressFit(
        0.06,
        interference,
        outside,
        0.05,
        STEEL,
        0.292,
        STEEL,
        0.292,
        bore,
        0.12,
        0,
        0,
        NONE,
        NONE,
        293.15,
        293.15,
        NONE);
  }

  /** Lamé, D to infinity, solid shaft of the same steel: p = E δ/(2 d). */
  @Test
  void aHubWithoutEndOnASolidShaft() {
    assertEquals(STEEL * 6e-5 / (2 * 0.06), joint(1e4, 0, 6e-5).pressure(), 0.01);
  }

  /** Thin ring: hoop stress E δ/d and p = σ t/r as t goes to zero. */
  @Test
  void aThinRingTakesAllTheStrain() {
    PressFit.Joint joint = joint(0.06 + 2e-6, 0, 6e-5);
    assertEquals(STEEL * 6e-5 / 0.06, joint.hubHoopBore(), 0.001 * joint.hubHoopBore());
    assertEquals(joint.hubHoopBore() * 1e-6 / 0.03, joint.pressure(), 0.001 * joint.pressure());
  }

  /** The bore grows and the shaft shrinks by just the interference between them. */
  @Property(tries = 100)
  void theDisplacementsAddUpToTheInterference(
      @ForAll @DoubleRange(min = 0.07, max = 0.5) double outside,
      @ForAll @DoubleRange(min = 0, max = 0.05) double bore,
      @ForAll @DoubleRange(min = 1, max = 100) double micrometres) {
    double interference = micrometres * 1e-6;
    PressFit.Joint joint = joint(outside, bore, interference);
    double grown = joint.jointDiameter() - 0.06;
    double core = (0.06 * 0.06 + bore * bore) / (0.06 * 0.06 - bore * bore);
    double shrunk = 0.06 * joint.pressure() * (core - 0.292) / STEEL;
    assertEquals(interference, grown + shrunk, 1e-12);
  }

  /** Equilibrium: hoop stress over the wall of the hub carries the pressure on the bore. */
  @Property(tries = 100)
  void aThinnerHubHoldsLessAndASolidShaftMore(
      @ForAll @DoubleRange(min = 0.07, max = 0.5) double outside,
      @ForAll @DoubleRange(min = 0.01, max = 0.05) double bore) {
    double pressure = joint(outside, bore, 5e-5).pressure();
    assertTrue(pressure < joint(outside * 1.1, bore, 5e-5).pressure());
    assertTrue(pressure < joint(outside, 0, 5e-5).pressure());
    assertEquals(2 * pressure, joint(outside, bore, 1e-4).pressure(), 1e-6 * pressure);
  }

  /** As the bore of the shaft closes to a pin hole its hoop stress there doubles (Lamé). */
  @Test
  void aPinHoleDoublesTheStressAtTheAxis() {
    PressFit.Joint solid = joint(0.09, 0, 6e-5);
    PressFit.Joint drilled = joint(0.09, 1e-5, 6e-5);
    assertEquals(2, drilled.shaftHoopBore() / solid.shaftHoopBore(), 1e-4);
  }

  @Test
  void hotAndColdAreTheSameAtTwentyDegrees() {
    PressFit.Joint joint = joint(0.09, 0.03, 6e-5);
    assertEquals(joint.pressure(), joint.pressureHot());
    assertEquals(joint.torque().value(), joint.torqueHot().value());
  }

  /** Round trip: at the temperature of heat_to_fit the clearance is the one asked for. */
  @Property(tries = 50)
  void heatToFitGivesTheClearanceAskedFor(
      @ForAll @DoubleRange(min = 0, max = 200) double interference,
      @ForAll @DoubleRange(min = 0, max = 100) double clearance,
      @ForAll @DoubleRange(min = 200, max = 300) double shaft) {
    double hub =
        FittingTemperature.heatToFit(
            0.1, interference * 1e-6, clearance * 1e-6, 23e-6, 11e-6, shaft);
    assertEquals(
        clearance * 1e-6,
        FittingTemperature.fittingClearance(0.1, interference * 1e-6, 23e-6, 11e-6, hub, shaft),
        1e-15);
  }

  @Test
  void asksForTheExpansionOfAWarmPart() {
    assertEquals(
        "give expansion_hub: the part is not at 20 degC",
        assertThrows(
                RefusedException.class,
                () ->
                    PressFit.pressFit(
                        0.06,
                        6e-5,
                        0.09,
                        0.05,
                        STEEL,
                        0.292,
                        STEEL,
                        0.292,
                        0,
                        0.12,
                        0,
                        0,
                        NONE,
                        11e-6,
                        373.15,
                        293.15,
                        Double.NaN))
            .getMessage());
  }
}
