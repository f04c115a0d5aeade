package endfloat.shafts;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * Forces and couples on a shaft at one place, such as those of a gear: {@code shaft_load(at: 20 mm,
 * force: 2400 N, side: 874 N)} for a tangential and a radial force.
 *
 * @param at from the left end of the shaft
 * @param force across the shaft; deflection counts positive in its direction
 * @param couple in the plane of the force, positive where it turns the shaft end-up towards the
 *     force (raises the slope); an axial force on a gear is a couple, force times radius
 * @param side force a quarter turn on from the force
 * @param coupleSide couple in the plane of the side force, likewise
 * @param direction by which all of this load is turned round the shaft, from the force towards the
 *     side; 0 for a shaft whose loads lie in the two planes
 */
@Part(name = "shaft_load")
public record ShaftLoad(
    @In("mm") @Range(">= 0 mm") double at,
    @In("N") @Default("0 N") double force,
    @In("N.m") @Default("0 N.m") double couple,
    @In("N") @Default("0 N") double side,
    @In("N.m") @Default("0 N.m") double coupleSide,
    @In("deg") @Default("0 deg") double direction) {

  double force(ShaftPlane plane) {
    return turned(plane, force, side);
  }

  double couple(ShaftPlane plane) {
    return turned(plane, couple, coupleSide);
  }

  private double turned(ShaftPlane plane, double first, double second) {
    if (direction == 0) {
      return plane == ShaftPlane.FORCE ? first : second;
    }
    double cos = StrictMath.cos(direction);
    double sin = StrictMath.sin(direction);
    return plane == ShaftPlane.FORCE ? first * cos - second * sin : first * sin + second * cos;
  }
}
