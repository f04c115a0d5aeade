package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;

/** How much axial force a loaded spline or toothed coupling holds or passes on by friction. */
public final class SplineForce {
  static final String FRICTION =
      "Couplings in bad condition showed friction up to 0.16 (J. Mech. Design 103(1) 54, 1981);"
          + " without a value 0.05 to 0.20 are taken as an interval.";

  private SplineForce() {}

  /** Whether the spline slides endways, and which way. */
  public enum Motion {
    STUCK,
    SLIDES_TOWARDS_POSITIVE,
    SLIDES_TOWARDS_NEGATIVE
  }

  /**
   * An interval of axial force. It is no single number while the spline sticks.
   *
   * @param bound most axial force, either way
   * @param boundLeast the same at the least friction taken; the same as the bound where a friction
   *     is given
   * @param low least axial force on the sliding part, with its sign
   * @param high greatest axial force on it
   * @param meaning in words
   */
  public record Force(
      @In("N") double bound,
      @In("N") double boundLeast,
      @In("N") double low,
      @In("N") double high,
      String meaning) {}

  /**
   * Most axial force that an aligned spline under torque holds or passes on before it slides:
   * {@code F = μ |T| / (r cos α)}.
   *
   * <p>A bound, not a force: stuck, the axial force is anything from −F to +F and statics does not
   * say which; sliding, it is the full value against the motion. It holds for an aligned coupling;
   * one that runs out of line slips endways at every turn and does not lock (coupling_thrust).
   *
   * @param torque T, carried
   * @param pitchRadius r, at which the teeth bear
   * @param friction μ; not given: 0.05 to 0.20
   * @param pressureAngle α of the teeth: 0 for straight sides, 30° for many involute splines
   * @param motion whether it slides and which way the part slides on which the force is wanted
   * @return the interval
   */
  @Calculates(
      source =
          "derived: Coulomb friction on teeth that carry the torque at one radius, |T|/(r cos α) normal",
      cautions = {
        "A friction bound, no prediction: never put one number into a chain, put both ends.",
        FRICTION
      },
      terms = {
        "spline",
        "muff",
        "sliding coupling",
        "toothed coupling",
        "axial lock",
        "splined shaft"
      })
  public static Force splineAxialForce(
      @In("N.m") double torque,
      @In("mm") @Range("> 0 mm") double pitchRadius,
      @In("1") @Range("0 .. 1") @Default(Default.NOT_GIVEN) double friction,
      @In("deg") @Range("0 deg .. 45 deg") @Default("0 deg") double pressureAngle,
      @Default("\"stuck\"") Motion motion) {
    Friction range = Friction.of(friction);
    double most = bound(torque, pitchRadius, range.high(), pressureAngle);
    double least = bound(torque, pitchRadius, range.low(), pressureAngle);
    return switch (motion) {
      case STUCK ->
          new Force(
              most, least, -most, most, "stuck: any force between low and high, not determined");
      case SLIDES_TOWARDS_POSITIVE ->
          new Force(most, least, -most, -least, "slides: the full friction, against the motion");
      case SLIDES_TOWARDS_NEGATIVE ->
          new Force(most, least, least, most, "slides: the full friction, against the motion");
    };
  }

  static double bound(double torque, double pitchRadius, double friction, double pressureAngle) {
    return friction * Math.abs(torque) / (pitchRadius * StrictMath.cos(pressureAngle));
  }

  /** An interval of friction. */
  record Friction(double low, double high) {
    static Friction of(double given) {
      return Double.isNaN(given) ? new Friction(0.05, 0.20) : new Friction(given, given);
    }
  }
}
