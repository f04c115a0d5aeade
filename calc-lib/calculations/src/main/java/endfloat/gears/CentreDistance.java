package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.definition.TypesetAs;

/** Backlash of parallel gears against their centre distance. */
public final class CentreDistance {
  private CentreDistance() {}

  /**
   * Change of circumferential (transverse) backlash with centre distance: {@code Δj_t = 2 Δa tan
   * α_n / cos β}.
   *
   * <p>First term of the involute relation; opening the centres counts positive. For spur gears and
   * wherever the transverse working pressure angle is known, give that and leave the helix angle
   * out.
   *
   * @param change Δa, change of centre distance; positive apart
   * @param pressureAngle α_n, normal; without a helix angle it is the transverse working angle
   * @param helixAngle β; 0 for spur gears
   * @return Δj_t, arc on the working pitch circle; positive opens
   */
  @Calculates(
      source =
          "derived from the involute relation; Machinery's Handbook, backlash of spur and helical"
              + " gears; symbols of ISO 21771",
      cautions = {
        "First order: 0.3 % low at 0.1 % more centre distance, 2.8 % low at 0.6 %; for more use"
            + " backlash_at_centre_distance.",
        "For two external gears. In a ring parting the centres closes: internal_pair."
      },
      terms = {"lash", "spur", "helical", "centers", "center distance", "mesh"},
      partials = "backlashFromCentreDistancePartials")
  @TypesetAs("2 * change * tan(pressure_angle) / cos(helix_angle)")
  @In("mm")
  public static double backlashFromCentreDistance(
      @In("mm") double change,
      @In("deg") @Range("10 deg .. 35 deg") double pressureAngle,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double helixAngle) {
    return 2 * change * StrictMath.tan(pressureAngle) / StrictMath.cos(helixAngle);
  }

  /** Of {@link #backlashFromCentreDistance}. */
  public static double[][] backlashFromCentreDistancePartials(
      double change, double pressureAngle, double helixAngle) {
    double cos = StrictMath.cos(pressureAngle);
    double helix = StrictMath.cos(helixAngle);
    double result = backlashFromCentreDistance(change, pressureAngle, helixAngle);
    return new double[][] {
      {
        2 * StrictMath.tan(pressureAngle) / helix,
        2 * change / (cos * cos * helix),
        result * StrictMath.tan(helixAngle)
      }
    };
  }

  /**
   * Backlash of an involute pair by the whole relation.
   *
   * @param workingPressureAngle α_wt, transverse, at the working centre distance
   * @param backlash j_wt, arc on the working pitch circles
   * @param firstOrder the first term, {@code 2 Δa tan α_t}, for comparison
   */
  public record BacklashAtCentres(
      @In("deg") double workingPressureAngle,
      @In("mm") double backlash,
      @In("mm") double firstOrder) {}

  /**
   * Backlash of a standard involute pair whose centres are opened or closed from the tight standard
   * distance: {@code j_wt = 2 a_w (inv α_wt − inv α_t)}.
   *
   * <p>The whole involute relation for teeth that would mesh without backlash at the standard
   * centre distance; backlash cut into the teeth adds {@code j a_w / a}.
   *
   * @param teeth1 z₁
   * @param teeth2 z₂
   * @param module m_n, normal module
   * @param change Δa, working less standard centre distance
   * @param pressureAngle α_n, normal
   * @param helixAngle β; 0 for spur gears
   * @throws RefusedException if the centres are closed until the base circles meet, or teeth are
   *     not whole
   */
  @Calculates(
      source = "E. Buckingham, Analytical Mechanics of Gears: j = 2 a' (inv alpha' - inv alpha)",
      cautions = "Below zero the teeth would wedge: no backlash is left, it is not a clearance.",
      terms = {"lash", "involute", "extended centers", "center distance", "spur", "helical"})
  public static BacklashAtCentres backlashAtCentreDistance(
      @In("1") @Range("5 .. 1000") double teeth1,
      @In("1") @Range("5 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("mm") double change,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double helixAngle) {
    CylindricalMesh.whole("teeth_1", teeth1);
    CylindricalMesh.whole("teeth_2", teeth2);
    double centres = module * (teeth1 + teeth2) / (2 * StrictMath.cos(helixAngle));
    double transverse = Involute.transverse(pressureAngle, helixAngle);
    double working = centres + change;
    double cos = centres * StrictMath.cos(transverse) / working;
    if (!(working > 0) || cos > 1) {
      throw new RefusedException("the centres are so close that the base circles overlap");
    }
    double workingAngle = StrictMath.acos(cos);
    double backlash = 2 * working * (Involute.inv(workingAngle) - Involute.inv(transverse));
    return new BacklashAtCentres(workingAngle, backlash, 2 * change * StrictMath.tan(transverse));
  }
}
