package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;

/** A pair of helical gears on parallel shafts from its teeth. */
public final class HelicalPair {
  private HelicalPair() {}

  /**
   * Gear 1 drives.
   *
   * @param ratio z₂/z₁
   * @param transverseModule m_t
   * @param transversePressureAngle α_t
   * @param pitchDiameter1 d₁
   * @param pitchDiameter2 d₂
   * @param baseDiameter1 d_b1
   * @param baseDiameter2 d_b2
   * @param tipDiameter1 d_a1
   * @param tipDiameter2 d_a2
   * @param baseHelixAngle β_b
   * @param normalPitch p_n
   * @param transversePitch p_t
   * @param axialPitch p_x
   * @param normalBasePitch p_bn
   * @param standardCentreDistance a
   * @param centreDistance a_w, working
   * @param workingPressureAngle α_wt, transverse
   * @param workingDiameter1 d_w1
   * @param workingDiameter2 d_w2
   * @param backlash j_wt, arc on the working pitch circles, of teeth cut to nominal thickness
   * @param contactRatio ε_α, transverse
   * @param overlapRatio ε_β, of the face width
   * @param totalContactRatio ε_γ
   * @param speed2 of gear 2
   * @param pitchLineSpeed on the working pitch circles
   * @param slidingApproach sliding speed where contact begins
   * @param slidingRecess sliding speed where contact ends
   * @param tangential F_t on the working pitch circle
   * @param radial F_r, pushes the shafts apart
   * @param axial F_a, along the shafts; opposite on the two gears
   * @param normal F_bn, normal to the flank
   * @param efficiency of the mesh
   * @param torque2 at gear 2, after the loss
   * @param interference none, or that a tip reaches below the mate's base circle
   */
  public record Helical(
      @In("1") double ratio,
      @In("mm") double transverseModule,
      @In("deg") double transversePressureAngle,
      @In("mm") double pitchDiameter1,
      @In("mm") double pitchDiameter2,
      @In("mm") double baseDiameter1,
      @In("mm") double baseDiameter2,
      @In("mm") double tipDiameter1,
      @In("mm") double tipDiameter2,
      @In("deg") double baseHelixAngle,
      @In("mm") double normalPitch,
      @In("mm") double transversePitch,
      @In("mm") double axialPitch,
      @In("mm") double normalBasePitch,
      @In("mm") double standardCentreDistance,
      @In("mm") double centreDistance,
      @In("deg") double workingPressureAngle,
      @In("mm") double workingDiameter1,
      @In("mm") double workingDiameter2,
      @In("mm") double backlash,
      @In("1") double contactRatio,
      @In("1") double overlapRatio,
      @In("1") double totalContactRatio,
      @In("rpm") double speed2,
      @In("m/s") double pitchLineSpeed,
      @In("m/s") double slidingApproach,
      @In("m/s") double slidingRecess,
      @In("N") double tangential,
      @In("N") double radial,
      @In("N") double axial,
      @In("N") double normal,
      @In("1") double efficiency,
      @In("N.m") double torque2,
      String interference) {}

  /**
   * Geometry, contact ratios, sliding, tooth forces and efficiency of a helical pair on parallel
   * shafts.
   *
   * <p>Module and pressure angle are normal ones, as the cutter is; give a normal diametral pitch P
   * as module {@code 1 in / P}. The axial force is given without direction: it follows the hand and
   * the sense of turning.
   *
   * @param teeth1 z₁, of the driving gear
   * @param teeth2 z₂, of the driven gear
   * @param module m_n, normal
   * @param helixAngle β on the pitch cylinder
   * @param pressureAngle α_n, normal
   * @param faceWidth b, for the overlap ratio; 0: not counted
   * @param shift1 x₁, profile shift in modules
   * @param shift2 x₂
   * @param centreDistance a_w, working; not given: the pair meshes without backlash
   * @param torque T₁ at gear 1
   * @param speed n₁ of gear 1
   * @param friction μ, coefficient of friction of the flanks
   * @param addendum1 tip height in modules, profile shift apart
   * @param addendum2 of gear 2
   * @param tips full, or shortened by {@code k = (a_w − a)/m − x₁ − x₂} to keep the clearance
   */
  @Calculates(
      source = SpurPair.SOURCE,
      cautions = {SpurPair.LOSS, SpurPair.NOMINAL},
      terms = {
        "gear",
        "pinion",
        "wheel",
        "normal pitch",
        "overlap",
        "axial thrust",
        "tooth forces"
      })
  public static Helical helicalPair(
      @In("1") @Range("5 .. 1000") double teeth1,
      @In("1") @Range("5 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("deg") @Range("0.1 deg .. 60 deg") double helixAngle,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double faceWidth,
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
            helixAngle,
            centreDistance,
            tips);
    double normalPitch = StrictMath.PI * module;
    double axialPitch = normalPitch / StrictMath.sin(helixAngle);
    double overlap = faceWidth / axialPitch;
    if (faceWidth > 0) {
      ContactPath.needNextPair(mesh.path.ratio() + overlap);
    }
    double efficiency = mesh.efficiency(friction);
    return new Helical(
        mesh.ratio(),
        mesh.transverseModule,
        mesh.transverseAngle,
        mesh.pitch1,
        mesh.pitch2,
        mesh.base1,
        mesh.base2,
        mesh.tip1,
        mesh.tip2,
        Involute.baseHelix(helixAngle, pressureAngle),
        normalPitch,
        StrictMath.PI * mesh.transverseModule,
        axialPitch,
        normalPitch * StrictMath.cos(pressureAngle),
        mesh.standardCentres,
        mesh.centres,
        mesh.workingAngle,
        mesh.working1(),
        mesh.working2(),
        mesh.backlash,
        mesh.path.ratio(),
        overlap,
        mesh.path.ratio() + overlap,
        speed / mesh.ratio(),
        speed * mesh.working1() / 2,
        mesh.sliding(mesh.path.approach(), speed),
        mesh.sliding(mesh.path.recess(), speed),
        mesh.tangential(torque),
        mesh.radial(torque),
        mesh.tangential(torque) * mesh.workingHelixTangent(),
        mesh.normal(torque),
        efficiency,
        torque * mesh.ratio() * efficiency,
        mesh.interference());
  }
}
