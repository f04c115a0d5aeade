package endfloat.working;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Part;
import endfloat.catalogue.Result;
import endfloat.units.Dimension;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Calls of calculations and of the constructors of parts. */
final class CallKinds {
  /** What other places call things, and what stands for them here. */
  private static final Map<String, String> OTHER_NAMES =
      Map.ofEntries(
          Map.entry("log", "Write ln for the natural logarithm, log10 for the common one"),
          Map.entry("average", "Write mean"),
          Map.entry("avg", "Write mean"),
          Map.entry("stdev", "Write sd"),
          Map.entry("std", "Write sd"),
          Map.entry("arcsin", "Write asin"),
          Map.entry("arccos", "Write acos"),
          Map.entry("arctan", "Write atan"),
          Map.entry("pow", "Write ^ for a power"),
          Map.entry("power", "Write ^ for a power"),
          Map.entry("root", "Write sqrt, cbrt or ^(1/3)"),
          Map.entry("ceiling", "Write ceil"),
          Map.entry("fabs", "Write abs"),
          Map.entry("uniform", "Write rectangular(low, high)"),
          Map.entry("gauss", "Write normal(value, u)"));

  private final Checking checking;
  private final ArgumentKinds arguments;

  CallKinds(Checking checking) {
    this.checking = checking;
    this.arguments = new ArgumentKinds(checking);
  }

  Typed typed(Expression.Call call) {
    Optional<Part> part = checking.catalogue.part(call.function());
    Typed typed =
        part.isPresent()
            ? build(call, part.get())
            : calculate(call, meant(call).orElseThrow(() -> unknown(call)));
    return Places.fields(typed, call.function() + "(...)", call.fields(), call.span());
  }

  /** A calculation with two forms is told by its first argument: a size, or a text with all. */
  private Optional<Calculation> meant(Expression.Call call) {
    Optional<Calculation> sized = checking.catalogue.find(call.function(), false);
    Optional<Calculation> written = checking.catalogue.find(call.function(), true);
    if (written.equals(sized) || call.arguments().isEmpty()) {
      return sized;
    }
    Expression.Argument first = call.arguments().get(0);
    boolean words =
        first.name().isEmpty() && checking.operand(first.value()).kind().equals(Kinds.WORDS);
    return words ? written : sized;
  }

  private KindException unknown(Expression.Call call) {
    String name = call.function();
    if (checking.scope.kindOf(name).isPresent()) {
      return new KindException(
          call.nameSpan(),
          "\"" + name + "\" is a value, not a function",
          "Write * before the bracket for a product");
    }
    String other = OTHER_NAMES.get(name.toLowerCase(Locale.ROOT));
    if (other != null) {
      return new KindException(call.nameSpan(), "There is no function \"" + name + "\"", other);
    }
    return new KindException(
        call.nameSpan(),
        "There is no function \"" + name + "\"",
        Nearest.wayOut(name, functions(), "The catalogue lists what there is"));
  }

  private Collection<String> functions() {
    Set<String> names = new LinkedHashSet<>(FunctionKinds.signatures().keySet());
    checking.catalogue.all().forEach(c -> names.add(c.name()));
    names.addAll(checking.catalogue.parts());
    return names;
  }

  private Typed calculate(Expression.Call call, Calculation calculation) {
    Bound bound = bind(call, calculation.parameters());
    Kind kind = result(calculation, bound.variables());
    boolean spread = !bound.spread().isEmpty();
    if (spread && kind instanceof Kind.Series) {
      throw new KindException(
          bound.spread().get(0).span(),
          call.function() + " gives a list, so it takes one value here, not a series",
          "Take one station first, such as pick(x, cylinder: 3)");
    }
    return new Typed.Calculate(
        call.span(),
        SeriesRules.spread(kind, bound.spread()),
        calculation,
        bound.arguments(),
        spread);
  }

  private Typed build(Expression.Call call, Part part) {
    Bound bound = bind(call, part.components());
    // from a series, such as a column of a table, one part each
    SeriesRules.spread(Kinds.NUMBER, bound.spread());
    boolean list = !bound.spread().isEmpty();
    return new Typed.Build(call.span(), new Kind.Parts(part.name(), list), part, bound.arguments());
  }

  /** Arguments in the order of the parameters, and those that make the call element by element. */
  private record Bound(List<Typed> arguments, List<Operand> spread, Map<String, Kind> variables) {}

  private Bound bind(Expression.Call call, List<Parameter> parameters) {
    Given given = Given.of(call, parameters.stream().map(Parameter::name).toList());
    given.require(
        call,
        parameters.stream().filter(p -> p.fallback().isEmpty()).map(Parameter::name).toList());
    List<Typed> typed = new ArrayList<>();
    List<Operand> spread = new ArrayList<>();
    Map<String, Operand> variables = new LinkedHashMap<>();
    for (Parameter parameter : parameters) {
      Expression.Argument argument = given.byName().get(parameter.name());
      if (argument == null) {
        typed.add(arguments.fallback(call, parameter));
        continue;
      }
      Operand operand = arguments.operand(call, parameter, argument, variables);
      typed.add(operand.typed());
      if (parameter.form() != Parameter.Form.LIST
          && parameter.form() != Parameter.Form.INDEXED
          && Kinds.isSeries(operand.kind())) {
        spread.add(operand);
      }
    }
    Map<String, Kind> kinds = new LinkedHashMap<>();
    variables.forEach((name, operand) -> kinds.put(name, operand.element()));
    return new Bound(List.copyOf(typed), spread, kinds);
  }

  /** Of a unit variable; of a temperature that of its differences. */
  private static Dimension dimension(Kind variable) {
    return variable instanceof Kind.Quantity quantity
        ? quantity.dimension()
        : Dimension.TEMPERATURE;
  }

  private static Kind result(Calculation calculation, Map<String, Kind> variables) {
    if (!calculation.givesRecord()) {
      return kind(calculation.results().get(0), variables);
    }
    Map<String, Kind> fields = new LinkedHashMap<>();
    calculation.results().forEach(r -> fields.put(r.name(), kind(r, variables)));
    return new Kind.Fields(Collections.unmodifiableMap(fields));
  }

  private static Kind kind(Result result, Map<String, Kind> variables) {
    return switch (result.form()) {
      case QUANTITY, UNCERTAIN -> quantity(result.unit(), variables);
      case LIST -> new Kind.Series(quantity(result.unit(), variables), List.of(), List.of());
      case TEXT -> Kinds.WORDS;
      case TRUTH -> Kinds.TRUTH;
    };
  }

  private static Kind quantity(String unit, Map<String, Kind> variables) {
    int sign = Math.max(unit.indexOf("/<"), unit.indexOf("-<"));
    if (sign > 0) {
      Dimension first = dimension(variables.get(unit.substring(0, sign)));
      return new Kind.Quantity(
          unit.charAt(sign) == '-'
              ? first
              : first.over(dimension(variables.get(unit.substring(sign + 1)))));
    }
    return unit.startsWith("<")
        ? variables.getOrDefault(unit, Kinds.NUMBER)
        : Kinds.of(UnitTable.find(unit));
  }
}
