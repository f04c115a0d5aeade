package endfloat.child;

import endfloat.quantities.Kinds;
import endfloat.quantities.Measured;
import endfloat.quantities.MeasuredSeries;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;

/** What a clause reads, from JSON values; a record of results is a map of its fields. */
final class ReadValues {
  private ReadValues() {}

  static Object of(Program.Read read) {
    return switch (read.form()) {
      // a result that is absent, such as the strength of a material nobody vouches for
      case "quantity" -> read.value().get("si") == null ? null : measured(read, read.value());
      case "record" -> record(read.fields());
      case "series" -> series(read);
      case "texts" ->
          Program.list(read.value().get("values")).stream().map(String::valueOf).toList();
      case "text" -> String.valueOf(read.value().get("text"));
      case "truth" -> Boolean.TRUE.equals(read.value().get("truth"));
      default -> throw new IllegalArgumentException("no form " + read.form());
    };
  }

  private static Map<String, Object> record(List<Program.Read> fields) {
    Map<String, Object> record = new LinkedHashMap<>();
    fields.forEach(field -> record.put(field.java(), of(field)));
    return record;
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
    if (value instanceof Map<?, ?> record) {
      return with(record, element, si);
    }
    MeasuredSeries<?> series = (MeasuredSeries<?>) value;
    List<Measured<?>> values = new ArrayList<>(series.values());
    values.set(element, values.get(element).at(si));
    return typed(series.axes(), series.labels(), values);
  }

  private static Map<String, Object> with(Map<?, ?> record, int element, double si) {
    Map<String, Object> changed = new LinkedHashMap<>();
    int left = element;
    for (Map.Entry<?, ?> field : record.entrySet()) {
      int count = numbers(field.getValue());
      boolean isIt = left >= 0 && left < count;
      Object value = isIt ? with(field.getValue(), left, si) : field.getValue();
      changed.put(String.valueOf(field.getKey()), value);
      left -= count;
    }
    return changed;
  }

  private static int numbers(Object value) {
    if (value instanceof Map<?, ?> record) {
      return record.values().stream().mapToInt(ReadValues::numbers).sum();
    }
    return value instanceof Measured<?> ? 1 : value instanceof MeasuredSeries<?> s ? s.size() : 0;
  }
}
