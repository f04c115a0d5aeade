package endfloat.alignment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** The thrust of a coupling out of line, and the bound of one in line. */
class CouplingThrustTest {
  private static final double NOT_GIVEN = Double.NaN;

  private static CouplingThrust.Thrust thrust(
      double torque, double tilt, double speed, double share, double[] shares) {
    return CouplingThrust.couplingThrust(
        torque, 0.03, tilt, speed, 0.12, 0.5, share, shares, 0, 1e9, NOT_GIVEN);
  }

  /** Many teeth with half the load each side of a line are the half formula. */
  @Property(tries = 100)
  void teethAgreeWithTheShareOfAHalf(
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 1) double share) {
    int n = 20_000;
    double[] teeth = new double[n];
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / n;
      teeth[i] = Math.cos(angle) > 0 ? share : 1 - share;
    }
    var half = thrust(300, 0.002, 200, share, new double[0]);
    var all =
        CouplingThrust.couplingThrust(
            300, 0.03, 0.002, 200, 0.12, 0.5, NOT_GIVEN, teeth, Math.PI / n, 1e9, NOT_GIVEN);
    assertEquals(half.high(), all.high(), 1e-4 * half.holds());
  }

  /** Tilt and share turned round together are the same coupling seen from the other side. */
  @Property(tries = 100)
  void theSameCouplingSeenFromTheOtherSide(
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 1) double share,
      @ForAll @Scale(5) @DoubleRange(min = 0.0005, max = 0.01) double tilt) {
    var one = thrust(300, tilt, 200, share, new double[0]);
    var other = thrust(300, -tilt, 200, 1 - share, new double[0]);
    assertEquals(one.high(), other.high(), 1e-9 * one.holds());
  }

  /** No sharing gives more than was said when it was not known. */
  @Property(tries = 100)
  void theBoundHoldsForEverySharing(
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 6.28) double at,
      @ForAll @Scale(5) @DoubleRange(min = -0.01, max = 0.01) double tilt,
      @ForAll boolean drives) {
    if (tilt == 0) {
      return;
    }
    double speed = drives ? 200 : -200;
    double most = thrust(300, tilt, speed, NOT_GIVEN, new double[0]).most();
    double[] one = new double[1];
    Arrays.fill(one, 1);
    var here =
        CouplingThrust.couplingThrust(
            300, 0.03, tilt, speed, 0.12, 0.5, NOT_GIVEN, one, at, 1e9, NOT_GIVEN);
    assertTrue(here.most() <= most * (1 + 1e-12));
  }

  @Test
  void aCreepAsFastAsTheTeethSlideMeetsTheWholeBound() {
    var slow =
        CouplingThrust.couplingThrust(
            300, 0.03, 0.002, 200, 0.12, 0.5, 0.5, new double[0], 0, 1e9, 1e-6);
    var fast =
        CouplingThrust.couplingThrust(
            300, 0.03, 0.002, 200, 0.12, 0.5, 0.5, new double[0], 0, 1e9, 1);
    assertTrue(slow.creepResistance().value() < 1e-4 * slow.holds());
    assertEquals(fast.holds(), fast.creepResistance().value(), 1e-9);
  }
}
