package endfloat.gears;

import endfloat.contact.HertzContact;
import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Nominal stresses of gear teeth. */
public final class ToothStress {
  private ToothStress() {}

  /**
   * Contact at the pitch point.
   *
   * @param pressure p_max, greatest Hertz pressure
   * @param halfWidth b of the contact strip
   * @param normalForce F_n
   * @param radius1 of curvature of flank 1
   * @param radius2 of flank 2
   */
  public record Contact(
      @In("MPa") double pressure,
      @In("mm") double halfWidth,
      @In("N") double normalForce,
      @In("mm") double radius1,
      @In("mm") double radius2) {}

  /**
   * Hertz pressure of a spur pair at the pitch point: {@code p = 2 F_n / (π b l)}.
   *
   * <p>Two cylinders of the flanks' radii {@code r sin α} along the face, all the load on one pair
   * of teeth.
   *
   * @param tangential F_t on the working pitch circle
   * @param faceWidth l, in contact
   * @param pitchDiameter1 d_w1, working
   * @param pitchDiameter2 d_w2, working
   * @param pressureAngle α_w, working
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   */
  @Calculates(
      source =
          "K. L. Johnson, Contact Mechanics, 1985, chapter 4; Shigley's Mechanical Engineering"
              + " Design, 9th ed., Eqs. (3-73), (3-74)",
      cautions = {
        "Nominal: no factor for application, dynamics or uneven load along the face; a rating needs"
            + " ISO 6336-2 or AGMA 2001.",
        "At the pitch point with one pair in contact; below it on small pinions it is higher."
      },
      terms = {"Hertz", "pitting", "surface durability", "contact stress"})
  public static Contact toothContactStress(
      @In("N") @Range("> 0 N") double tangential,
      @In("mm") @Range("> 0 mm") double faceWidth,
      @In("mm") @Range("> 0 mm") double pitchDiameter1,
      @In("mm") @Range("> 0 mm") double pitchDiameter2,
      @In("deg") @Range("10 deg .. 40 deg") @Default("20 deg") double pressureAngle,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    double sin = StrictMath.sin(pressureAngle);
    double radius1 = pitchDiameter1 / 2 * sin;
    double radius2 = pitchDiameter2 / 2 * sin;
    double radius = radius1 * radius2 / (radius1 + radius2);
    double modulus = HertzContact.contactModulus(modulus1, modulus2, poisson1, poisson2);
    double normal = tangential / StrictMath.cos(pressureAngle);
    double half = Math.sqrt(4 * normal * radius / (StrictMath.PI * faceWidth * modulus));
    return new Contact(
        2 * normal / (StrictMath.PI * half * faceWidth), half, normal, radius1, radius2);
  }

  /**
   * Lewis stress.
   *
   * @param stress σ at the root
   * @param formFactor Y of Lewis
   * @param velocityFactor K_v of Barth
   */
  public record Bending(
      @In("MPa") double stress, @In("1") double formFactor, @In("1") double velocityFactor) {}

  /** How the teeth were made, for the velocity factor. */
  public enum Finish {
    NONE,
    CAST,
    CUT,
    HOBBED,
    GROUND
  }

  /**
   * Bending stress at the root of a spur tooth by Lewis: {@code σ = K_v F_t / (b m Y)}.
   *
   * <p>Full-depth teeth of 20°, the load at the tip of one tooth. The velocity factor is Barth's,
   * by the way the teeth were made.
   *
   * @param tangential F_t on the pitch circle
   * @param faceWidth b
   * @param module m
   * @param teeth z of the gear whose tooth it is
   * @param pitchLineSpeed v, for the velocity factor
   * @param finish cast, cut, hobbed or ground; none leaves the velocity factor at 1
   */
  @Calculates(
      source =
          "Lewis; form factors of Shigley's Mechanical Engineering Design, Table 14-2, velocity factors"
              + " of Eqs. (14-4) to (14-6)",
      cautions = {
        "Lewis, not ISO 6336-3 nor AGMA 2001: no stress concentration at the fillet, no load sharing."
            + " It compares teeth; it does not rate them.",
        "For full-depth teeth of 20 deg without profile shift."
      },
      terms = {"Lewis", "tooth strength", "root stress", "Barth"})
  public static Bending toothBendingStress(
      @In("N") @Range(">= 0 N") double tangential,
      @In("mm") @Range("> 0 mm") double faceWidth,
      @In("mm") @Range("> 0 mm") double module,
      @In("1") @Range(">= 12") double teeth,
      @In("m/s") @Range("0 m/s .. 50 m/s") @Default("0 m/s") double pitchLineSpeed,
      @Default("\"none\"") Finish finish) {
    CylindricalMesh.whole("teeth", teeth);
    if (pitchLineSpeed > 0 && finish == Finish.NONE) {
      throw new RefusedException(
          "with a speed say how the teeth were made: cast, cut, hobbed or ground");
    }
    double form = LewisForm.factor(teeth);
    double velocity = velocityFactor(pitchLineSpeed, finish);
    return new Bending(velocity * tangential / (faceWidth * module * form), form, velocity);
  }

  /** Speed in m/s; the constants are the metric ones of the source. */
  private static double velocityFactor(double speed, Finish finish) {
    return switch (finish) {
      case NONE -> 1;
      case CAST -> (3.05 + speed) / 3.05;
      case CUT -> (6.1 + speed) / 6.1;
      case HOBBED -> (3.56 + Math.sqrt(speed)) / 3.56;
      case GROUND -> Math.sqrt((5.56 + Math.sqrt(speed)) / 5.56);
    };
  }
}
