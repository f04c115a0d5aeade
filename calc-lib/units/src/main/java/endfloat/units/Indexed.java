package endfloat.units;

import java.util.List;

/**
 * Values with stations: one label an axis for each value. A plain list has no axes.
 *
 * @param axes names of the axes, such as plane and direction
 * @param labels for each value its labels, in the order of the axes
 * @param values in SI, in the order read
 */
public record Indexed(List<String> axes, List<List<String>> labels, double[] values) {

  public static Indexed list(double... values) {
    return new Indexed(List.of(), java.util.Collections.nCopies(values.length, List.of()), values);
  }

  public int size() {
    return values.length;
  }
}
