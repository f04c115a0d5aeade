package endfloat.gears;

import endfloat.contact.HertzContact;
import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Contact and bending stress of a spur pair by ISO 6336. */
public final class ToothStressIso {
  private ToothStressIso() {}

  /** Where on the tooth the load acts for bending. */
  public enum LoadAt {
    /** Outer end of single contact, method B. */
    SINGLE_CONTACT,
    /** Tip, for teeth that do not share the load. */
    TIP
  }

  /**
   * Stresses with all the factors given, and what they are made of.
   *
   * @param contact σ_H at the inner end of single contact of either gear or at the pitch point,
   *     where it is highest
   * @param contactNominal σ_H0 at the pitch point, no load factors
   * @param bending1 σ_F at the root of gear 1
   * @param bending2 σ_F at the root of gear 2
   * @param tangential F_t on the reference circle
   * @param contactRatio ε_α
   * @param zoneFactor Z_H
   * @param elasticityFactor Z_E² of the pair, as a stress
   * @param contactRatioFactor Z_ε
   * @param singleContactFactor Z_B of gear 1 or Z_D of gear 2, the greater
   * @param formFactor1 Y_F of gear 1
   * @param formFactor2 Y_F of gear 2
   * @param stressCorrection1 Y_S of gear 1
   * @param stressCorrection2 Y_S of gear 2
   */
  public record Iso(
      @In("MPa") double contact,
      @In("MPa") double contactNominal,
      @In("MPa") double bending1,
      @In("MPa") double bending2,
      @In("N") double tangential,
      @In("1") double contactRatio,
      @In("1") double zoneFactor,
      @In("MPa") double elasticityFactor,
      @In("1") double contactRatioFactor,
      @In("1") double singleContactFactor,
      @In("1") double formFactor1,
      @In("1") double formFactor2,
      @In("1") double stressCorrection1,
      @In("1") double stressCorrection2) {}

  /**
   * Contact and root stress of an external spur pair by ISO 6336, simplified: its geometry factors
   * by method B from the teeth, its load factors as they are given.
   *
   * <p>{@code σ_H = Z_B Z_H Z_E Z_ε √(F_t (u+1)/(d₁ b u)) √(K_A K_v K_Hβ K_Hα)}, {@code σ_F =
   * F_t/(b m) Y_F Y_S K_A K_v K_Fβ K_Fα}. The load factors of both stresses are taken alike. They
   * are 1 unless given: then these are the nominal stresses of the standard.
   *
   * @param teeth1 z₁, of the pinion
   * @param teeth2 z₂
   * @param module m
   * @param faceWidth b, common
   * @param torque T₁ at gear 1
   * @param pressureAngle α of the rack
   * @param shift1 x₁
   * @param shift2 x₂
   * @param centreDistance a_w; not given: without backlash
   * @param addendum tip height in modules
   * @param dedendum h_fP of the rack in modules
   * @param rootRadius ρ_fP of the rack in modules
   * @param loadAt outer end of single contact (method B) or tip
   * @param applicationFactor K_A
   * @param dynamicFactor K_v
   * @param faceLoadFactor K_Hβ = K_Fβ
   * @param transverseLoadFactor K_Hα = K_Fα
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException with a transverse contact ratio of 2 or more, or a form outside the
   *     standard
   */
  @Calculates(
      source =
          "ISO 6336-2:2006, clauses 6 and 7 (Z_H, Z_B, Z_D, Z_E, Z_ε) and ISO 6336-3:2006, clauses 6 and 7"
              + " (Y_F, Y_S), from memory",
      cautions = {
        "No rating: permissible stresses, lives and the load factors are not worked out here; K factors"
            + " of 1 are too low for any real drive.",
        "External spur teeth on solid blanks; a thin rim (below 1.2 tooth heights) bends otherwise."
      },
      terms = {"ISO 6336", "rating", "pitting", "tooth strength", "root stress", "DIN 3990"})
  public static Iso toothStressIso(
      @In("1") @Range("10 .. 500") double teeth1,
      @In("1") @Range("10 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("mm") @Range("> 0 mm") double faceWidth,
      @In("N.m") @Range("> 0 N.m") double torque,
      @In("deg") @Range("14 deg .. 28 deg") @Default("20 deg") double pressureAngle,
      @In("1") @Range("-1 .. 1.5") @Default("0") double shift1,
      @In("1") @Range("-1 .. 1.5") @Default("0") double shift2,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double centreDistance,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum,
      @In("1") @Range("0.8 .. 1.7") @Default("1.25") double dedendum,
      @In("1") @Range("0.1 .. 0.5") @Default("0.38") double rootRadius,
      @Default("\"single contact\"") LoadAt loadAt,
      @In("1") @Range("1 .. 5") @Default("1") double applicationFactor,
      @In("1") @Range("1 .. 5") @Default("1") double dynamicFactor,
      @In("1") @Range("1 .. 5") @Default("1") double faceLoadFactor,
      @In("1") @Range("1 .. 5") @Default("1") double transverseLoadFactor,
      @In("GPa") @Range("> 0 GPa") @Default("206 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("206 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson2) {
    CylindricalMesh mesh =
        new CylindricalMesh(
            new CylindricalMesh.Wheel(teeth1, shift1, addendum),
            new CylindricalMesh.Wheel(teeth2, shift2, addendum),
            module,
            pressureAngle,
            0,
            centreDistance,
            TipHeight.FULL);
    double contactRatio = mesh.path.ratio();
    if (!(contactRatio >= 1 && contactRatio < 2)) {
      throw new RefusedException(
          "the contact ratio is outside 1 to 2, where this simplified form of the standard holds");
    }
    double tangential = 2 * torque / mesh.pitch1;
    double ratio = mesh.ratio();
    double cos = StrictMath.cos(pressureAngle);
    double zone =
        Math.sqrt(
            2
                * StrictMath.cos(mesh.workingAngle)
                / (cos * cos * StrictMath.sin(mesh.workingAngle)));
    double elasticity =
        HertzContact.contactModulus(modulus1, modulus2, poisson1, poisson2) / StrictMath.PI;
    double sharing = Math.sqrt((4 - contactRatio) / 3);
    double single = singleContact(mesh, contactRatio);
    double nominal =
        zone
            * sharing
            * Math.sqrt(elasticity * tangential * (ratio + 1) / (mesh.pitch1 * faceWidth * ratio));
    double load = applicationFactor * dynamicFactor * faceLoadFactor * transverseLoadFactor;
    double loadPlace = loadAt == LoadAt.TIP ? 1 : contactRatio;
    RootForm root1 =
        RootForm.of(teeth1, shift1, pressureAngle, addendum, dedendum, rootRadius, loadPlace);
    RootForm root2 =
        RootForm.of(teeth2, shift2, pressureAngle, addendum, dedendum, rootRadius, loadPlace);
    double width = tangential / (faceWidth * module) * load;
    return new Iso(
        single * nominal * Math.sqrt(load),
        nominal,
        width * root1.formFactor() * root1.stressCorrection(),
        width * root2.formFactor() * root2.stressCorrection(),
        tangential,
        contactRatio,
        zone,
        elasticity,
        sharing,
        single,
        root1.formFactor(),
        root2.formFactor(),
        root1.stressCorrection(),
        root2.stressCorrection());
  }

  /**
   * Z_B or Z_D: curvature at the inner end of single contact of the one gear or the other against
   * that at the pitch point. The pinion's is the sharper; which gear that is need not be known.
   */
  private static double singleContact(CylindricalMesh mesh, double contactRatio) {
    double turn1 = 2 * StrictMath.PI / mesh.teeth1;
    double turn2 = 2 * StrictMath.PI / mesh.teeth2;
    double tip1 = Math.sqrt(square(mesh.tip1 / mesh.base1) - 1);
    double tip2 = Math.sqrt(square(mesh.tip2 / mesh.base2) - 1);
    double shared = contactRatio - 1;
    double inner1 = (tip1 - turn1) * (tip2 - shared * turn2);
    double inner2 = (tip2 - turn2) * (tip1 - shared * turn1);
    double sharper = Math.min(inner1, inner2);
    if (!(sharper > 0)) {
      throw new RefusedException(
          "single contact begins below a base circle, where there is no involute: the tips interfere");
    }
    return Math.max(1, StrictMath.tan(mesh.workingAngle) / Math.sqrt(sharper));
  }

  private static double square(double x) {
    return x * x;
  }
}
