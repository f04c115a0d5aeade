package endfloat.plates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** What physics demands of any round plate. */
class RoundPlateTest {
  private static final double NOT_GIVEN = Double.NaN;
  private static final double OUTER = 0.14;

  private static PlateResult annular(
      double inner,
      Edge outerEdge,
      Edge innerEdge,
      double force,
      double ring,
      double ringRadius,
      double pressure,
      double at) {
    return RoundPlate.annularPlate(
        OUTER,
        inner,
        0.005,
        70e9,
        0.33,
        outerEdge,
        innerEdge,
        force,
        ring,
        ringRadius,
        pressure,
        0,
        0,
        0,
        0,
        at);
  }

  private static boolean held(Edge edge) {
    return edge == Edge.FIXED || edge == Edge.SUPPORTED;
  }

  @Property(tries = 200)
  void theEdgesCarryAllTheLoad(
      @ForAll Edge outerEdge,
      @ForAll Edge innerEdge,
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.12) double inner,
      @ForAll @Scale(4) @DoubleRange(min = 0.13, max = 0.139) double ringRadius) {
    if (!held(outerEdge) && !held(innerEdge)) {
      return;
    }
    var plate = annular(inner, outerEdge, innerEdge, 0, 800, ringRadius, 1e4, NOT_GIVEN);
    double load = 800 + 1e4 * Math.PI * (OUTER * OUTER - ringRadius * ringRadius);
    double outer = held(outerEdge) ? plate.reactionOuter() : 0;
    double inside = held(innerEdge) ? plate.reactionInner() : 0;
    assertEquals(load, outer + inside, 1e-6 * load);
  }

  /** Maxwell and Betti: ring loads of the same force on two circles. */
  @Property(tries = 100)
  void circlesAreReciprocal(
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.135) double first,
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.135) double second,
      @ForAll Edge outerEdge,
      @ForAll Edge innerEdge) {
    if (!held(outerEdge)) {
      return;
    }
    double there =
        annular(0.045, outerEdge, innerEdge, 0, 500, first, 0, second).deflection().value();
    double here =
        annular(0.045, outerEdge, innerEdge, 0, 500, second, 0, first).deflection().value();
    assertEquals(there, here, 1e-9 * Math.abs(there) + 1e-14);
  }

  @Test
  void aRigidHubThatShrinksToNothingIsAPlateWithAForceAtItsCentre() {
    var solid =
        RoundPlate.circularPlate(
            OUTER, 0.005, 70e9, 0.33, Edge.FIXED, 0, 1000, NOT_GIVEN, 0, NOT_GIVEN, 0, NOT_GIVEN);
    var hub = annular(1e-5, Edge.FIXED, Edge.GUIDED, 1000, 0, NOT_GIVEN, 0, NOT_GIVEN);
    assertEquals(solid.deflectionInner(), hub.deflectionInner(), 1e-5 * solid.deflectionInner());
  }

  /** A plate without a hole under a patch of its whole size is the plate under pressure. */
  @Test
  void aPatchAsLargeAsThePlateIsAPressure() {
    double force = 1e4 * Math.PI * OUTER * OUTER;
    var patch =
        RoundPlate.circularPlate(
            OUTER,
            0.005,
            70e9,
            0.33,
            Edge.SUPPORTED,
            0,
            force,
            OUTER * (1 - 1e-9),
            0,
            NOT_GIVEN,
            0,
            NOT_GIVEN);
    var even =
        RoundPlate.circularPlate(
            OUTER,
            0.005,
            70e9,
            0.33,
            Edge.SUPPORTED,
            1e4,
            0,
            NOT_GIVEN,
            0,
            NOT_GIVEN,
            0,
            NOT_GIVEN);
    assertEquals(even.deflectionInner(), patch.deflectionInner(), 1e-7 * even.deflectionInner());
  }

  @Property(tries = 30)
  void aStifferRimHoldsTheHubStifferBothWays(
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 0.9) double share) {
    var fixed =
        BearingPanel.panelStiffness(
            OUTER, OUTER * share, 0.005, 70e9, 0.33, BearingPanel.Rim.FIXED, 0, 0);
    var supported =
        BearingPanel.panelStiffness(
            OUTER, OUTER * share, 0.005, 70e9, 0.33, BearingPanel.Rim.SUPPORTED, 0, 0);
    assertTrue(fixed.axial() > supported.axial());
    assertTrue(fixed.tilt() > supported.tilt());
  }

  @Test
  void saysWhereTheTheoryEnds() {
    assertEquals(
        PlateResult.Theory.HOLDS,
        annular(0.045, Edge.FIXED, Edge.FREE, 1500, 0, NOT_GIVEN, 0, NOT_GIVEN).theory());
    assertEquals(
        PlateResult.Theory.DEFLECTION_ABOVE_HALF_THE_THICKNESS,
        annular(0.045, Edge.FIXED, Edge.FREE, 15000, 0, NOT_GIVEN, 0, NOT_GIVEN).theory());
    assertEquals(
        PlateResult.Theory.PLATE_THICKER_THAN_A_QUARTER_OF_ITS_WIDTH,
        annular(0.13, Edge.FIXED, Edge.FREE, 15, 0, NOT_GIVEN, 0, NOT_GIVEN).theory());
  }

  @Test
  void refusesWhatIsNotHeldOrBendsNothing() {
    assertThrows(
        RefusedException.class,
        () -> annular(0.045, Edge.FREE, Edge.GUIDED, 100, 0, NOT_GIVEN, 0, NOT_GIVEN));
    assertThrows(
        RefusedException.class,
        () -> annular(0.045, Edge.FIXED, Edge.SUPPORTED, 100, 0, NOT_GIVEN, 0, NOT_GIVEN));
    assertThrows(
        RefusedException.class,
        () -> annular(0.045, Edge.FIXED, Edge.FREE, 0, 100, 0.2, 0, NOT_GIVEN));
  }
}
