package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.units.Uncertain;

/** How a pair of skew gears shares its wear. */
public final class SkewWear {
  private SkewWear() {}

  /**
   * Shares of the wear.
   *
   * @param share1 of gear 1 in the wear of both
   * @param share2 of gear 2
   * @param depth1 wear normal to the flank of gear 1 in the time given; none without load, sliding,
   *     speed and time
   * @param depth2 of gear 2
   * @param lashGrowth growth of normal backlash, one flank each
   */
  public record Shares(
      @In("1") double share1,
      @In("1") double share2,
      @In("um") Uncertain depth1,
      @In("um") Uncertain depth2,
      @In("um") Uncertain lashGrowth) {}

  /**
   * Share of each gear of a skew pair in their wear, and the growth of backlash: {@code h_i = k_i W
   * s n_i t / A_i}.
   *
   * <p>Both flanks slide the same distance s in one engagement under the same normal load W; a
   * tooth of gear i engages once a turn of its gear. The track on each flank, length by width,
   * spreads the wear.
   *
   * @param wearRate1 k₁, specific wear rate of gear 1, volume by load and sliding distance
   * @param wearRate2 k₂
   * @param teeth1 z₁
   * @param teeth2 z₂
   * @param track1 A₁, area of the contact track on one flank of gear 1
   * @param track2 A₂
   * @param normalLoad W, on the tooth
   * @param sliding s, sliding distance of one engagement
   * @param speed of gear 1
   * @param time t, running
   */
  @Calculates(
      source = "J. F. Archard, Contact and rubbing of flat surfaces, J. Applied Physics 24 (1953)",
      cautions = {
        "Comparative only, unless both rates come from measured wear of these members.",
        "Not linear once the track widens."
      },
      terms = {"wear", "crossed helical", "spiral gears", "Archard", "lash growth"})
  public static Shares skewWearShare(
      @In("mm^3/(N.m)") @Range("> 0 mm^3/(N.m)") double wearRate1,
      @In("mm^3/(N.m)") @Range("> 0 mm^3/(N.m)") double wearRate2,
      @In("1") @Range("1 .. 1000") double teeth1,
      @In("1") @Range("1 .. 1000") double teeth2,
      @In("mm^2") @Range("> 0 mm^2") double track1,
      @In("mm^2") @Range("> 0 mm^2") double track2,
      @In("N") @Range(">= 0 N") @Default(Default.NOT_GIVEN) double normalLoad,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double sliding,
      @In("rpm") @Range(">= 0 rpm") @Default(Default.NOT_GIVEN) double speed,
      @In("h") @Range(">= 0 h") @Default(Default.NOT_GIVEN) double time) {
    CylindricalMesh.whole("teeth_1", teeth1);
    CylindricalMesh.whole("teeth_2", teeth2);
    // engagements of one tooth: turns of its own gear
    double turns1 = speed / (2 * StrictMath.PI) * time;
    double turns2 = turns1 * teeth1 / teeth2;
    double relative1 = wearRate1 / track1;
    double relative2 = wearRate2 / track2 * teeth1 / teeth2;
    double depth1 = wearRate1 * normalLoad * sliding * turns1 / track1;
    double depth2 = wearRate2 * normalLoad * sliding * turns2 / track2;
    return new Shares(
        relative1 / (relative1 + relative2),
        relative2 / (relative1 + relative2),
        worn(depth1),
        worn(depth2),
        worn(depth1 + depth2));
  }

  private static Uncertain worn(double depth) {
    return Double.isNaN(depth)
        ? Uncertain.absent(
            "a depth needs normal_load, sliding, speed and time; only the shares do not")
        : new Uncertain(depth, 0);
  }
}
