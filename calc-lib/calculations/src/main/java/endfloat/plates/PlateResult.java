package endfloat.plates;

import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.numerics.Nought;
import endfloat.units.Uncertain;

/**
 * What a loaded plate does.
 *
 * @param deflection at the radius asked for, positive in the direction of the load
 * @param slope there
 * @param radialMoment per length there
 * @param hoopMoment per length there
 * @param stress there, the larger of both bending stresses at a face
 * @param deflectionInner at the inner edge, or at the centre of a plate without a hole
 * @param deflectionOuter at the outer edge
 * @param slopeInner at the inner edge
 * @param slopeOuter at the outer edge
 * @param radialMomentInner per length, at the inner edge or the centre
 * @param hoopMomentInner per length, at the inner edge or the centre
 * @param radialMomentOuter per length, at the outer edge
 * @param hoopMomentOuter per length, at the outer edge
 * @param reactionInner force of the inner support, positive against the load
 * @param reactionOuter force of the outer support, positive against the load
 * @param greatestDeflection of largest magnitude
 * @param greatestDeflectionAt radius where it lies
 * @param greatestStress largest bending stress at either face, 6 M/t²
 * @param deflectionAtRing at the radius of the ring load, or where the pressure begins
 * @param theory whether the thin-plate theory of small deflections holds
 */
public record PlateResult(
    @In("mm") Uncertain deflection,
    @In("mrad") Uncertain slope,
    @In("N.mm/mm") Uncertain radialMoment,
    @In("N.mm/mm") Uncertain hoopMoment,
    @In("MPa") Uncertain stress,
    @In("mm") double deflectionInner,
    @In("mm") double deflectionOuter,
    @In("mrad") double slopeInner,
    @In("mrad") double slopeOuter,
    @In("N.mm/mm") Uncertain radialMomentInner,
    @In("N.mm/mm") Uncertain hoopMomentInner,
    @In("N.mm/mm") double radialMomentOuter,
    @In("N.mm/mm") double hoopMomentOuter,
    @In("N") double reactionInner,
    @In("N") double reactionOuter,
    @In("mm") double greatestDeflection,
    @In("mm") double greatestDeflectionAt,
    @In("MPa") Uncertain greatestStress,
    @In("mm") double deflectionAtRing,
    Theory theory) {

  /** Whether the theory holds for what came out. */
  public enum Theory {
    HOLDS,
    DEFLECTION_ABOVE_HALF_THE_THICKNESS,
    PLATE_THICKER_THAN_A_QUARTER_OF_ITS_WIDTH
  }

  /**
   * A place at the centre where this theory has no moments.
   *
   * @param radius of the place [m]
   * @param why what to tell who asks
   */
  record Beneath(double radius, String why) {
    static final Beneath NOWHERE = new Beneath(-1, "");
    static final Beneath POINT =
        new Beneath(0, "under a force at a point the moment has no end: give loaded_radius");
  }

  /**
   * Surveys a solved plate.
   *
   * @param beneath where the moments are not to be had
   * @param at radius asked for [m]; NaN where none
   */
  static PlateResult of(
      PlateField field,
      PlateField.Plate plate,
      PlateField.Loads loads,
      double thickness,
      Beneath beneath,
      double at) {
    if (!Double.isNaN(at) && (at < plate.inner() || at > plate.outer())) {
      throw new RefusedException("at is a radius on the plate, between its inner and outer edge.");
    }
    PlateField.State inner = field.at(plate.inner());
    PlateField.State outer = field.at(plate.outer());
    PlateField.State there = Double.isNaN(at) ? null : field.at(at);
    PlateSurvey.Greatest deflection =
        PlateSurvey.of(r -> field.at(r).deflection(), plate.inner(), plate.outer());
    double join = loads.at();
    // the moments have a kink or a jump at the join, so each side is looked through by itself
    double moment =
        Math.max(
            greatestMoment(field, plate.inner(), Math.nextDown(join)),
            greatestMoment(field, join, plate.outer()));
    double most = deflection.value();
    double mostSlope = Math.max(Math.abs(most) / plate.outer(), Math.abs(inner.slope()));
    double mostMoment = Math.max(moment, largest(outer));
    double mostForce = 2 * StrictMath.PI * mostMoment;
    double width = plate.inner() > 0 ? plate.outer() - plate.inner() : 2 * plate.outer();
    boolean pointForce = beneath != Beneath.NOWHERE;
    String endless = beneath.why();
    boolean unboundedThere = pointForce && at <= beneath.radius();
    return new PlateResult(
        asked(there == null ? Double.NaN : there.deflection()),
        asked(there == null ? Double.NaN : there.slope()),
        unboundedThere
            ? Uncertain.absent(endless)
            : asked(there == null ? Double.NaN : there.radialMoment()),
        unboundedThere
            ? Uncertain.absent(endless)
            : asked(there == null ? Double.NaN : there.hoopMoment()),
        unboundedThere
            ? Uncertain.absent(endless)
            : asked(there == null ? Double.NaN : largest(there) * 6 / (thickness * thickness)),
        Nought.snapped(inner.deflection(), most),
        Nought.snapped(outer.deflection(), most),
        Nought.snapped(inner.slope(), mostSlope),
        Nought.snapped(outer.slope(), mostSlope),
        pointForce
            ? Uncertain.absent(endless)
            : new Uncertain(Nought.snapped(inner.radialMoment(), mostMoment), 0),
        pointForce
            ? Uncertain.absent(endless)
            : new Uncertain(Nought.snapped(inner.hoopMoment(), mostMoment), 0),
        Nought.snapped(outer.radialMoment(), mostMoment),
        Nought.snapped(outer.hoopMoment(), mostMoment),
        Nought.snapped(
            plate.inner() > 0
                ? 2 * StrictMath.PI * plate.inner() * inner.shear() + loads.innerForce()
                : 0,
            mostForce),
        Nought.snapped(
            loads.outerForce() - 2 * StrictMath.PI * plate.outer() * outer.shear(), mostForce),
        deflection.value(),
        deflection.at(),
        pointForce
            ? Uncertain.absent(endless)
            : new Uncertain(6 * moment / (thickness * thickness), 0),
        field.at(join).deflection(),
        theory(deflection.value(), thickness, width));
  }

  static Theory theory(double deflection, double thickness, double width) {
    if (thickness > width / 4) {
      return Theory.PLATE_THICKER_THAN_A_QUARTER_OF_ITS_WIDTH;
    }
    return Math.abs(deflection) > thickness / 2
        ? Theory.DEFLECTION_ABOVE_HALF_THE_THICKNESS
        : Theory.HOLDS;
  }

  private static double greatestMoment(PlateField field, double from, double to) {
    return from < to ? Math.abs(PlateSurvey.of(r -> largest(field.at(r)), from, to).value()) : 0;
  }

  private static double largest(PlateField.State state) {
    return Math.max(Math.abs(state.radialMoment()), Math.abs(state.hoopMoment()));
  }

  private static Uncertain asked(double value) {
    return Double.isNaN(value)
        ? Uncertain.absent("give at, the radius where it is wanted")
        : new Uncertain(value, 0);
  }
}
