package endfloat.shafts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** A beam against statics and against its own load curve. */
class BeamTest {
  private static final double NOT_GIVEN = Double.NaN;

  private static Beam.Bent beam(
      BeamEnd left,
      BeamEnd right,
      double force,
      double forceAt,
      double start,
      double end,
      double from,
      double to,
      double couple,
      double coupleAt,
      double at) {
    return Beam.beam(
        1,
        left,
        right,
        200e9,
        NOT_GIVEN,
        0,
        NOT_GIVEN,
        NOT_GIVEN,
        1e-6,
        NOT_GIVEN,
        force,
        forceAt,
        start,
        end,
        from,
        to,
        couple,
        coupleAt,
        at,
        java.util.List.of(),
        java.util.List.of());
  }

  @Property(tries = 200)
  void endsHoldTheLoadsInBalance(
      @ForAll BeamEnd left,
      @ForAll BeamEnd right,
      @ForAll @DoubleRange(min = 0, max = 1) double a,
      @ForAll @DoubleRange(min = 0, max = 0.45) double from,
      @ForAll @DoubleRange(min = 0.55, max = 1) double to,
      @ForAll @DoubleRange(min = -50, max = 50) double couple) {
    boolean held =
        left == BeamEnd.FIXED
            || right == BeamEnd.FIXED
            || left == BeamEnd.SUPPORTED && (right == BeamEnd.SUPPORTED || right == BeamEnd.GUIDED)
            || left == BeamEnd.GUIDED && right == BeamEnd.SUPPORTED;
    if (!held) {
      return;
    }
    double start = 300;
    double end = 900;
    var bent = beam(left, right, 100, a, start, end, from, to, couple, 0.3, NOT_GIVEN);
    double spread = (start + end) / 2 * (to - from);
    double centre = from + (to - from) * (start + 2 * end) / (3 * (start + end));
    assertEquals(100 + spread, bent.reactionLeft() + bent.reactionRight(), 1e-6);
    // moments about the left end: end moments are sagging ones
    double taken = 100 * a + spread * centre + couple;
    double leftMoment = left == BeamEnd.FIXED || left == BeamEnd.GUIDED ? bent.momentLeft() : 0;
    double rightMoment = right == BeamEnd.FIXED || right == BeamEnd.GUIDED ? bent.momentRight() : 0;
    // M(L) = M(0) + R_left L − Σ loads (L − place) + couple: a couple steps the sagging moment
    double atRight =
        leftMoment + bent.reactionLeft() - 100 * (1 - a) - spread * (1 - centre) + couple;
    double nearEnd = a == 1 ? 1e-6 : 1e-6;
    assertEquals(rightMoment, atRight, nearEnd * (1 + Math.abs(taken)));
  }

  /**
   * Slope is the derivative of the deflection, moment E I times that of the slope, turned round.
   */
  @Property(tries = 100)
  void theLineBendsAsItsMomentSays(@ForAll @DoubleRange(min = 0.05, max = 0.95) double x) {
    if (Math.abs(x - 0.4) < 0.01
        || Math.abs(x - 0.3) < 0.01
        || Math.abs(x - 0.2) < 0.01
        || Math.abs(x - 0.7) < 0.01) {
      return;
    }
    double h = 1e-4;
    var at = beam(BeamEnd.FIXED, BeamEnd.SUPPORTED, 100, 0.4, 300, 900, 0.2, 0.7, 20, 0.3, x);
    var below =
        beam(BeamEnd.FIXED, BeamEnd.SUPPORTED, 100, 0.4, 300, 900, 0.2, 0.7, 20, 0.3, x - h);
    var above =
        beam(BeamEnd.FIXED, BeamEnd.SUPPORTED, 100, 0.4, 300, 900, 0.2, 0.7, 20, 0.3, x + h);
    double slope = (above.deflection().value() - below.deflection().value()) / (2 * h);
    double bend = (above.slope().value() - below.slope().value()) / (2 * h);
    double shear = (above.moment().value() - below.moment().value()) / (2 * h);
    assertEquals(at.slope().value(), slope, 1e-6);
    assertEquals(at.moment().value(), -200e9 * 1e-6 * bend, 1e-3);
    assertEquals(at.shear().value(), shear, 1e-3);
  }
}
