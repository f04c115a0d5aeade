package endfloat.bench;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/**
 * A length in the loop from one thrust face of a shaft to the other.
 *
 * @param length at 20 degC
 * @param side housing if it holds the stops apart, shaft if it fills the room between them
 * @param expansion mean coefficient of linear expansion from 20 degC to its temperature
 * @param temperature when hot; a link with neither stays as it is at 20 degC
 */
@Part
public record FloatLink(
    @In("mm") @Range("> 0 mm") double length,
    Side side,
    @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") @Default(Default.NOT_GIVEN) double expansion,
    @In("degC") @Range("-270 degC .. 1500 degC") @Default(Default.NOT_GIVEN) double temperature) {

  /** Which way a length counts. */
  public enum Side {
    HOUSING,
    SHAFT
  }

  double signed() {
    return side == Side.HOUSING ? length : -length;
  }

  /** One without the other would be a hot part that does not grow. */
  double growth() {
    if (Double.isNaN(expansion) && Double.isNaN(temperature)) {
      return 0;
    }
    if (Double.isNaN(expansion)) {
      throw new RefusedException(
          "a link has a temperature but no expansion, so its growth is not known: give both");
    }
    if (Double.isNaN(temperature)) {
      throw new RefusedException(
          "a link has an expansion but no temperature, so its growth is not known: give both");
    }
    return signed() * expansion * (temperature - 293.15);
  }
}
