package endfloat.gears;

import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A length that sets where a gear runs in its mesh.
 *
 * @param length at 20 degC
 * @param side housing if its growth takes the gear out of mesh, shaft if it takes the gear into
 *     mesh
 * @param member whose gear it moves: 1 or 2; either for a centre distance
 * @param expansion mean coefficient of linear expansion from 20 degC to its temperature
 * @param temperature when hot
 */
@Part
public record MeshLink(
    @In("mm") @Range("> 0 mm") double length,
    Side side,
    @In("1") @Range("1 .. 2") double member,
    @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansion,
    @In("degC") @Range("-270 degC .. 1500 degC") double temperature) {

  /** Which way its growth counts. */
  public enum Side {
    HOUSING,
    SHAFT
  }

  /** Movement of the gear out of mesh. */
  double movement() {
    return (side == Side.HOUSING ? 1 : -1) * length * expansion * (temperature - 293.15);
  }
}
