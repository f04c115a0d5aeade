package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.ValidRange;
import endfloat.engine.Value.PartList;
import endfloat.engine.Value.PartValue;
import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Words;
import endfloat.units.Indexed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Values as a calculation takes them, and where in them each number stands. */
final class Arguments {
  private Arguments() {}

  static Object[] of(Value[] values, List<Parameter> parameters) {
    Object[] arguments = new Object[values.length];
    for (int i = 0; i < arguments.length; i++) {
      arguments[i] = of(values[i], parameters.get(i).form());
    }
    return arguments;
  }

  private static Object of(Value value, Parameter.Form form) {
    return switch (form) {
      case QUANTITY -> value instanceof Scalar s ? s.si() : Double.NaN;
      case LIST -> value instanceof Scalar s ? new double[] {s.si()} : numbers(value);
      case INDEXED -> {
        Series series = (Series) value;
        yield new Indexed(series.axes(), series.labels(), numbers(series));
      }
      case TEXT, CHOICE -> value instanceof Words words ? words.text() : null;
      case PARTS -> parts(value);
    };
  }

  private static double[] numbers(Value value) {
    return value instanceof Series series
        ? series.elements().stream().mapToDouble(e -> ((Scalar) e).si()).toArray()
        : null;
  }

  /** An empty list has no elements that would say whether it lists numbers or parts. */
  private static List<PartValue> partValues(Value value) {
    if (value instanceof Series empty && empty.elements().isEmpty()) {
      return List.of();
    }
    return value instanceof PartValue one ? List.of(one) : ((PartList) value).parts();
  }

  private static List<Object[]> parts(Value value) {
    List<Object[]> parts = new ArrayList<>();
    for (PartValue part : partValues(value)) {
      Object[] components = new Object[part.components().length];
      for (int i = 0; i < components.length; i++) {
        Value component = part.components()[i];
        components[i] =
            component instanceof Scalar s
                ? (Object) s.si()
                : component instanceof Words w ? w.text() : Double.NaN;
      }
      parts.add(components);
    }
    return parts;
  }

  /** Whether any number in them is uncertain. */
  static boolean uncertain(Value[] values) {
    for (Value value : values) {
      if (uncertain(value)) {
        return true;
      }
    }
    return false;
  }

  private static boolean uncertain(Value value) {
    if (value instanceof Series series) {
      return series.elements().stream().anyMatch(Arguments::uncertain);
    }
    return value instanceof Scalar s ? !s.gradient().isEmpty() : !(value instanceof Words);
  }

  /**
   * One number among the arguments.
   *
   * @param argument which
   * @param element of a list, or which part; 0 for a quantity
   * @param component of the part
   */
  record Place(
      int argument,
      int element,
      int component,
      Parameter.Form form,
      Scalar value,
      Optional<ValidRange> range) {

    /** Whether it is one of several values of a kind, of which a calculation may pick. */
    boolean amongMany() {
      return form == Parameter.Form.LIST || form == Parameter.Form.INDEXED;
    }

    /** The arguments with another number here. */
    Object[] with(Object[] arguments, double x) {
      Object[] changed = arguments.clone();
      switch (form) {
        case QUANTITY -> changed[argument] = x;
        case LIST -> {
          double[] list = ((double[]) arguments[argument]).clone();
          list[element] = x;
          changed[argument] = list;
        }
        case INDEXED -> {
          Indexed indexed = (Indexed) arguments[argument];
          double[] list = indexed.values().clone();
          list[element] = x;
          changed[argument] = new Indexed(indexed.axes(), indexed.labels(), list);
        }
        case PARTS -> {
          @SuppressWarnings("unchecked")
          List<Object[]> parts = new ArrayList<>((List<Object[]>) arguments[argument]);
          Object[] components = parts.get(element).clone();
          components[component] = x;
          parts.set(element, components);
          changed[argument] = parts;
        }
        default -> throw new IllegalStateException(form + " holds no number");
      }
      return changed;
    }
  }

  /** The places of all numbers among the arguments of a calculation that are uncertain. */
  static List<Place> uncertainPlaces(Value[] values, Calculation calculation) {
    List<Place> uncertain = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      for (Place place : places(values[i], calculation.parameters().get(i), i)) {
        if (!place.value().gradient().isEmpty()) {
          uncertain.add(place);
        }
      }
    }
    return uncertain;
  }

  static List<Place> places(Value value, Parameter parameter, int argument) {
    List<Place> places = new ArrayList<>();
    Parameter.Form form = parameter.form();
    switch (form) {
      case QUANTITY -> {
        if (value instanceof Scalar s) {
          places.add(new Place(argument, 0, 0, form, s, parameter.range()));
        }
      }
      case LIST, INDEXED -> {
        List<Value> elements =
            value instanceof Series series
                ? series.elements()
                : value instanceof Scalar ? List.of(value) : List.of();
        for (int i = 0; i < elements.size(); i++) {
          Scalar s = (Scalar) elements.get(i);
          places.add(new Place(argument, i, 0, form, s, parameter.range()));
        }
      }
      case PARTS -> {
        List<PartValue> parts = partValues(value);
        for (int i = 0; i < parts.size(); i++) {
          for (int j = 0; j < parts.get(i).components().length; j++) {
            if (parts.get(i).components()[j] instanceof Scalar s) {
              int component = j;
              Optional<ValidRange> range =
                  parameter.part().flatMap(p -> p.components().get(component).range());
              places.add(new Place(argument, i, j, form, s, range));
            }
          }
        }
      }
      default -> {
        // Texts hold no numbers.
      }
    }
    return places;
  }
}
