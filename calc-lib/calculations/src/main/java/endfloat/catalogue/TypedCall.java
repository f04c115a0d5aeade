package endfloat.catalogue;

import endfloat.definition.OwnUncertainty;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.quantities.Kinds;
import endfloat.quantities.Measured;
import endfloat.quantities.MeasuredSeries;
import endfloat.units.Dimension;
import endfloat.units.Indexed;
import endfloat.units.Uncertain;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One call of a calculation with typed quantities: what the generated methods of {@code
 * endfloat.formulas} rest on. Uncertainty is carried through every uncertain argument, by
 * differences extrapolated once (error of fourth order in a step of a hundredth).
 */
public final class TypedCall {
  private static final double STEP = 0.01;

  private final Calculation calculation;
  private final Object[] arguments;
  private final Object[] results;
  private final Map<String, double[]> gradients = new TreeMap<>();
  private final Map<String, Measured<?>> variables = new TreeMap<>();
  private final List<Uncertainty> uncertain = new ArrayList<>();

  /** A part with typed components. */
  public interface Part {
    /** In the order of the part. */
    Object[] components();
  }

  /** An uncertain number among the arguments, and how to put another in its place. */
  private record Uncertainty(Measured<?> value, java.util.function.DoubleFunction<Object[]> with) {}

  private TypedCall(Calculation calculation, Object[] given) {
    this.calculation = calculation;
    this.arguments = new Object[given.length];
    for (int i = 0; i < given.length; i++) {
      arguments[i] = argument(calculation.parameters().get(i), given[i], i);
    }
    this.results = calculation.call(arguments.clone(), Progress.IGNORED);
    double[] here = numbers(results);
    uncertain.forEach(one -> carry(one, here));
    calculation.scatter().ifPresent(this::scatter);
  }

  /**
   * Calls a calculation.
   *
   * @param given in the order of its parameters; null for the usual value
   * @throws endfloat.definition.OutOfRangeException if an argument is outside its range
   * @throws RefusedException if the calculation says no
   */
  public static TypedCall of(String name, Object... given) {
    Calculation calculation = Catalogue.library().find(name).orElseThrow();
    return new TypedCall(calculation, given);
  }

  /** A result, in the order of the calculation; null where it has none. */
  @SuppressWarnings("unchecked") // the types are those of the generated method
  public <T> T get(int at) {
    int first = numbers(Arrays.copyOf(results, at)).length;
    Result declared = calculation.results().get(at);
    Object result = results[at];
    if (result instanceof double[] list) {
      List<Measured<?>> all = new ArrayList<>();
      for (int i = 0; i < list.length; i++) {
        all.add(measured(declared, list[i], first + i, Map.of()));
      }
      return (T) all;
    }
    if (result instanceof Uncertain number) {
      return number.isAbsent()
          ? null
          : (T)
              measured(
                  declared,
                  number.value(),
                  first,
                  Map.of(library(declared), number.standardUncertainty()));
    }
    return result instanceof Double number
        ? (T) measured(declared, number, first, Map.of())
        : (T) result;
  }

  /** What the scatter of the data leaves; the same data leave the same wherever they are given. */
  private void scatter(Calculation.OfData ofData) {
    double[][] parts = ofData.at(arguments.clone()).parts();
    String source = "scatter:" + calculation.name() + ":" + Arrays.deepHashCode(arguments) + ":";
    for (int root = 0; root < parts[0].length; root++) {
      double[] column = new double[parts.length];
      for (int i = 0; i < column.length; i++) {
        column[i] = parts[i][root];
      }
      gradients.put(source + root, column);
    }
  }

  /** One source a property: the same material has the same error wherever it is named. */
  private String library(Result declared) {
    StringBuilder words = new StringBuilder();
    for (Object argument : arguments) {
      if (argument instanceof String text) {
        words.append(words.length() == 0 ? "" : ", ").append(text);
      }
    }
    return "library:" + calculation.name() + ":" + words + ":" + declared.name();
  }

  private Measured<?> measured(Result declared, double si, int number, Map<String, Double> own) {
    Map<String, Double> gradient = new TreeMap<>(own);
    gradients.forEach((source, parts) -> gradient.put(source, parts[number]));
    gradient.values().removeIf(part -> part == 0);
    Measured<?> like = variables.get(declared.unit());
    if (like != null) {
      return like.at(si, gradient);
    }
    if (declared.unit().startsWith("<")) {
      return Measured.unnamed(
          si, UnitTable.coherent(dimension(declared.unit())).symbol(), gradient);
    }
    Unit unit = UnitTable.find(declared.unit());
    return unit.isTemperaturePoint()
        ? Measured.ofKind(si, javax.measure.quantity.Temperature.class, gradient)
        : Kinds.of(unit.dimension())
            .<Measured<?>>map(kind -> Measured.ofKind(si, kind, gradient))
            .orElseGet(() -> Measured.unnamed(si, declared.unit(), gradient));
  }

  /** Of a quotient or a difference of two unit variables. */
  private Dimension dimension(String unit) {
    int sign = Math.max(unit.indexOf("/<"), unit.indexOf("-<"));
    Dimension first = variables.get(unit.substring(0, sign)).dimension();
    return unit.charAt(sign) == '-'
        ? first
        : first.over(variables.get(unit.substring(sign + 1)).dimension());
  }

  private Object argument(Parameter parameter, Object given, int at) {
    if (given == null) {
      return usual(parameter);
    }
    return switch (parameter.form()) {
      case QUANTITY -> quantity(parameter, (Measured<?>) given, x -> changed(at, x));
      case LIST -> list(parameter, (List<?>) given, at);
      case INDEXED -> indexed(parameter, (MeasuredSeries<?>) given, at);
      case TEXT -> given;
      case CHOICE -> Arguments.word((Enum<?>) given);
      case PARTS -> parts(parameter, (List<?>) given, at);
    };
  }

  private double quantity(
      Parameter parameter, Measured<?> value, java.util.function.DoubleFunction<Object[]> with) {
    if (parameter.unit().startsWith("<")) {
      variables.putIfAbsent(parameter.unit(), value);
    }
    if (!value.gradient().isEmpty()) {
      uncertain.add(new Uncertainty(value, with));
    }
    return value.si();
  }

  private Object[] changed(int at, Object other) {
    Object[] changed = arguments.clone();
    changed[at] = other;
    return changed;
  }

  private double[] list(Parameter parameter, List<?> given, int at) {
    double[] list = new double[given.size()];
    for (int i = 0; i < list.length; i++) {
      int element = i;
      list[i] =
          quantity(
              parameter,
              (Measured<?>) given.get(i),
              x -> changed(at, with((double[]) arguments[at], element, x)));
    }
    return list;
  }

  private Indexed indexed(Parameter parameter, MeasuredSeries<?> given, int at) {
    double[] list = new double[given.size()];
    for (int i = 0; i < list.length; i++) {
      int element = i;
      list[i] =
          quantity(
              parameter,
              given.get(i),
              x -> {
                Indexed now = (Indexed) arguments[at];
                return changed(
                    at, new Indexed(now.axes(), now.labels(), with(now.values(), element, x)));
              });
    }
    return given.axes().isEmpty()
        ? Indexed.list(list)
        : new Indexed(given.axes(), given.labels(), list);
  }

  private List<Object[]> parts(Parameter parameter, List<?> given, int at) {
    List<Parameter> components = parameter.part().orElseThrow().components();
    List<Object[]> parts = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      Object[] typed = ((Part) given.get(i)).components();
      Object[] plain = new Object[typed.length];
      for (int j = 0; j < typed.length; j++) {
        int part = i;
        int component = j;
        plain[j] =
            typed[j] instanceof Measured<?> value
                ? quantity(components.get(j), value, x -> withComponent(at, part, component, x))
                : argument(components.get(j), typed[j], at);
      }
      parts.add(plain);
    }
    return parts;
  }

  @SuppressWarnings("unchecked")
  private Object[] withComponent(int at, int part, int component, double x) {
    List<Object[]> parts = new ArrayList<>((List<Object[]>) arguments[at]);
    Object[] one = parts.get(part).clone();
    one[component] = x;
    parts.set(part, one);
    return changed(at, parts);
  }

  private static double[] with(double[] list, int element, double x) {
    double[] changed = list.clone();
    changed[element] = x;
    return changed;
  }

  private static Object usual(Parameter parameter) {
    String text =
        parameter
            .fallback()
            .orElseThrow(
                () -> new RefusedException("The argument " + parameter.name() + " is not given."));
    boolean none = OwnUncertainty.isLeftOut(text);
    return switch (parameter.form()) {
      case QUANTITY -> none ? Double.NaN : si(text);
      case LIST -> new double[0];
      case INDEXED -> Indexed.list();
      case PARTS -> List.of();
      case TEXT, CHOICE -> none ? null : text.substring(1, text.length() - 1);
    };
  }

  private static double si(String text) {
    int blank = text.indexOf(' ');
    return blank < 0
        ? Double.parseDouble(text)
        : UnitTable.find(text.substring(blank + 1).strip())
            .toSi(Double.parseDouble(text.substring(0, blank)));
  }

  private void carry(Uncertainty one, double[] here) {
    double x = one.value().si();
    double step = Math.max(STEP * Math.abs(x), STEP * one.value().uncertaintySi());
    double[] coarse = slopes(one, x, step, here);
    double[] fine = slopes(one, x, step / 2, here);
    one.value()
        .gradient()
        .forEach(
            (source, part) -> {
              double[] sum = gradients.computeIfAbsent(source, s -> new double[here.length]);
              for (int i = 0; i < sum.length; i++) {
                sum[i] += part * (4 * fine[i] - coarse[i]) / 3;
              }
            });
  }

  private double[] slopes(Uncertainty one, double x, double step, double[] here) {
    double[] above = numbers(calculation.call(one.with().apply(x + step), Progress.IGNORED));
    double[] below = numbers(calculation.call(one.with().apply(x - step), Progress.IGNORED));
    double[] slopes = new double[here.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = Double.isNaN(here[i]) ? 0 : (above[i] - below[i]) / (2 * step);
    }
    return slopes;
  }

  private static double[] numbers(Object[] results) {
    return Arrays.stream(results)
        .flatMapToDouble(
            result ->
                result instanceof Double number
                    ? java.util.stream.DoubleStream.of(number)
                    : result instanceof Uncertain number
                        ? java.util.stream.DoubleStream.of(number.value())
                        : result instanceof double[] list
                            ? java.util.stream.DoubleStream.of(list)
                            : java.util.stream.DoubleStream.empty())
        .toArray();
  }
}
