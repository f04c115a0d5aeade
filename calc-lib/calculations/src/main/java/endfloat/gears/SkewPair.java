package endfloat.gears;

import endfloat.contact.ContactEllipse;
import endfloat.contact.HertzContact;
import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/** A pair of skew gears (crossed helical, spiral gears; a worm and its wheel as a limit). */
public final class SkewPair {
  private SkewPair() {}

  /**
   * Gear 1 drives. Forces and efficiency are those at the pitch point.
   *
   * @param ratio z₂/z₁
   * @param shaftAngle Σ, between the shafts
   * @param transverseModule1 m_t1
   * @param transverseModule2 m_t2
   * @param pitchDiameter1 d₁
   * @param pitchDiameter2 d₂
   * @param centreDistance a, standard
   * @param transversePressureAngle1 α_t1
   * @param transversePressureAngle2 α_t2
   * @param contactRatio along the common normal
   * @param leadAngle1 γ₁ = 90° − |β₁|, of a worm
   * @param axialPitch1 p_x1, along the shaft of gear 1; straight teeth have none
   * @param lead1 z₁ p_x1, advance of a worm's thread in one turn
   * @param speed2 of gear 2
   * @param pitchLineSpeed1 v₁
   * @param pitchLineSpeed2 v₂
   * @param slidingSpeed v_s along the teeth, at the pitch point
   * @param normal F_n, normal to the flanks
   * @param tangential1 F_t1
   * @param axial1 F_a1, size
   * @param radial F_r, pushes the shafts apart
   * @param tangential2 F_t2
   * @param axial2 F_a2, size
   * @param efficiency of the mesh, gear 1 driving
   * @param efficiencyReversed gear 2 driving; 0 where it locks
   * @param selfLocking whether gear 2 cannot drive gear 1
   * @param torque2 at gear 2, after the loss
   * @param contactStress greatest Hertz pressure at the pitch point, all the load on one pair
   * @param ellipseMajor half the long axis of the area of contact
   * @param ellipseMinor half its short axis
   */
  public record Skew(
      @In("1") double ratio,
      @In("deg") double shaftAngle,
      @In("mm") double transverseModule1,
      @In("mm") double transverseModule2,
      @In("mm") double pitchDiameter1,
      @In("mm") double pitchDiameter2,
      @In("mm") double centreDistance,
      @In("deg") double transversePressureAngle1,
      @In("deg") double transversePressureAngle2,
      @In("1") double contactRatio,
      @In("deg") double leadAngle1,
      @In("mm") Uncertain axialPitch1,
      @In("mm") Uncertain lead1,
      @In("rpm") double speed2,
      @In("m/s") double pitchLineSpeed1,
      @In("m/s") double pitchLineSpeed2,
      @In("m/s") double slidingSpeed,
      @In("N") double normal,
      @In("N") double tangential1,
      @In("N") double axial1,
      @In("N") double radial,
      @In("N") double tangential2,
      @In("N") double axial2,
      @In("1") double efficiency,
      @In("1") double efficiencyReversed,
      boolean selfLocking,
      @In("N.m") double torque2,
      @In("MPa") Uncertain contactStress,
      @In("mm") Uncertain ellipseMajor,
      @In("mm") Uncertain ellipseMinor) {}

  /**
   * Geometry, sliding, tooth forces, efficiency and self-locking of a pair of skew gears.
   *
   * <p>Helix angles are signed: the same sign is the same hand, the shaft angle {@code Σ = |β₁ +
   * β₂|}. A worm of lead angle γ has the helix angle 90° − γ. Contact is a point; friction acts
   * along the teeth: {@code η = (cos α_n − μ tan β₂)/(cos α_n + μ tan β₁)}.
   *
   * <p>Each flank is straight along its generator and curved across it, {@code ρ = r sin α_t / cos
   * β_b}; the generators cross at {@code cos ω = (cos β₁ cos β₂ − sin β₁ sin β₂ sin² α_n)/(cos β_b1
   * cos β_b2)}, and the pressure is that of Hertz for two such cylinders.
   *
   * @param teeth1 z₁, of the driving gear; starts of a worm
   * @param teeth2 z₂, of the driven gear
   * @param module m_n, normal
   * @param helixAngle1 β₁
   * @param helixAngle2 β₂
   * @param pressureAngle α_n, normal
   * @param torque T₁ at gear 1
   * @param speed n₁ of gear 1
   * @param friction μ along the teeth
   * @param addendum tip height in normal modules
   * @param modulus1 E₁, for the contact stress
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException if the shafts are parallel, gear 1 cannot drive, or the contact ratio
   *     is below 1
   */
  @Calculates(
      source =
          "Elements of Metric Gear Technology, formulas 7-2 to 7-5 (geometry); E. Buckingham,"
              + " Analytical Mechanics of Gears, spiral gears (sliding); Shigley's Mechanical"
              + " Engineering Design, 8th ed., section 13-16 and Eq. (13-46) (forces, efficiency)",
      cautions = {
        "Point contact: these gears carry little, and wear widens the track until it does; the contact"
            + " stress is that of new flanks.",
        "Self-locking from a coefficient of friction is no brake: vibration frees it.",
        SpurPair.NOMINAL
      },
      terms = {"crossed helical", "screw gears", "spiral gears", "worm", "self-locking", "skew"})
  public static Skew skewPair(
      @In("1") @Range("1 .. 1000") double teeth1,
      @In("1") @Range("1 .. 1000") double teeth2,
      @In("mm") @Range("> 0 mm") double module,
      @In("deg") @Range("-89 deg .. 89 deg") double helixAngle1,
      @In("deg") @Range("-89 deg .. 89 deg") double helixAngle2,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("N.m") @Range(">= 0 N.m") @Default("0 N.m") double torque,
      @In("rpm") @Range(">= 0 rpm") @Default("0 rpm") double speed,
      @In("1") @Range("0 .. 0.5") @Default("0") double friction,
      @In("1") @Range("0.5 .. 1.5") @Default("1") double addendum,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    double turned = helixAngle1 + helixAngle2;
    if (Math.abs(turned) < 1e-9) {
      throw new RefusedException("these shafts are parallel; take helical_pair");
    }
    CylindricalMesh.whole("teeth_1", teeth1);
    CylindricalMesh.whole("teeth_2", teeth2);
    SkewMember first = new SkewMember(teeth1, module, helixAngle1, pressureAngle);
    SkewMember second = new SkewMember(teeth2, module, helixAngle2, pressureAngle);
    // friction opposes the sliding of gear 1's teeth, which changes sides with the sign of the turn
    double drag = Math.signum(turned) * friction;
    double forward = efficiency(pressureAngle, drag, helixAngle1, helixAngle2);
    if (!(forward > 0)) {
      throw new RefusedException("with this friction gear 1 cannot drive gear 2: the mesh locks");
    }
    double reversed = efficiency(pressureAngle, drag, helixAngle2, helixAngle1);
    double normal = 2 * torque / (first.pitchDiameter() * first.along(pressureAngle, drag));
    double pitchLine1 = speed * first.pitchDiameter() / 2;
    double pitchLine2 = pitchLine1 * StrictMath.cos(helixAngle1) / StrictMath.cos(helixAngle2);
    ContactEllipse contact =
        torque == 0
            ? null
            : first.contact(
                second,
                pressureAngle,
                normal,
                HertzContact.contactModulus(modulus1, modulus2, poisson1, poisson2));
    double basePitch = StrictMath.PI * module * StrictMath.cos(pressureAngle);
    double contactRatio = (first.reach(addendum) + second.reach(addendum)) / basePitch;
    ContactPath.needNextPair(contactRatio);
    return new Skew(
        teeth2 / teeth1,
        Math.abs(turned),
        first.transverseModule(),
        second.transverseModule(),
        first.pitchDiameter(),
        second.pitchDiameter(),
        (first.pitchDiameter() + second.pitchDiameter()) / 2,
        first.transverseAngle(),
        second.transverseAngle(),
        contactRatio,
        StrictMath.PI / 2 - Math.abs(helixAngle1),
        along(StrictMath.PI * module, helixAngle1),
        along(StrictMath.PI * module * teeth1, helixAngle1),
        speed * teeth1 / teeth2,
        pitchLine1,
        pitchLine2,
        Math.abs(pitchLine1 * StrictMath.sin(turned) / StrictMath.cos(helixAngle2)),
        normal,
        normal * first.along(pressureAngle, drag),
        Math.abs(normal * first.across(pressureAngle, drag)),
        normal * StrictMath.sin(pressureAngle),
        normal * second.along(pressureAngle, -drag),
        Math.abs(normal * second.across(pressureAngle, -drag)),
        forward,
        Math.max(0, reversed),
        !(reversed > 0),
        torque * teeth2 / teeth1 * forward,
        loaded(contact == null ? Double.NaN : contact.pressure()),
        loaded(contact == null ? Double.NaN : contact.major()),
        loaded(contact == null ? Double.NaN : contact.minor()));
  }

  private static Uncertain loaded(double value) {
    return Double.isNaN(value)
        ? Uncertain.absent("without a torque there is no contact stress: give torque")
        : new Uncertain(value, 0);
  }

  private static Uncertain along(double normal, double helix) {
    return helix == 0
        ? Uncertain.absent("straight teeth do not advance along their shaft")
        : new Uncertain(normal / Math.abs(StrictMath.sin(helix)), 0);
  }

  private static double efficiency(
      double pressureAngle, double drag, double helixDriver, double helixDriven) {
    double cos = StrictMath.cos(pressureAngle);
    return (cos - drag * StrictMath.tan(helixDriven)) / (cos + drag * StrictMath.tan(helixDriver));
  }
}
