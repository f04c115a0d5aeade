package endfloat.working;

import endfloat.units.Dimension;
import java.util.List;
import java.util.Map;

/** What a value is before it has one. */
public sealed interface Kind {

  /**
   * A number with a dimension; a difference where it is kelvin.
   *
   * @param bare typed as a number and nothing else: no ratio, which would be an angle in radians
   */
  record Quantity(Dimension dimension, boolean bare) implements Kind {
    public Quantity(Dimension dimension) {
      this(dimension, false);
    }
  }

  /** A point on the temperature scale, kelvin inside. */
  record Temperature() implements Kind {}

  /** Yes or no. */
  record Truth() implements Kind {}

  /** A day of the calendar; its value is the text of {@link IsoDate}. */
  record Date() implements Kind {}

  /** A text. */
  record Words() implements Kind {}

  /**
   * Several values of one kind, with stations.
   *
   * @param axes names of the axes; none for a plain list
   * @param labels the labels of every element where they are known (readings), else empty
   */
  record Series(Kind element, List<String> axes, List<List<String>> labels) implements Kind {}

  /** A record of named results. */
  record Fields(Map<String, Kind> fields) implements Kind {}

  /** A part built by its constructor, or a list of such parts. */
  record Parts(String part, boolean list) implements Kind {}
}
