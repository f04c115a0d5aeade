package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.TypesetAs;

/**
 * One backlash said in another way: circumferential, normal, angular, radial, or as a dial reads.
 */
public final class Backlash {
  private static final String ISO_21771 =
      "ISO 21771:2007 and ISO/TR 10064-2:1996: j_bn = j_wt cos α_wt cos β_b";

  private Backlash() {}

  /**
   * Normal backlash from circumferential backlash: {@code j_n = j_t cos α_n cos β}.
   *
   * <p>The normal backlash is the shortest gap between the flanks, what a feeler measures.
   *
   * @param circular j_t, transverse arc on the pitch circle
   * @param pressureAngle α_n, normal
   * @param helixAngle β, helix or spiral angle; 0 for straight teeth
   * @return j_n, normal to the flanks
   */
  @Calculates(
      source = ISO_21771 + "; cos α_t cos β_b = cos α_n cos β",
      terms = {"lash", "feeler", "normal lash"},
      partials = "backlashNormalPartials")
  @TypesetAs("circular * cos(pressure_angle) * cos(helix_angle)")
  @In("mm")
  public static double backlashNormal(
      @In("mm") double circular,
      @In("deg") @Range("10 deg .. 35 deg") double pressureAngle,
      @In("deg") @Range("-80 deg .. 80 deg") @Default("0 deg") double helixAngle) {
    return circular * StrictMath.cos(pressureAngle) * StrictMath.cos(helixAngle);
  }

  /** Of {@link #backlashNormal}. */
  public static double[][] backlashNormalPartials(
      double circular, double pressureAngle, double helixAngle) {
    double result = backlashNormal(circular, pressureAngle, helixAngle);
    return new double[][] {
      {
        StrictMath.cos(pressureAngle) * StrictMath.cos(helixAngle),
        -result * StrictMath.tan(pressureAngle),
        -result * StrictMath.tan(helixAngle)
      }
    };
  }

  /**
   * Circumferential backlash from normal backlash: {@code j_t = j_n / (cos α_n cos β)}.
   *
   * @param normal j_n, normal to the flanks
   * @param pressureAngle α_n, normal
   * @param helixAngle β, helix or spiral angle; 0 for straight teeth
   * @return j_t, transverse arc on the pitch circle
   */
  @Calculates(
      source = ISO_21771 + "; cos α_t cos β_b = cos α_n cos β",
      terms = {"lash", "feeler", "circumferential", "transverse"},
      partials = "backlashCircularPartials")
  @TypesetAs("normal / (cos(pressure_angle) * cos(helix_angle))")
  @In("mm")
  public static double backlashCircular(
      @In("mm") double normal,
      @In("deg") @Range("10 deg .. 35 deg") double pressureAngle,
      @In("deg") @Range("-80 deg .. 80 deg") @Default("0 deg") double helixAngle) {
    return normal / (StrictMath.cos(pressureAngle) * StrictMath.cos(helixAngle));
  }

  /** Of {@link #backlashCircular}. */
  public static double[][] backlashCircularPartials(
      double normal, double pressureAngle, double helixAngle) {
    double result = backlashCircular(normal, pressureAngle, helixAngle);
    return new double[][] {
      {
        1 / (StrictMath.cos(pressureAngle) * StrictMath.cos(helixAngle)),
        result * StrictMath.tan(pressureAngle),
        result * StrictMath.tan(helixAngle)
      }
    };
  }

  /**
   * Angle through which a gear turns free in its backlash: {@code φ = 2 j_t / d}.
   *
   * @param circular j_t, transverse arc on the pitch circle
   * @param pitchDiameter d of the gear whose shaft is meant
   * @return φ at that gear's shaft, its mate held
   */
  @Calculates(
      source = "derived: arc over radius",
      cautions = "The same backlash is another angle at the other shaft: name the shaft.",
      terms = {"lash", "angular lash", "free turn"},
      partials = "backlashAngularPartials")
  @TypesetAs("2 * circular / pitch_diameter")
  @In("deg")
  public static double backlashAngular(
      @In("mm") double circular, @In("mm") @Range("> 0 mm") double pitchDiameter) {
    return 2 * circular / pitchDiameter;
  }

  /** Of {@link #backlashAngular}. */
  public static double[][] backlashAngularPartials(double circular, double pitchDiameter) {
    return new double[][] {{2 / pitchDiameter, -2 * circular / (pitchDiameter * pitchDiameter)}};
  }

  /**
   * Radial backlash from circumferential backlash: {@code j_r = j_t / (2 tan α_t)}.
   *
   * @param circular j_t, transverse arc on the pitch circle
   * @param pressureAngle α_t, transverse working pressure angle
   * @return j_r, how far the centres may come together before the mesh is tight
   */
  @Calculates(
      source = "ISO 21771:2007: j_r = j_wt / (2 tan α_wt)",
      terms = {"lash", "radial lash", "centres"},
      partials = "backlashRadialPartials")
  @TypesetAs("circular / (2 * tan(pressure_angle))")
  @In("mm")
  public static double backlashRadial(
      @In("mm") double circular, @In("deg") @Range("10 deg .. 40 deg") double pressureAngle) {
    return circular / (2 * StrictMath.tan(pressureAngle));
  }

  /** Of {@link #backlashRadial}. */
  public static double[][] backlashRadialPartials(double circular, double pressureAngle) {
    double tan = StrictMath.tan(pressureAngle);
    double sin = StrictMath.sin(pressureAngle);
    return new double[][] {{1 / (2 * tan), -circular / (2 * sin * sin)}};
  }

  /**
   * Circumferential backlash from a dial gauge reading: {@code j_t = (reading / cos c) r_p / r}.
   *
   * <p>The mate is held, the end floats of both shafts are taken up, and the stylus works along the
   * tangent at its radius. A stylus set out of the tangent by an angle c reads short; one set
   * normal to a straight flank is out by the pressure angle and its reading is the normal backlash
   * there.
   *
   * @param reading full travel of the dial, stop to stop, without sign
   * @param radius r, from the shaft's axis to the stylus
   * @param pitchRadius r_p at which the backlash is wanted; for a bevel gear that of the heel
   * @param stylusAngle c, between the stylus and the tangent
   * @return j_t, arc at the pitch radius
   */
  @Calculates(
      source = "derived: the gear turns as one piece, so arcs go with their radii",
      cautions = {
        "Hold the mate and both shafts against their working thrust faces: free end float of a"
            + " bevel gear or helical gear reads as backlash.",
        "One tooth is one station: readings round the gear are not repeats, run-out is in them.",
        "Turn by hand, ignition earthed and plugs out, drive locked off: fingers out of the mesh."
      },
      terms = {"lash", "dial indicator", "clock", "DTI", "test indicator", "arm"},
      partials = "backlashFromDialPartials")
  @TypesetAs("reading * pitch_radius / (radius * cos(stylus_angle))")
  @In("mm")
  public static double backlashFromDial(
      @In("mm") @Range(">= 0 mm") double reading,
      @In("mm") @Range("> 0 mm") double radius,
      @In("mm") @Range("> 0 mm") double pitchRadius,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double stylusAngle) {
    return reading * pitchRadius / (radius * StrictMath.cos(stylusAngle));
  }

  /** Of {@link #backlashFromDial}. */
  public static double[][] backlashFromDialPartials(
      double reading, double radius, double pitchRadius, double stylusAngle) {
    double result = backlashFromDial(reading, radius, pitchRadius, stylusAngle);
    double cos = StrictMath.cos(stylusAngle);
    return new double[][] {
      {
        pitchRadius / (radius * cos),
        -result / radius,
        reading / (radius * cos),
        result * StrictMath.tan(stylusAngle)
      }
    };
  }
}
