package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/** How far out of line a coupling runs, from the heights of a shaft's two bearings. */
public final class CouplingMisalignment {
  private CouplingMisalignment() {}

  /**
   * A shaft against the axis it should continue.
   *
   * @param angle between the axes
   * @param angleUp its part in the upright plane, positive when the shaft rises towards the
   *     coupling
   * @param angleSide its part in the level plane, positive when it runs to the right towards it
   * @param offset distance of the axes in the plane of the coupling
   * @param offsetUp its part upwards
   * @param offsetSide its part to the right
   * @param direction of the offset, from right towards up; none where there is no offset
   * @param play how much more or less the angle can be, either way, within the bearings' clearances
   */
  public record Misalignment(
      @In("mrad") double angle,
      @In("mrad") double angleUp,
      @In("mrad") double angleSide,
      @In("mm") double offset,
      @In("mm") double offsetUp,
      @In("mm") double offsetSide,
      @In("deg") Uncertain direction,
      @In("mrad") double play) {}

  /**
   * Angle and offset at a coupling: {@code θ = (h_front − h_rear)/span} in each of two planes,
   * offset {@code h_front + θ a} in the plane of the coupling.
   *
   * <p>Heights are of shaft CENTRES (half diameters removed) above the axis of the other shaft
   * drawn on; the front bearing is the one nearer to the coupling. One plane is not an angle: both
   * are asked for.
   *
   * @param frontHeight height of the centre at the front bearing
   * @param rearHeight height of the centre at the rear bearing
   * @param span between the two bearings
   * @param frontSide centre at the front bearing to the right of the other axis, seen from the rear
   * @param rearSide centre at the rear bearing to the right of it
   * @param overhang a, from the front bearing to the plane of the coupling
   * @param clearanceFront diametral clearance of the front bearing
   * @param clearanceRear diametral clearance of the rear bearing
   * @return angle and offset as vectors, and what the bearings allow besides
   * @throws RefusedException if the angle is past 100 mrad, where it is no small one
   */
  @Calculates(
      source =
          "derived: plane geometry, small angles; play (c_front + c_rear)/(2 span) from each shaft"
              + " end moving half its diametral clearance",
      cautions = {
        "Heights of the housings are not heights of the shaft: take off the half diameters and the"
            + " wear.",
        "A housing that grows or gives way under load changes all of this: measure as near to the"
            + " running state as can be."
      },
      terms = {"coupling", "muff", "spline", "angular misalignment", "parallel offset"})
  public static Misalignment couplingMisalignment(
      @In("mm") double frontHeight,
      @In("mm") double rearHeight,
      @In("mm") @Range("> 0 mm") double span,
      @In("mm") double frontSide,
      @In("mm") double rearSide,
      @In("mm") @Default("0 mm") double overhang,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double clearanceFront,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double clearanceRear) {
    double up = (frontHeight - rearHeight) / span;
    double side = (frontSide - rearSide) / span;
    if (StrictMath.hypot(up, side) > 0.1) {
      throw new RefusedException(
          "an angle past 100 mrad is no small one: are these heights above the other shaft's axis,"
              + " in the unit of the span?");
    }
    double offsetUp = frontHeight + up * overhang;
    double offsetSide = frontSide + side * overhang;
    return new Misalignment(
        StrictMath.hypot(up, side),
        up,
        side,
        StrictMath.hypot(offsetUp, offsetSide),
        offsetUp,
        offsetSide,
        Dowels.directionOf(offsetSide, offsetUp, 0, "the axes meet there: no direction"),
        (clearanceFront + clearanceRear) / (2 * span));
  }
}
