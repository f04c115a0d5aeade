package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** A pair of spur gears from its teeth. */
public final class SpurPair {
  static final String SOURCE =
      "derived from the involute (ISO 21771:2007 symbols; E. Buckingham, Analytical Mechanics of"
          + " Gears); loss by sliding after Ohlendorf as in ISO/TR 14179-2";
  static final String LOSS =
      "Efficiency counts sliding at one coefficient of friction, pairs in contact sharing the load"
          + " equally; churning, seals and bearings come on top.";
  static final String NOMINAL =
      "Forces are the nominal ones of the torque; vibratory torque comes on top.";

  private SpurPair() {}

  /**
   * Gear 1 drives.
   *
   * @param ratio z₂/z₁
   * @param pitchDiameter1 d₁
   * @param pitchDiameter2 d₂
   * @param baseDiameter1 d_b1
   * @param baseDiameter2 d_b2
   * @param tipDiameter1 d_a1, from the addendum and the profile shift
   * @param tipDiameter2 d_a2
   * @param circularPitch p, arc on the pitch circle
   * @param basePitch p_b
   * @param standardCentreDistance a
   * @param centreDistance a_w, working
   * @param workingPressureAngle α_w
   * @param workingDiameter1 d_w1
   * @param workingDiameter2 d_w2
   * @param backlash j_wt, arc on the working pitch circles, of teeth cut to nominal thickness;
   *     negative means wedged
   * @param contactRatio ε_α
   * @param speed2 of gear 2
   * @param pitchLineSpeed on the working pitch circles
   * @param slidingApproach sliding speed where contact begins, at the tip of gear 2
   * @param slidingRecess sliding speed where contact ends, at the tip of gear 1
   * @param tangential F_t on the working pitch circle
   * @param radial F_r, pushes the shafts apart
   * @param normal F_n along the line of action
   * @param efficiency of the mesh
   * @param torque2 at gear 2, after the loss
   * @param interference none, or that a tip reaches below the mate's base circle
   */
  public record Spur(
      @In("1") double ratio,
      @In("mm") double pitchDiameter1,
      @In("mm") double pitchDiameter2,
      @In("mm") double baseDiameter1,
      @In("mm") double baseDiameter2,
      @In("mm") double tipDiameter1,
      @In("mm") double tipDiameter2,
      @In("mm") double circularPitch,
      @In("mm") double basePitch,
      @In("mm") double standardCentreDistance,
      @In("mm") double centreDistance,
      @In("deg") double workingPressureAngle,
      @In("mm") double workingDiameter1,
      @In("mm") double workingDiameter2,
      @In("mm") double backlash,
      @In("1") double contactRatio,
      @In("rpm") double speed2,
      @In("m/s") double pitchLineSpeed,
      @In("m/s") double slidingApproach,
      @In("m/s") double slidingRecess,
      @In("N") double tangential,
      @In("N") double radial,
      @In("N") double normal,
      @In("1") double efficiency,
      @In("N.m") double torque2,
      String interference) {}

  /**
   * Geometry, contact ratio, sliding, tooth forces and efficiency of a spur pair.
   *
   * <p>Give a diametral pitch P as module {@code 1 in / P}. With a centre distance the working
   * pressure angle and the backlash follow from it; without, the pair meshes without backlash.
   *
   * @param teeth1 z₁, of the driving gear
   * @param teeth2 z₂, of the driven gear
   * @param module m
   * @param pressureAngle α of the basic rack
   * @param shift1 x₁, profile shift in modules
   * @param shift2 x₂
   * @param centreDistance a_w, working; not given: the pair meshes without backlash
   * @param torque T₁ at gear 1
   * @param speed n₁ of gear 1
   * @param friction μ, coefficient of friction of the flanks
   * @param addendum1 tip height in modules, profile shift apart
   * @param addendum2 of gear 2
   * @param tips full, or shortened by {@code k = (a_w − a)/m − x₁ − x₂} to keep the clearance
   * @throws RefusedException if the base circles overlap or the contact ratio is below 1
   */
  @Calculates(
      source = SOURCE,
      cautions = {LOSS, NOMINAL},
      terms = {"gear", "pinion", "wheel", "diametral pitch", "module", "tooth forces", "involute"})
  public static Spur spurPair(
      @In("1") @Range("5 .. 1000") double teeth1,
      @In("1") @Range("5 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("1") @Range("-1 .. 2") @Default("0") double shift1,
      @In("1") @Range("-1 .. 2") @Default("0") double shift2,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double centreDistance,
      @In("N.m") @Range(">= 0 N.m") @Default("0 N.m") double torque,
      @In("rpm") @Range(">= 0 rpm") @Default("0 rpm") double speed,
      @In("1") @Range("0 .. 0.5") @Default("0") double friction,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum1,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum2,
      @Default("\"full\"") TipHeight tips) {
    CylindricalMesh mesh =
        new CylindricalMesh(
            new CylindricalMesh.Wheel(teeth1, shift1, addendum1),
            new CylindricalMesh.Wheel(teeth2, shift2, addendum2),
            module,
            pressureAngle,
            0,
            centreDistance,
            tips);
    ContactPath.needNextPair(mesh.path.ratio());
    double efficiency = mesh.efficiency(friction);
    return new Spur(
        mesh.ratio(),
        mesh.pitch1,
        mesh.pitch2,
        mesh.base1,
        mesh.base2,
        mesh.tip1,
        mesh.tip2,
        StrictMath.PI * module,
        mesh.path.basePitch(),
        mesh.standardCentres,
        mesh.centres,
        mesh.workingAngle,
        mesh.working1(),
        mesh.working2(),
        mesh.backlash,
        mesh.path.ratio(),
        speed / mesh.ratio(),
        speed * mesh.working1() / 2,
        mesh.sliding(mesh.path.approach(), speed),
        mesh.sliding(mesh.path.recess(), speed),
        mesh.tangential(torque),
        mesh.radial(torque),
        mesh.normal(torque),
        efficiency,
        torque * mesh.ratio() * efficiency,
        mesh.interference());
  }
}
