package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.TypesetAs;

/**
 * What a movement of a bevel gear along its shaft does to the backlash, and back. Movement away
 * from the common apex is positive and opens the mesh.
 */
public final class AxialShift {
  private static final String SOURCE =
      "derived: a shift s moves the pitch cone by s sin δ along its normal; same relation as the KHK"
          + " Gear Technical Reference, chapter 6, and Machinery's Handbook, bevel gearing";

  private AxialShift() {}

  /**
   * Change of circumferential backlash of a bevel pair when one member moves along its own axis:
   * {@code Δj_t = 2 s tan α_n sin δ / cos β}.
   *
   * <p>Backlash is the transverse arc at the heel, on the outer pitch circle: the gap that opens is
   * the same length all along the face, and the heel closes first. Moves of both members add.
   *
   * <p>The moved member no longer matches its mate exactly: its pitch at the mate's heel is off,
   * and the free backlash differs with the tooth phase by about {@code ± π cos δ / (2 z tan α)} of
   * the change. With {@code teeth} given this enters the uncertainty; without, it is not counted.
   *
   * @param shift s, movement of one member along its axis; positive away from the common apex, when
   *     the mounting distance grows
   * @param pressureAngle α_n, normal
   * @param pitchAngle δ, pitch cone angle of the member that moves
   * @param spiralAngle β at the heel; 0 for straight teeth
   * @param teeth z of the member that moves; given, the model's own error is counted
   * @return change of circumferential backlash at the heel; positive opens
   */
  @Calculates(
      source = SOURCE,
      cautions = {
        "The contact pattern moves with the member: this sets the backlash, not the pattern; see"
            + " bevel_shims.",
        "Without teeth the mismatch of a moved member is not counted: 12.7 % of the change for 24"
            + " teeth at 45 deg and 20 deg.",
        "A slope measured from two shim settings (backlash_rate_measured) is better than this"
            + " relation.",
        "Offset and change of the shaft angle are not covered."
      },
      terms = {"lash", "bevel", "shim", "mounting distance", "heel", "mesh", "gear thrust"},
      partials = "backlashFromAxialShiftPartials",
      modelError = "backlashFromAxialShiftError")
  @TypesetAs("2 * shift * tan(pressure_angle) * sin(pitch_angle) / cos(spiral_angle)")
  @In("mm")
  public static double backlashFromAxialShift(
      @In("mm") double shift,
      @In("deg") @Range("10 deg .. 30 deg") double pressureAngle,
      @In("deg") @Range("0 deg .. 90 deg") double pitchAngle,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double spiralAngle,
      @In("1") @Range(">= 5") @Default(Default.NOT_GIVEN) double teeth) {
    if (!Double.isNaN(teeth)) {
      CylindricalMesh.whole("teeth", teeth);
    }
    return shift * rate(pressureAngle, pitchAngle, spiralAngle);
  }

  /** Of {@link #backlashFromAxialShift}. */
  public static double[][] backlashFromAxialShiftPartials(
      double shift, double pressureAngle, double pitchAngle, double spiralAngle, double teeth) {
    double rate = rate(pressureAngle, pitchAngle, spiralAngle);
    double cos = StrictMath.cos(pressureAngle);
    double spiral = StrictMath.cos(spiralAngle);
    return new double[][] {
      {
        rate,
        2 * shift * StrictMath.sin(pitchAngle) / (cos * cos * spiral),
        2 * shift * StrictMath.tan(pressureAngle) * StrictMath.cos(pitchAngle) / spiral,
        shift * rate * StrictMath.tan(spiralAngle),
        0
      }
    };
  }

  /**
   * Half-width of the error of {@link #backlashFromAxialShift}: the pitch of a member moved by s
   * differs at its mate's heel by 2 π s sin δ cos δ / z, half of it either way over the tooth
   * phase.
   */
  public static double backlashFromAxialShiftError(
      double shift, double pressureAngle, double pitchAngle, double spiralAngle, double teeth) {
    return Math.abs(
        StrictMath.PI * shift * StrictMath.sin(pitchAngle) * StrictMath.cos(pitchAngle) / teeth);
  }

  /**
   * Movement of one bevel gear along its axis that changes the circumferential backlash at the heel
   * as wanted: {@code s = Δj_t cos β / (2 tan α_n sin δ)}.
   *
   * @param change Δj_t wanted; positive opens
   * @param pressureAngle α_n, normal
   * @param pitchAngle δ, pitch cone angle of the member that moves
   * @param spiralAngle β at the heel; 0 for straight teeth
   * @return s, positive away from the common apex; whether that takes a thicker or a thinner shim
   *     depends on which side of the gear the shim sits
   */
  @Calculates(
      source = "inverse of backlash_from_axial_shift; " + SOURCE,
      cautions = {
        "A thicker shim takes the gear away from the apex where it holds it off a stop on the apex's"
            + " side, as under the flange of a bearing housing; at the gear's back, off a stop on the"
            + " far side, it takes it towards the apex: look at the drawing.",
        "Moving one member alone moves the contact pattern; bevel_shims works out both."
      },
      terms = {"lash", "shim", "bevel", "mounting distance"},
      partials = "axialShiftForBacklashPartials")
  @TypesetAs("change * cos(spiral_angle) / (2 * tan(pressure_angle) * sin(pitch_angle))")
  @In("mm")
  public static double axialShiftForBacklash(
      @In("mm") double change,
      @In("deg") @Range("10 deg .. 30 deg") double pressureAngle,
      @In("deg") @Range("1 deg .. 90 deg") double pitchAngle,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double spiralAngle) {
    return change / rate(pressureAngle, pitchAngle, spiralAngle);
  }

  /** Of {@link #axialShiftForBacklash}. */
  public static double[][] axialShiftForBacklashPartials(
      double change, double pressureAngle, double pitchAngle, double spiralAngle) {
    double rate = rate(pressureAngle, pitchAngle, spiralAngle);
    double shift = change / rate;
    return new double[][] {
      {
        1 / rate,
        -2 * shift / StrictMath.sin(2 * pressureAngle),
        -shift / StrictMath.tan(pitchAngle),
        -shift * StrictMath.tan(spiralAngle)
      }
    };
  }

  /** Circumferential backlash for one unit of shift. */
  static double rate(double pressureAngle, double pitchAngle, double spiralAngle) {
    return 2
        * StrictMath.tan(pressureAngle)
        * StrictMath.sin(pitchAngle)
        / StrictMath.cos(spiralAngle);
  }
}
