package endfloat.gears;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Second methods: equilibrium, power and limits that physics gives; no published figure here. */
class PairForcesTest {
  private static final double E = 207e9;
  private static final double DEG = Math.PI / 180;

  @Property(tries = 300)
  void theTwoMembersOfABevelPairPushEachOtherEquallyHard(
      @ForAll @IntRange(min = 12, max = 60) int teeth1,
      @ForAll @IntRange(min = 12, max = 60) int teeth2,
      @ForAll @DoubleRange(min = 40, max = 90) double shaftAngle,
      @ForAll @DoubleRange(min = -40, max = 40) double spiral) {
    var pair =
        BevelPair.bevelPair(
            teeth1,
            teeth2,
            0.003,
            shaftAngle * DEG,
            20 * DEG,
            0.01,
            spiral * DEG,
            50,
            0,
            0,
            1,
            E,
            E,
            0.3,
            0.3);
    // along the common cone element and along the normal of cone 1
    double[] one = inCone(pair.axial1(), pair.radial1(), pair.pitchAngle1());
    double[] two = inCone(pair.axial2(), pair.radial2(), pair.pitchAngle2());
    double size = pair.normal();
    assertEquals(0, one[0] + two[0], 1e-9 * size);
    assertEquals(0, one[1] - two[1], 1e-9 * size);
    assertEquals(
        size * size,
        pair.tangential() * pair.tangential()
            + pair.axial1() * pair.axial1()
            + pair.radial1() * pair.radial1(),
        1e-9 * size * size);
  }

  /** The axis leans by the cone angle from the element; radial counts towards the axis. */
  private static double[] inCone(double axial, double radial, double cone) {
    return new double[] {
      axial * Math.cos(cone) - radial * Math.sin(cone),
      -axial * Math.sin(cone) - radial * Math.cos(cone)
    };
  }

  @Property(tries = 200)
  void aHelicalPairWithHardlyAnyHelixIsASpurPair(
      @ForAll @IntRange(min = 18, max = 50) int teeth1,
      @ForAll @IntRange(min = 18, max = 50) int teeth2) {
    var spur =
        SpurPair.spurPair(
            teeth1,
            teeth2,
            0.003,
            20 * DEG,
            0,
            0,
            Double.NaN,
            100,
            100,
            0.06,
            1,
            1,
            TipHeight.FULL);
    var helical =
        HelicalPair.helicalPair(
            teeth1,
            teeth2,
            0.003,
            1e-7,
            20 * DEG,
            0,
            0,
            0,
            Double.NaN,
            100,
            100,
            0.06,
            1,
            1,
            TipHeight.FULL);
    assertEquals(spur.contactRatio(), helical.contactRatio(), 1e-9);
    assertEquals(spur.efficiency(), helical.efficiency(), 1e-12);
    assertEquals(spur.normal(), helical.normal(), 1e-6);
    assertEquals(spur.slidingRecess(), helical.slidingRecess(), 1e-9);
    assertTrue(spur.efficiency() < 1 && spur.efficiency() > 0.95);
  }

  @Property(tries = 300)
  void whatASkewPairTakesInItGivesOutTimesItsEfficiency(
      @ForAll @DoubleRange(min = -30, max = 60) double helix1,
      @ForAll @DoubleRange(min = 35, max = 60) double helix2,
      @ForAll @DoubleRange(min = 0, max = 0.15) double friction) {
    var pair = skew(helix1, helix2, friction);
    double out = pair.tangential2() * pair.pitchLineSpeed2();
    double in = pair.tangential1() * pair.pitchLineSpeed1();
    assertEquals(pair.efficiency(), out / in, 1e-9);
    double resultant = pair.normal() * Math.sqrt(1 + friction * friction);
    assertEquals(
        resultant,
        Math.sqrt(square(pair.tangential1()) + square(pair.axial1()) + square(pair.radial())),
        1e-9 * resultant);
    assertEquals(
        resultant,
        Math.sqrt(square(pair.tangential2()) + square(pair.axial2()) + square(pair.radial())),
        1e-9 * resultant);
  }

  /** Both hands the other way round is the same pair seen in a mirror. */
  @Property(tries = 200)
  void aSkewPairAndItsMirrorImageAreAlike(
      @ForAll @DoubleRange(min = -20, max = 60) double helix1,
      @ForAll @DoubleRange(min = 30, max = 60) double helix2) {
    var pair = skew(helix1, helix2, 0.08);
    var mirror = skew(-helix1, -helix2, 0.08);
    assertEquals(pair.efficiency(), mirror.efficiency(), 1e-12);
    assertEquals(pair.tangential2(), mirror.tangential2(), 1e-9);
    assertEquals(pair.slidingSpeed(), mirror.slidingSpeed(), 1e-12);
  }

  private static SkewPair.Skew skew(double helix1, double helix2, double friction) {
    return SkewPair.skewPair(
        20, 30, 0.002, helix1 * DEG, helix2 * DEG, 20 * DEG, 25, 100, friction, 1, E, E, 0.3, 0.3);
  }

  private static double square(double x) {
    return x * x;
  }

  @Test
  void sharedHelicesDriveAlikeBothWays() {
    var pair = skew(45, 45, 0.1);
    assertEquals(pair.efficiency(), pair.efficiencyReversed(), 1e-12);
    assertFalse(pair.selfLocking());
  }

  @Test
  void refusesWhatIsNoPair() {
    assertEquals(
        "these shafts are parallel; take helical_pair",
        assertThrows(RefusedException.class, () -> skew(30, -30, 0)).getMessage());
    assertEquals(
        "with this friction gear 1 cannot drive gear 2: the mesh locks",
        assertThrows(
                RefusedException.class,
                () ->
                    SkewPair.skewPair(
                        40, 1, 0.002, 4 * DEG, 86 * DEG, 20 * DEG, 1, 1, 0.12, 1, E, E, 0.3, 0.3))
            .getMessage());
    assertEquals(
        "teeth_1 = 20.5 is no whole number of teeth",
        assertThrows(
                RefusedException.class,
                () ->
                    SpurPair.spurPair(
                        20.5, 30, 0.002, 20 * DEG, 0, 0, Double.NaN, 0, 0, 0, 1, 1, TipHeight.FULL))
            .getMessage());
  }
}
