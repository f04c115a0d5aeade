package endfloat.gears;

import endfloat.contact.HertzContact;
import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/** A pair of straight or spiral bevel gears from its teeth. */
public final class BevelPair {
  private BevelPair() {}

  /**
   * Gear 1 drives. Forces act at the middle of the face; axial forces count positive away from the
   * apex, radial ones towards the own axis.
   *
   * @param ratio z₂/z₁
   * @param pitchAngle1 δ₁, cone of gear 1
   * @param pitchAngle2 δ₂
   * @param pitchDiameter1 d₁ at the heel
   * @param pitchDiameter2 d₂ at the heel
   * @param tipDiameter1 d_a1 at the heel, teeth tapering to the apex
   * @param tipDiameter2 d_a2
   * @param coneDistance R, apex to heel along the pitch cone
   * @param meanConeDistance R_m, to the middle of the face
   * @param meanDiameter1 d_m1 at the middle of the face
   * @param meanDiameter2 d_m2
   * @param virtualTeeth1 z₁/cos δ₁, of the equivalent spur gear
   * @param virtualTeeth2 z₂/cos δ₂; a crown gear has none
   * @param contactRatio ε_α of the equivalent pair, transverse
   * @param overlapRatio ε_β, of a spiral
   * @param speed2 of gear 2
   * @param pitchLineSpeed at the middle of the face
   * @param slidingApproach sliding speed where contact begins
   * @param slidingRecess sliding speed where contact ends
   * @param tangential F_t at the middle of the face
   * @param radial1 on gear 1
   * @param axial1 on gear 1, away from the apex
   * @param radial2 on gear 2
   * @param axial2 on gear 2, away from the apex
   * @param normal F_n, normal to the flank
   * @param efficiency of the mesh
   * @param torque2 at gear 2, after the loss
   * @param contactStress Hertz pressure at the middle of the face, all the load on one pair of
   *     teeth
   * @param bendingStress1 Lewis stress at the root of gear 1, middle of the face
   * @param bendingStress2 Lewis stress at the root of gear 2
   */
  public record Bevel(
      @In("1") double ratio,
      @In("deg") double pitchAngle1,
      @In("deg") double pitchAngle2,
      @In("mm") double pitchDiameter1,
      @In("mm") double pitchDiameter2,
      @In("mm") double tipDiameter1,
      @In("mm") double tipDiameter2,
      @In("mm") double coneDistance,
      @In("mm") double meanConeDistance,
      @In("mm") double meanDiameter1,
      @In("mm") double meanDiameter2,
      @In("1") double virtualTeeth1,
      @In("1") Uncertain virtualTeeth2,
      @In("1") double contactRatio,
      @In("1") double overlapRatio,
      @In("rpm") double speed2,
      @In("m/s") double pitchLineSpeed,
      @In("m/s") double slidingApproach,
      @In("m/s") double slidingRecess,
      @In("N") double tangential,
      @In("N") double radial1,
      @In("N") double axial1,
      @In("N") double radial2,
      @In("N") double axial2,
      @In("N") double normal,
      @In("1") double efficiency,
      @In("N.m") double torque2,
      @In("MPa") Uncertain contactStress,
      @In("MPa") Uncertain bendingStress1,
      @In("MPa") Uncertain bendingStress2) {}

  /**
   * Geometry, contact ratio, sliding, tooth forces and efficiency of a bevel pair.
   *
   * <p>Cones from the teeth and the shaft angle: {@code tan δ₁ = sin Σ / (z₂/z₁ + cos Σ)}. Contact
   * and sliding are those of the equivalent spur pair of the back cones (Tredgold) at the middle of
   * the face.
   *
   * <p>The stresses are nominal: Hertz for the flanks of the equivalent pair, Lewis for its teeth,
   * at the middle of the face, one pair of teeth carrying all.
   *
   * <p>The spiral angle is positive where the spiral pushes the driving gear away from the apex: a
   * right-hand driver that turns counter-clockwise seen from its back, or a left-hand one
   * clockwise; negative for the other two.
   *
   * @param teeth1 z₁, of the driving gear
   * @param teeth2 z₂, of the driven gear
   * @param module m, transverse, at the heel
   * @param shaftAngle Σ
   * @param pressureAngle α_n, normal
   * @param faceWidth b; 0 takes the forces at the heel
   * @param spiralAngle β at the middle of the face, signed
   * @param torque T₁ at gear 1
   * @param speed n₁ of gear 1
   * @param friction μ, coefficient of friction of the flanks
   * @param addendum tip height in mean normal modules
   * @param modulus1 E₁, for the contact stress
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   */
  @Calculates(
      source =
          "Machinery's Handbook, bevel gearing (cones); R. G. Budynas and J. K. Nisbett, Shigley's"
              + " Mechanical Engineering Design, section 13-15 (forces), spiral from the direction of"
              + " the flank normal; contact by Tredgold's equivalent spur pair",
      cautions = {
        SpurPair.LOSS,
        SpurPair.NOMINAL,
        "Without face_width the forces are those at the heel, up to a sixth lower than at the middle of"
            + " the face.",
        "A face wider than a third of the cone distance bears unevenly: take it as one third."
      },
      terms = {"bevel", "spiral bevel", "mitre", "miter", "crown gear", "thrust", "tooth forces"})
  public static Bevel bevelPair(
      @In("1") @Range("5 .. 1000") double teeth1,
      @In("1") @Range("5 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("deg") @Range("10 deg .. 170 deg") @Default("90 deg") double shaftAngle,
      @In("deg") @Range("10 deg .. 30 deg") @Default("20 deg") double pressureAngle,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double faceWidth,
      @In("deg") @Range("-50 deg .. 50 deg") @Default("0 deg") double spiralAngle,
      @In("N.m") @Range(">= 0 N.m") @Default("0 N.m") double torque,
      @In("rpm") @Range(">= 0 rpm") @Default("0 rpm") double speed,
      @In("1") @Range("0 .. 0.5") @Default("0") double friction,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    CylindricalMesh.whole("teeth_1", teeth1);
    CylindricalMesh.whole("teeth_2", teeth2);
    double ratio = teeth2 / teeth1;
    double cone1 = cone(ratio, shaftAngle);
    double cone2 = shaftAngle - cone1;
    // a crown gear's cone is a flat: its own cosine is nought but for rounding
    double cos2 = Math.abs(cone2 - StrictMath.PI / 2) < 1e-12 ? 0 : StrictMath.cos(cone2);
    if (StrictMath.cos(cone1) <= 0 || cos2 < 0) {
      throw new RefusedException("at this shaft angle one gear would be an internal bevel gear");
    }
    double distance = module * teeth1 / (2 * StrictMath.sin(cone1));
    if (faceWidth > distance / 2) {
      throw new OutOfRangeException(
          "face_width", faceWidth, 0, distance / 2, "mm", "it must lie well outside the apex");
    }
    double shrink = 1 - faceWidth / (2 * distance);
    double mean1 = module * teeth1 * shrink;
    EquivalentPair equivalent =
        new EquivalentPair(
            teeth1 / StrictMath.cos(cone1),
            teeth2 / cos2,
            module * shrink,
            pressureAngle,
            spiralAngle,
            addendum);
    if (spiralAngle == 0) {
      ContactPath.needNextPair(equivalent.contactRatio());
    }
    double height = addendum * module * StrictMath.cos(spiralAngle);
    double tangential = 2 * torque / mean1;
    double efficiency = equivalent.efficiency(friction);
    BevelForces forces = new BevelForces(tangential, pressureAngle, spiralAngle);
    BevelStress stress =
        new BevelStress(
            tangential, faceWidth, module * shrink, pressureAngle, Math.abs(spiralAngle));
    double pitchLine = speed * mean1 / 2;
    return new Bevel(
        ratio,
        cone1,
        cone2,
        module * teeth1,
        module * teeth2,
        module * teeth1 + 2 * height * StrictMath.cos(cone1),
        module * teeth2 + 2 * height * cos2,
        distance,
        distance * shrink,
        mean1,
        module * teeth2 * shrink,
        teeth1 / StrictMath.cos(cone1),
        cos2 == 0
            ? Uncertain.absent("a crown gear has no number of virtual teeth: it meshes like a rack")
            : new Uncertain(teeth2 / cos2, 0),
        equivalent.contactRatio(),
        faceWidth * Math.abs(StrictMath.tan(spiralAngle)) / (StrictMath.PI * module * shrink),
        speed / ratio,
        pitchLine,
        equivalent.sliding(equivalent.path().approach(), pitchLine),
        equivalent.sliding(equivalent.path().recess(), pitchLine),
        tangential,
        forces.radialDriver(cone1),
        forces.axialDriver(cone1),
        forces.radialDriven(cone2),
        forces.axialDriven(cone2),
        forces.normal(),
        efficiency,
        torque * ratio * efficiency,
        stress.contact(
            HertzContact.contactModulus(modulus1, modulus2, poisson1, poisson2),
            mean1 / 2 / StrictMath.cos(cone1),
            cos2 == 0 ? Double.POSITIVE_INFINITY : module * teeth2 * shrink / 2 / cos2),
        stress.bending(teeth1 / StrictMath.cos(cone1)),
        stress.bending(cos2 == 0 ? Double.POSITIVE_INFINITY : teeth2 / cos2));
  }

  /** δ₁; the atan2 holds past 90 degrees too. */
  static double cone(double ratio, double shaftAngle) {
    return StrictMath.atan2(StrictMath.sin(shaftAngle), ratio + StrictMath.cos(shaftAngle));
  }
}
