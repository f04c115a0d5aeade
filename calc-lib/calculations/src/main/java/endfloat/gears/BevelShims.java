package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Both mounting distances of a bevel pair at once. */
public final class BevelShims {
  private BevelShims() {}

  /** Where a thicker shim moves its gear. */
  public enum Thicker {
    AWAY_FROM_APEX,
    TOWARDS_APEX
  }

  /**
   * What to do to both shims. Shifts count positive away from the common apex.
   *
   * @param shiftPinion of the pinion along its axis
   * @param shiftWheel of the wheel along its axis
   * @param shimPinion change of the pinion's shim; positive is thicker
   * @param shimWheel change of the wheel's shim; positive is thicker
   * @param backlash expected with the shims so changed: the target, as uncertain as the reading and
   *     the angles leave it
   */
  public record Shims(
      @In("mm") double shiftPinion,
      @In("mm") double shiftWheel,
      @In("mm") double shimPinion,
      @In("mm") double shimWheel,
      @In("mm") double backlash) {}

  /**
   * Change of both shims of a bevel pair for a wanted backlash, and for the height of the pattern.
   *
   * <p>Two conditions for two shifts: the backlash, {@code 2 tan α_n (A_p sin δ_p + A_w sin
   * δ_w)/cos β}, and the movement of one profile over the other along the pitch cones, {@code A_p
   * cos δ_p − A_w cos δ_w}. Kept at zero, the latter leaves the height of the contact pattern where
   * it is; at 90° the shifts are then as the teeth, {@code A_p : A_w = z_p : z_w}.
   *
   * @param measuredBacklash circumferential, at the heel, end floats taken up
   * @param targetBacklash wanted, measured the same way
   * @param teethPinion z_p
   * @param teethWheel z_w
   * @param thickerPinion where a thicker shim moves the pinion
   * @param thickerWheel where a thicker shim moves the wheel
   * @param pressureAngle α_n, normal
   * @param shaftAngle Σ
   * @param spiralAngle β at the heel; 0 for straight teeth
   * @param profileMovement wanted {@code A_p cos δ_p − A_w cos δ_w}; positive takes the pinion out
   *     past the wheel, 0 keeps the height of the pattern
   */
  @Calculates(
      source = "derived: pitch cones moved along their axes, see backlash_from_axial_shift",
      cautions = {
        "Shims cannot cure contact at heel or toe: on straight bevels that comes from shaft angle and"
            + " offset.",
        "Which way the pattern climbs for a profile movement is found by blueing; set in two trials"
            + " and go on with the slope measured (backlash_rate_measured).",
        "Judge the tightest and the loosest tooth, cold and hot, not the mean.",
        "Turn by hand, ignition earthed and plugs out, drive locked off: fingers out of the mesh."
      },
      terms = {"mounting distance", "shim", "lash", "contact pattern", "pinion depth", "bevel"},
      partials = "bevelShimsPartials",
      modelError = "bevelShimsError")
  public static Shims bevelShims(
      @In("mm") double measuredBacklash,
      @In("mm") @Range(">= 0 mm") double targetBacklash,
      @In("1") @Range("5 .. 1000") double teethPinion,
      @In("1") @Range("5 .. 1000") double teethWheel,
      Thicker thickerPinion,
      Thicker thickerWheel,
      @In("deg") @Range("10 deg .. 30 deg") @Default("20 deg") double pressureAngle,
      @In("deg") @Range("10 deg .. 170 deg") @Default("90 deg") double shaftAngle,
      @In("deg") @Range("-50 deg .. 50 deg") @Default("0 deg") double spiralAngle,
      @In("mm") @Default("0 mm") double profileMovement) {
    CylindricalMesh.whole("teeth_pinion", teethPinion);
    CylindricalMesh.whole("teeth_wheel", teethWheel);
    double pinion = BevelPair.cone(teethWheel / teethPinion, shaftAngle);
    double wheel = shaftAngle - pinion;
    if (StrictMath.cos(pinion) <= 0 || StrictMath.cos(wheel) < 1e-9) {
      throw new RefusedException(
          "a crown gear's shim does not move the height of the pattern: the two conditions do not"
              + " fix both shims");
    }
    // both cones moved out along their normals; the determinant is the sine of the shaft angle
    double normals =
        (targetBacklash - measuredBacklash)
            * StrictMath.cos(spiralAngle)
            / (2 * StrictMath.tan(pressureAngle));
    double sum = StrictMath.sin(shaftAngle);
    double shiftPinion =
        (normals * StrictMath.cos(wheel) + profileMovement * StrictMath.sin(wheel)) / sum;
    double shiftWheel =
        (normals * StrictMath.cos(pinion) - profileMovement * StrictMath.sin(pinion)) / sum;
    return new Shims(
        shiftPinion,
        shiftWheel,
        sign(thickerPinion) * shiftPinion,
        sign(thickerWheel) * shiftWheel,
        targetBacklash);
  }

  private static double sign(Thicker thicker) {
    return thicker == Thicker.AWAY_FROM_APEX ? 1 : -1;
  }

  /**
   * Half-widths of the error of {@link #bevelShims}, in the order of its results: gears moved
   * otherwise than as their teeth no longer match, see {@link HotBacklash#backlashHot}.
   */
  public static double[] bevelShimsError(
      double measuredBacklash,
      double targetBacklash,
      double teethPinion,
      double teethWheel,
      Thicker thickerPinion,
      Thicker thickerWheel,
      double pressureAngle,
      double shaftAngle,
      double spiralAngle,
      double profileMovement) {
    double pinion = BevelPair.cone(teethWheel / teethPinion, shaftAngle);
    // what the backlash asks for moves both pitches alike, so the profile movement alone is left
    double mismatch =
        StrictMath.PI * Math.abs(profileMovement) * StrictMath.sin(pinion) / teethPinion;
    return new double[] {0, 0, 0, 0, mismatch};
  }

  /**
   * Of {@link #bevelShims}; teeth are whole and have no derivative. The backlash expected is that
   * of shims once changed: an error of the reading or of an angle is in the mesh then, not in the
   * shims.
   */
  public static double[][] bevelShimsPartials(
      double measuredBacklash,
      double targetBacklash,
      double teethPinion,
      double teethWheel,
      Thicker thickerPinion,
      Thicker thickerWheel,
      double pressureAngle,
      double shaftAngle,
      double spiralAngle,
      double profileMovement) {
    double pinion = BevelPair.cone(teethWheel / teethPinion, shaftAngle);
    double wheel = shaftAngle - pinion;
    double sum = StrictMath.sin(shaftAngle);
    double perChange = StrictMath.cos(spiralAngle) / (2 * StrictMath.tan(pressureAngle));
    double change = targetBacklash - measuredBacklash;
    double normals = change * perChange;
    double ratio = teethWheel / teethPinion;
    double cosine = StrictMath.cos(shaftAngle);
    // cone by shaft angle, from tan cone = sin / (ratio + cos)
    double turn = (1 + ratio * cosine) / (1 + ratio * ratio + 2 * ratio * cosine);
    double[] p =
        row(
            perChange * StrictMath.cos(wheel) / sum,
            normals * StrictMath.cos(wheel) / sum,
            ((-normals * StrictMath.sin(wheel) + profileMovement * StrictMath.cos(wheel))
                        * (1 - turn)
                    - (normals * StrictMath.cos(wheel) + profileMovement * StrictMath.sin(wheel))
                        * cosine
                        / sum)
                / sum,
            StrictMath.sin(wheel) / sum,
            pressureAngle,
            spiralAngle);
    double[] w =
        row(
            perChange * StrictMath.cos(pinion) / sum,
            normals * StrictMath.cos(pinion) / sum,
            ((-normals * StrictMath.sin(pinion) - profileMovement * StrictMath.cos(pinion)) * turn
                    - (normals * StrictMath.cos(pinion) - profileMovement * StrictMath.sin(pinion))
                        * cosine
                        / sum)
                / sum,
            -StrictMath.sin(pinion) / sum,
            pressureAngle,
            spiralAngle);
    double shiftPinion =
        (normals * StrictMath.cos(wheel) + profileMovement * StrictMath.sin(wheel)) / sum;
    double shiftWheel =
        (normals * StrictMath.cos(pinion) - profileMovement * StrictMath.sin(pinion)) / sum;
    double[] expected = {
      1,
      0,
      0,
      0,
      2 * change / StrictMath.sin(2 * pressureAngle),
      (shiftPinion * StrictMath.cos(pinion) * turn
              + shiftWheel * StrictMath.cos(wheel) * (1 - turn))
          / perChange,
      change * StrictMath.tan(spiralAngle),
      0
    };
    return new double[][] {
      p, w, times(sign(thickerPinion), p), times(sign(thickerWheel), w), expected
    };
  }

  private static double[] row(
      double byChange,
      double ofNormals,
      double byShaftAngle,
      double byProfile,
      double pressureAngle,
      double spiralAngle) {
    return new double[] {
      -byChange,
      byChange,
      0,
      0,
      -2 * ofNormals / StrictMath.sin(2 * pressureAngle),
      byShaftAngle,
      -ofNormals * StrictMath.tan(spiralAngle),
      byProfile
    };
  }

  private static double[] times(double factor, double[] row) {
    return java.util.Arrays.stream(row).map(x -> factor * x).toArray();
  }
}
