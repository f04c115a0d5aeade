package endfloat.child;

import endfloat.quantities.Kinds;
import endfloat.quantities.Measured;
import endfloat.quantities.MeasuredSeries;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;

/** What a clause reads, from JSON values. */
final class ReadValues {
  private ReadValues() {}

  static Object of(Program.Read read) {
    return switch (read.form()) {
      case "quantity" -> measured(read, read.value());
      case "series" -> series(read);
      case "texts" ->
          Program.list(read.value().get("values")).stream().map(String::valueOf).toList();
      case "text" -> String.valueOf(read.value().get("text"));
      case "truth" -> Boolean.TRUE.equals(read.value().get("truth"));
      default -> throw new IllegalArgumentException("no form " + read.form());
    };
  }

  private static MeasuredSeries<?> series(Program.Read read) {
    List<Measured<?>> values = new ArrayList<>();
    for (Object one : Program.list(read.value().get("values"))) {
      values.add(measured(read, (Map<?, ?>) one));
    }
    List<List<String>> labels = new ArrayList<>();
    for (Object one : Program.list(read.value().get("labels"))) {
      labels.add(Program.list(one).stream().map(String::valueOf).toList());
    }
    List<String> axes =
        Program.list(read.value().get("axes")).stream().map(String::valueOf).toList();
    return typed(axes, labels, values);
  }

  /** The kinds are those of the fields, which the compiler has seen; here they are erased. */
  @SuppressWarnings("unchecked")
  private static MeasuredSeries<?> typed(
      List<String> axes, List<List<String>> labels, List<?> values) {
    return new MeasuredSeries<>(axes, labels, (List<Measured<Dimensionless>>) values);
  }

  private static Measured<?> measured(Program.Read read, Map<?, ?> value) {
    Map<String, Double> gradient = new LinkedHashMap<>();
    if (value.get("gradient") instanceof Map<?, ?> parts) {
      parts.forEach(
          (root, part) -> gradient.put(String.valueOf(root), ((Number) part).doubleValue()));
    }
    double si = ((Number) value.get("si")).doubleValue();
    return read.type().isEmpty()
        ? Measured.unnamed(si, String.valueOf(read.value().get("unit")), gradient)
        : Measured.ofKind(si, Kinds.named(read.type()), gradient);
  }

  /** The same with another number at one place; its gradient stays. */
  static Object with(Object value, int element, double si) {
    if (value instanceof Measured<?> one) {
      return one.at(si);
    }
    MeasuredSeries<?> series = (MeasuredSeries<?>) value;
    List<Measured<?>> values = new ArrayList<>(series.values());
    values.set(element, values.get(element).at(si));
    return typed(series.axes(), series.labels(), values);
  }
}
