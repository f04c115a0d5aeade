package endfloat.bench;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * A length in the loop from one thrust face of a shaft to the other.
 *
 * @param length at 20 degC
 * @param side housing if it holds the stops apart, shaft if it fills the room between them
 * @param expansion mean coefficient of linear expansion from 20 degC to its temperature
 * @param temperature when hot
 */
@Part
public record FloatLink(
    @In("mm") @Range("> 0 mm") double length,
    Side side,
    @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") @Default("0 1/K") double expansion,
    @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperature) {

  /** Which way a length counts. */
  public enum Side {
    HOUSING,
    SHAFT
  }

  double signed() {
    return side == Side.HOUSING ? length : -length;
  }

  double growth() {
    return signed() * expansion * (temperature - 293.15);
  }
}
