package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** A pinion in a ring with internal teeth, on parallel shafts. */
public final class InternalPair {
  private InternalPair() {}

  /**
   * Gear 1 is the pinion, gear 2 the ring.
   *
   * @param ratio z₂/z₁; both turn the same way
   * @param pitchDiameter1 d₁
   * @param pitchDiameter2 d₂
   * @param baseDiameter1 d_b1
   * @param baseDiameter2 d_b2
   * @param tipDiameter1 d_a1, over the pinion's tips
   * @param tipDiameter2 d_a2, inside the ring's tips
   * @param standardCentreDistance a = (d₂ − d₁)/2
   * @param centreDistance a_w, working
   * @param workingPressureAngle α_wt, transverse
   * @param workingDiameter1 d_w1
   * @param workingDiameter2 d_w2
   * @param backlash j_wt, arc on the working pitch circles, of teeth cut to nominal thickness;
   *     negative means wedged
   * @param backlashPerCentreDistance change of backlash with centre distance, −2 tan α_wt: parting
   *     the centres closes
   * @param contactRatio ε_α, transverse
   * @param interference none, or what fouls
   */
  public record Internal(
      @In("1") double ratio,
      @In("mm") double pitchDiameter1,
      @In("mm") double pitchDiameter2,
      @In("mm") double baseDiameter1,
      @In("mm") double baseDiameter2,
      @In("mm") double tipDiameter1,
      @In("mm") double tipDiameter2,
      @In("mm") double standardCentreDistance,
      @In("mm") double centreDistance,
      @In("deg") double workingPressureAngle,
      @In("mm") double workingDiameter1,
      @In("mm") double workingDiameter2,
      @In("mm") double backlash,
      @In("1") double backlashPerCentreDistance,
      @In("1") double contactRatio,
      String interference) {}

  /**
   * Centre distance, backlash and contact ratio of a pinion in a ring: {@code j_wt = 2 a_w (inv α_t
   * + 2 (x₂ − x₁) tan α_n/(z₂ − z₁) − inv α_wt)}, {@code cos α_wt = (d_b2 − d_b1)/(2 a_w)}.
   *
   * <p>The ring's spaces are taken as teeth of an external gear of the same numbers, so its profile
   * shift is positive outwards, where the spaces are wider.
   *
   * @param teeth1 z₁, of the pinion
   * @param teeth2 z₂, of the ring
   * @param module m_n, normal module
   * @param pressureAngle α_n of the basic rack
   * @param helixAngle β; 0 for spur gears
   * @param shift1 x₁, profile shift of the pinion in modules
   * @param shift2 x₂, of the ring; positive outwards
   * @param centreDistance a_w, working; not given: the pair meshes without backlash
   * @param addendum1 tip height in modules, profile shift apart
   * @param addendum2 of the ring, inwards
   * @throws RefusedException if the ring has not more teeth than the pinion, or the tips do not
   *     reach each other, or straight teeth have a contact ratio below 1
   */
  @Calculates(
      source =
          "derived from the involute (ISO 21771:2007 symbols); equations of internal gears as in"
              + " Elements of Metric Gear Technology, section 5",
      cautions = {
        "Parting the centres closes the backlash, the other way round than between two external"
            + " gears.",
        "Whether the pinion can be put into the ring from the side is not looked at."
      },
      terms = {"ring gear", "annulus", "internal gear", "epicyclic", "planetary", "lash"})
  public static Internal internalPair(
      @In("1") @Range("5 .. 1000") double teeth1,
      @In("1") @Range("6 .. 2000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double helixAngle,
      @In("1") @Range("-1 .. 2") @Default("0") double shift1,
      @In("1") @Range("-1 .. 2") @Default("0") double shift2,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double centreDistance,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum1,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum2) {
    double z1 = CylindricalMesh.whole("teeth_1", teeth1);
    double z2 = CylindricalMesh.whole("teeth_2", teeth2);
    if (!(z2 > z1)) {
      throw new RefusedException("the ring must have more teeth than the pinion that runs in it");
    }
    double transverseModule = module / StrictMath.cos(helixAngle);
    double transverse = Involute.transverse(pressureAngle, helixAngle);
    double pitch1 = transverseModule * z1;
    double pitch2 = transverseModule * z2;
    double base1 = pitch1 * StrictMath.cos(transverse);
    double base2 = pitch2 * StrictMath.cos(transverse);
    double shifts = shift2 - shift1;
    double tight =
        Involute.inv(transverse) + 2 * shifts * StrictMath.tan(pressureAngle) / (z2 - z1);
    if (!(tight > 0)) {
      throw new RefusedException("with these profile shifts the teeth cannot mesh");
    }
    double closest = (base2 - base1) / 2;
    double angle;
    double centres;
    double backlash;
    if (Double.isNaN(centreDistance)) {
      angle = shifts == 0 ? transverse : Involute.angleOf(tight);
      centres = shifts == 0 ? (pitch2 - pitch1) / 2 : closest / StrictMath.cos(angle);
      backlash = 0;
    } else {
      centres = centreDistance;
      if (centres < closest) {
        throw new OutOfRangeException(
            "centre_distance",
            centres,
            closest,
            Double.POSITIVE_INFINITY,
            "mm",
            "closer than that the base circle of the pinion lies inside the ring's");
      }
      angle = StrictMath.acos(closest / centres);
      backlash = 2 * centres * (tight - Involute.inv(angle));
    }
    double tip1 = pitch1 + 2 * module * (addendum1 + shift1);
    double tip2 = pitch2 - 2 * module * (addendum2 - shift2);
    RingPath path = new RingPath(z1, z2, tip1 / 2, base1 / 2, tip2 / 2, base2 / 2, centres, angle);
    if (!(path.ratio() > 0)) {
      throw new RefusedException("the tips do not reach each other at this centre distance");
    }
    if (helixAngle == 0) {
      ContactPath.needNextPair(path.ratio());
    }
    return new Internal(
        z2 / z1,
        pitch1,
        pitch2,
        base1,
        base2,
        tip1,
        tip2,
        (pitch2 - pitch1) / 2,
        centres,
        angle,
        2 * centres * z1 / (z2 - z1),
        2 * centres * z2 / (z2 - z1),
        backlash,
        -2 * StrictMath.tan(angle),
        path.ratio(),
        path.interference());
  }
}
