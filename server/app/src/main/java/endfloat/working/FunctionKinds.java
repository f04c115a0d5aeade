package endfloat.working;

import endfloat.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The functions of the language itself: what they take and what they give. */
final class FunctionKinds {
  private static final Set<String> DISTRIBUTIONS =
      Set.of("normal", "rectangular", "triangular", "arcsine", "student_t", "sampled");

  private final Checking checking;
  private final Reductions reductions;

  FunctionKinds(Checking checking) {
    this.checking = checking;
    this.reductions = new Reductions(checking);
  }

  /** Whether a name means something here though it is no plain function. */
  static boolean isSpecial(String name) {
    return name.equals("pick") || name.equals("only") || DISTRIBUTIONS.contains(name);
  }

  static boolean isDistribution(String name) {
    return DISTRIBUTIONS.contains(name);
  }

  Typed typed(Expression.Call call) {
    Typed typed = call(call);
    return Places.fields(typed, call.function() + "(...)", call.fields(), call.span());
  }

  private Typed call(Expression.Call call) {
    if (call.function().equals("pick")) {
      return reductions.pick(call);
    }
    if (call.function().equals("only")) {
      return new Selections(checking).only(call);
    }
    if (isDistribution(call.function())) {
      throw new KindException(
          call.nameSpan(),
          call.function() + "(...) stands alone on the right of an input",
          "Give it a line of its own and use its name here");
    }
    BuiltIn function = BuiltIn.named(call.function()).orElseThrow();
    return switch (function) {
      case SIN, COS, TAN -> angleIn(call, function);
      case ASIN, ACOS, ATAN -> numbers(call, function, 1, Kinds.ANGLE);
      case SINH, COSH, TANH, EXP, LN, LOG10 -> numbers(call, function, 1, Kinds.NUMBER);
      case ATAN2 -> alike(call, function, List.of("y", "x"), Kinds.ANGLE);
      case SQRT -> root(call, function, 2);
      case CBRT -> root(call, function, 3);
      case ABS -> absolute(call);
      case HYPOT -> hypot(call);
      case ROUND, FLOOR, CEIL -> stepped(call, function);
      case INTERPOLATE -> interpolate(call);
      case KELVIN -> kelvin(call);
      case TEMPERATURE -> temperature(call);
      default -> reductions.reduced(call, function);
    };
  }

  private List<Operand> operands(Expression.Call call, List<String> names) {
    Given given = Given.of(call, names);
    given.require(call, names);
    List<Operand> operands = new ArrayList<>();
    for (String name : names) {
      Operand operand = checking.operand(given.byName().get(name).value());
      SumRules.numeric(operand);
      operands.add(operand);
    }
    return operands;
  }

  private static Typed apply(
      Expression.Call call, BuiltIn function, Kind element, List<Operand> operands) {
    return new Typed.Apply(
        call.span(),
        SeriesRules.spread(element, operands),
        function,
        operands.stream().map(Operand::typed).toList());
  }

  private Typed angleIn(Expression.Call call, BuiltIn function) {
    List<Operand> operands = operands(call, List.of("angle"));
    Operand angle = operands.get(0);
    SumRules.refuseBareAngle(angle, Dimension.ANGLE);
    if (!Kinds.isNumber(angle.kind())) {
      throw new KindException(
          angle.span(),
          call.function() + " takes an angle, and this is " + KindWords.a(angle.element()),
          "Give it an angle, in deg or rad");
    }
    return apply(call, function, Kinds.NUMBER, operands);
  }

  private Typed numbers(Expression.Call call, BuiltIn function, int count, Kind result) {
    List<Operand> operands = operands(call, List.of("x").subList(0, count));
    for (Operand operand : operands) {
      if (!Kinds.isNumber(operand.kind())) {
        throw new KindException(
            operand.span(),
            call.function() + " takes a pure number, and this is " + KindWords.a(operand.element()),
            "Divide by a value of its kind first");
      }
    }
    return apply(call, function, result, operands);
  }

  private Typed alike(Expression.Call call, BuiltIn function, List<String> names, Kind result) {
    List<Operand> operands = operands(call, names);
    SumRules.common(operands.get(0), operands.get(1), SumRules.Act.TOGETHER);
    refuseTemperature(call, operands);
    return apply(call, function, result, operands);
  }

  private static void refuseTemperature(Expression.Call call, List<Operand> operands) {
    for (Operand operand : operands) {
      if (Kinds.isTemperature(operand.kind())) {
        throw new KindException(
            operand.span(),
            call.function() + " has no meaning for a temperature, which is a point on a scale",
            "Take a difference of temperatures, or write kelvin(...) first");
      }
    }
  }

  private Typed root(Expression.Call call, BuiltIn function, int denominator) {
    List<Operand> operands = operands(call, List.of("x"));
    refuseTemperature(call, operands);
    Dimension base = ((Kind.Quantity) operands.get(0).element()).dimension();
    Dimension root =
        ProductRules.within(call.span(), () -> ProductRules.raised(base, 1, denominator));
    return apply(call, function, new Kind.Quantity(root), operands);
  }

  private Typed absolute(Expression.Call call) {
    List<Operand> operands = operands(call, List.of("x"));
    refuseTemperature(call, operands);
    return apply(call, BuiltIn.ABS, operands.get(0).element(), operands);
  }

  private Typed hypot(Expression.Call call) {
    List<Operand> operands = reductions.several(call);
    if (operands.size() < 2) {
      throw new KindException(
          call.nameSpan(), "hypot takes two values or more", "Give it the other sides");
    }
    refuseTemperature(call, operands);
    Kind kind = reductions.common(operands);
    return apply(call, BuiltIn.HYPOT, kind, operands);
  }

  private Typed stepped(Expression.Call call, BuiltIn function) {
    Given given = Given.of(call, List.of("x", "step"));
    given.require(call, List.of("x"));
    List<Operand> operands = new ArrayList<>();
    Operand x = checking.operand(given.byName().get("x").value());
    SumRules.numeric(x);
    operands.add(x);
    refuseTemperature(call, operands);
    Optional<Operand> step =
        Optional.ofNullable(given.byName().get("step")).map(a -> checking.operand(a.value()));
    if (step.isPresent()) {
      SumRules.common(x, step.get(), SumRules.Act.TOGETHER);
      operands.add(step.get());
      return apply(call, function, x.element(), operands);
    }
    if (!((Kind.Quantity) x.element()).dimension().isNone()) {
      throw new KindException(
          call.nameSpan(),
          call.function() + " does not know to what, for " + KindWords.a(x.element()),
          "Give the step: "
              + call.function()
              + "("
              + (x.said().isEmpty() ? "x" : x.said())
              + ", step: 1 "
              + UnitsShown.plain(((Kind.Quantity) x.element()).dimension())
                  .map(u -> u.symbol())
                  .orElse("")
              + ")");
    }
    Typed one = new Typed.Constant(call.nameSpan(), Kinds.NUMBER, 1);
    return new Typed.Apply(call.span(), x.kind(), function, List.of(x.typed(), one));
  }

  private Typed interpolate(Expression.Call call) {
    List<Operand> operands = operands(call, List.of("x", "xs", "ys"));
    for (Operand list : operands.subList(1, 3)) {
      if (!Kinds.isSeries(list.kind())) {
        throw new KindException(
            list.span(),
            "interpolate takes a list here, and this is " + KindWords.a(list.kind()),
            "Give it a list, such as [20 degC, 60 degC, 100 degC]");
      }
    }
    SumRules.common(operands.get(0), operands.get(1), SumRules.Act.TOGETHER);
    SeriesRules.spread(Kinds.NUMBER, operands.subList(1, 3));
    return new Typed.Apply(
        call.span(),
        SeriesRules.spread(operands.get(2).element(), operands.subList(0, 1)),
        BuiltIn.INTERPOLATE,
        operands.stream().map(Operand::typed).toList());
  }

  private Typed kelvin(Expression.Call call) {
    List<Operand> operands = operands(call, List.of("t"));
    if (!Kinds.isTemperature(operands.get(0).kind())) {
      throw new KindException(
          operands.get(0).span(),
          "kelvin takes a temperature, and this is " + KindWords.a(operands.get(0).element()),
          "It is a quantity already; leave kelvin out");
    }
    return apply(call, BuiltIn.KELVIN, Kinds.KELVIN, operands);
  }

  private Typed temperature(Expression.Call call) {
    List<Operand> operands = operands(call, List.of("k"));
    Operand k = operands.get(0);
    if (Kinds.isTemperature(k.kind()) || !Kinds.isKelvin(k.kind())) {
      throw new KindException(
          k.span(),
          "temperature takes kelvins from absolute zero, and this is " + KindWords.a(k.element()),
          Kinds.isTemperature(k.kind())
              ? "It is a temperature already; leave temperature out"
              : "Give it a value in K");
    }
    return apply(call, BuiltIn.TEMPERATURE, Kinds.TEMPERATURE, operands);
  }

  /** Arguments of a function that are written with their names, and what each is. */
  static Map<String, String> named(String function) {
    Map<String, String> named = new LinkedHashMap<>();
    switch (function) {
      case "only" -> named.put("where", "condition, one a row");
      case "min", "max", "mean", "median", "range", "sum", "count", "sd", "first", "last" -> {
        named.put("over", "axis taken together, in quotes");
        named.put("by", "column of texts, or several in a list: one value for each");
      }
      case "quantile" -> {
        named.put("share", "of the values that lie below");
        named.put("over", "axis taken together, in quotes");
        named.put("by", "column of texts, or several in a list: one value for each");
      }
      case "round", "floor", "ceil" -> named.put("step", "of which a multiple is taken");
      default -> {
        // the others are written by position
      }
    }
    return named;
  }

  /** Parameters of each function as a person writes them, for completion. */
  static Map<String, String> signatures() {
    Map<String, String> signatures = new LinkedHashMap<>();
    for (String[] line :
        new String[][] {
          {"sin", "angle"},
          {"cos", "angle"},
          {"tan", "angle"},
          {"asin", "x"},
          {"acos", "x"},
          {"atan", "x"},
          {"atan2", "y, x"},
          {"sinh", "x"},
          {"cosh", "x"},
          {"tanh", "x"},
          {"sqrt", "x"},
          {"cbrt", "x"},
          {"exp", "x"},
          {"ln", "x"},
          {"log10", "x"},
          {"abs", "x"},
          {"hypot", "a, b, ..."},
          {"round", "x, step: 1"},
          {"floor", "x, step: 1"},
          {"ceil", "x, step: 1"},
          {"interpolate", "x, xs, ys"},
          {"kelvin", "t"},
          {"temperature", "k"},
          {"min", "a, b, ...  or  x, over: \"plane\""},
          {"max", "a, b, ...  or  x, over: \"plane\""},
          {"mean", "a, b, ...  or  x, over: \"plane\""},
          {"median", "a, b, ...  or  x, over: \"plane\""},
          {"range", "a, b, ...  or  x, over: \"plane\""},
          {"sum", "x, over: \"plane\"  or  x, by: wear.batch"},
          {"count", "x, over: \"plane\"  or  x, by: wear.batch"},
          {"sd", "x, over: \"plane\"  or  x, by: wear.batch"},
          {"quantile", "x, share: 0.9"},
          {"first", "x"},
          {"last", "x"},
          {"pick", "x, cylinder: 3"},
          {"only", "x, where: wear.failed"},
          {"normal", "value, u"},
          {"rectangular", "low, high"},
          {"triangular", "low, mode, high"},
          {"arcsine", "low, high"},
          {"student_t", "value, scale, dof"},
          {"sampled", "x"}
        }) {
      signatures.put(line[0], line[1]);
    }
    return signatures;
  }
}
