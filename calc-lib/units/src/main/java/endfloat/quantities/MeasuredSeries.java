package endfloat.quantities;

import java.util.Iterator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.measure.Quantity;

/**
 * Readings by station, or a plain list.
 *
 * @param axes names of the indices, such as {@code tooth}; none for a plain list
 * @param labels for each value one label an index, as typed
 * @param values in the order of the record
 */
public record MeasuredSeries<Q extends Quantity<Q>>(
    List<String> axes, List<List<String>> labels, List<Measured<Q>> values)
    implements Iterable<Measured<Q>> {

  public MeasuredSeries {
    axes = List.copyOf(axes);
    labels = List.copyOf(labels);
    values = List.copyOf(values);
    if (!axes.isEmpty() && labels.size() != values.size()) {
      throw new IllegalArgumentException(
          labels.size() + " stations do not fit " + values.size() + " values");
    }
  }

  public static <Q extends Quantity<Q>> MeasuredSeries<Q> list(List<Measured<Q>> values) {
    return new MeasuredSeries<>(List.of(), List.of(), values);
  }

  public int size() {
    return values.size();
  }

  public Measured<Q> get(int at) {
    return values.get(at);
  }

  /**
   * The label of one value.
   *
   * @throws IllegalArgumentException if there is no such index
   */
  public String label(int at, String axis) {
    int place = axes.indexOf(axis);
    if (place < 0) {
      throw new IllegalArgumentException("there is no index " + axis + "; there are " + axes);
    }
    return labels.get(at).get(place);
  }

  /** All numbers in a unit. */
  public double[] in(String unit) {
    return values.stream().mapToDouble(v -> v.in(unit)).toArray();
  }

  public DoubleStream stream(String unit) {
    return DoubleStream.of(in(unit));
  }

  public Stream<Measured<Q>> stream() {
    return StreamSupport.stream(spliterator(), false);
  }

  @Override
  public Iterator<Measured<Q>> iterator() {
    return values.iterator();
  }
}
