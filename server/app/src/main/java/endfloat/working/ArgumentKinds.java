package endfloat.working;

import endfloat.catalogue.Parameter;
import endfloat.definition.OwnUncertainty;
import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether an argument is what its parameter takes. */
final class ArgumentKinds {
  private final Checking checking;

  ArgumentKinds(Checking checking) {
    this.checking = checking;
  }

  /** The default of a parameter that was not given. */
  Typed fallback(Expression.Call call, Parameter parameter) {
    String text = parameter.fallback().orElseThrow();
    Span span = call.nameSpan();
    if (OwnUncertainty.isLeftOut(text)) {
      return new Typed.NotGiven(span, Kinds.of(UnitTable.find(plainUnit(parameter))));
    }
    if (text.equals("[]")) {
      return new Typed.ListOf(
          span,
          parameter
              .part()
              .<Kind>map(p -> new Kind.Parts(p.name(), true))
              .orElseGet(
                  () ->
                      new Kind.Series(
                          Kinds.of(UnitTable.find(plainUnit(parameter))), List.of(), List.of())),
          List.of());
    }
    Expression written = checking.defaults.of(parameter);
    return moved(checking.expressions.typed(written), span);
  }

  private static String plainUnit(Parameter parameter) {
    return parameter.unit().isEmpty() || parameter.unit().startsWith("<") ? "1" : parameter.unit();
  }

  /** A default has no place in the working, so it stands where the call stands. */
  private static Typed moved(Typed typed, Span span) {
    if (typed instanceof Typed.Constant constant) {
      return new Typed.Constant(span, constant.kind(), constant.si());
    }
    return typed instanceof Typed.Words words ? new Typed.Words(span, words.text()) : typed;
  }

  /**
   * @param variables what each unit variable stands for so far; the first argument decides
   */
  Operand operand(
      Expression.Call call,
      Parameter parameter,
      Expression.Argument argument,
      Map<String, Operand> variables) {
    if (argument.value() instanceof Expression.Listing list && list.elements().isEmpty()) {
      return new Operand(list, empty(call, parameter, list));
    }
    return switch (parameter.form()) {
      case QUANTITY -> quantity(call, parameter, checking.operand(argument.value()), variables);
      case LIST, INDEXED -> list(call, parameter, argument, variables);
      case TEXT -> text(call, parameter, checking.operand(argument.value()));
      case CHOICE -> choice(call, parameter, checking.operand(argument.value()));
      case PARTS -> parts(call, parameter, ofTable(parameter, argument.value()));
    };
  }

  /** An empty list is one left out, where none is the default. */
  private Typed empty(Expression.Call call, Parameter parameter, Expression.Listing list) {
    if (!parameter.fallback().equals(Optional.of("[]"))) {
      throw new KindException(
          list.span(),
          named(call, parameter) + " cannot be empty",
          switch (parameter.form()) {
            case LIST, PARTS, INDEXED -> "Write its values between [ and ]";
            default -> "It takes one value, without [ ]";
          });
    }
    Typed.ListOf none = (Typed.ListOf) fallback(call, parameter);
    return new Typed.ListOf(list.span(), none.kind(), none.elements());
  }

  private static String named(Expression.Call call, Parameter parameter) {
    return "\"" + parameter.name() + "\" of " + call.function();
  }

  private Operand list(
      Expression.Call call,
      Parameter parameter,
      Expression.Argument argument,
      Map<String, Operand> variables) {
    Operand operand = checking.operand(argument.value());
    // one value is a list of one
    if (parameter.form() == Parameter.Form.LIST
        && (operand.kind() instanceof Kind.Quantity || Kinds.isTemperature(operand.kind()))) {
      return quantity(call, parameter, operand, variables);
    }
    if (!(operand.kind() instanceof Kind.Series series)) {
      throw new KindException(
          argument.value().span(),
          named(call, parameter) + " is a list, and this is " + KindWords.a(operand.kind()),
          "Give it a list in [ ], or a reading with stations");
    }
    if (parameter.form() == Parameter.Form.INDEXED && series.axes().isEmpty()) {
      throw new KindException(
          argument.value().span(),
          named(call, parameter) + " takes readings with stations, and this is a plain list",
          "Give it the name of a reading that has stations");
    }
    return quantity(call, parameter, operand, variables);
  }

  private Operand quantity(
      Expression.Call call, Parameter parameter, Operand operand, Map<String, Operand> variables) {
    Kind element = operand.element();
    if (!(element instanceof Kind.Quantity) && !(element instanceof Kind.Temperature)) {
      throw new KindException(
          operand.span(),
          named(call, parameter)
              + " takes "
              + wanted(parameter)
              + ", and this is "
              + KindWords.a(element),
          SumRules.instead(operand, element));
    }
    if (parameter.unit().startsWith("<")) {
      Operand bound = variables.putIfAbsent(parameter.unit(), operand);
      if (bound != null) {
        SumRules.common(bound, operand, SumRules.Act.TOGETHER);
      }
      return operand;
    }
    Unit unit = UnitTable.find(parameter.unit());
    if (unit.isTemperaturePoint()) {
      return temperature(call, parameter, operand);
    }
    fits(call, parameter, operand, unit);
    return operand;
  }

  private static String wanted(Parameter parameter) {
    return parameter.unit().startsWith("<")
        ? "a number"
        : KindWords.a(Kinds.of(UnitTable.find(parameter.unit())));
  }

  private static Operand temperature(Expression.Call call, Parameter parameter, Operand operand) {
    if (Kinds.isTemperature(operand.kind())) {
      return operand;
    }
    String message =
        named(call, parameter)
            + " takes a temperature, and this is "
            + KindWords.a(operand.element());
    String wayOut = "Give it a temperature, in degC or degF";
    if (operand.isBare() && !operand.said().isEmpty()) {
      wayOut = "Write " + operand.said() + " degC or " + operand.said() + " degF";
    } else if (Kinds.isKelvin(operand.kind())) {
      wayOut = "K is a difference here; write the temperature in degC, or temperature(293.15 K)";
    }
    throw new KindException(operand.span(), message, wayOut);
  }

  private static void fits(Expression.Call call, Parameter parameter, Operand operand, Unit unit) {
    if (operand.isZero()) {
      return;
    }
    Dimension wanted = unit.dimension();
    if (operand.element() instanceof Kind.Quantity given && given.dimension().same(wanted)) {
      SumRules.refuseBareAngle(operand, wanted);
      return;
    }
    throw new KindException(
        operand.span(),
        named(call, parameter)
            + " takes "
            + KindWords.a(wanted)
            + ", and this is "
            + KindWords.a(operand.element()),
        wayOut(operand, unit));
  }

  private static String wayOut(Operand operand, Unit unit) {
    Optional<String> slip = operand.slip(unit.dimension());
    if (slip.isPresent()) {
      return slip.get();
    }
    if (operand.isBare() && !operand.said().isEmpty() && !unit.dimension().isNone()) {
      return "Write " + operand.said() + " " + unit.symbol();
    }
    if (Kinds.isTemperature(operand.kind()) && unit.dimension().equals(Dimension.TEMPERATURE)) {
      return "Take a difference of two temperatures, or write it in K";
    }
    if (unit.dimension().withoutAngle().equals(Kinds.PER_TIME)) {
      return unit.dimension().hasAngle()
          ? "Give it in rpm or rad/s; a frequency becomes one times 1 rev"
          : "Give it in Hz; an angular speed becomes one divided by 1 rev";
    }
    return unit.dimension().isNone()
        ? "Give it a pure number"
        : "Give it " + KindWords.a(unit.dimension()) + ", in " + unit.symbol() + " or the like";
  }

  private static Operand text(Expression.Call call, Parameter parameter, Operand operand) {
    if (operand.element() instanceof Kind.Words || DateRules.isDate(operand)) {
      return operand;
    }
    throw new KindException(
        operand.span(),
        named(call, parameter) + " takes a text, and this is " + KindWords.a(operand.element()),
        "Write it in double quotes");
  }

  private static Operand choice(Expression.Call call, Parameter parameter, Operand operand) {
    if (!(operand.element() instanceof Kind.Words)) {
      throw new KindException(
          operand.span(),
          named(call, parameter) + " takes a text, and this is " + KindWords.a(operand.element()),
          "Write " + Nearest.choices(parameter.choices()));
    }
    if (operand.written() instanceof Expression.Text text
        && !parameter.choices().contains(text.text())) {
      List<String> nearest = Nearest.of(text.text(), parameter.choices());
      throw new KindException(
          operand.span(),
          named(call, parameter) + " has no choice \"" + text.text() + "\"",
          (nearest.isEmpty() ? "" : "Nearest: \"" + nearest.get(0) + "\". ")
              + "It takes "
              + Nearest.choices(parameter.choices()));
    }
    return operand;
  }

  /** A table whose columns have the names of what a part is made of is a list of such parts. */
  private Operand ofTable(Parameter parameter, Expression written) {
    Operand operand = checking.operand(written);
    if (!(written instanceof Expression.Place place) || !KindWords.isTable(operand.kind())) {
      return operand;
    }
    Set<String> heads = ((Kind.Fields) operand.kind()).fields().keySet();
    List<Expression.Argument> components =
        parameter.part().orElseThrow().components().stream()
            .map(Parameter::name)
            .filter(heads::contains)
            .map(
                head ->
                    new Expression.Argument(
                        place.span(),
                        Optional.of(head),
                        new Expression.Place(place.span(), place.name(), List.of(head))))
            .toList();
    return checking.operand(
        new Expression.Call(
            place.span(),
            place.span(),
            parameter.part().orElseThrow().name(),
            components,
            List.of()));
  }

  private static Operand parts(Expression.Call call, Parameter parameter, Operand operand) {
    String part = parameter.part().orElseThrow().name();
    if (operand.kind() instanceof Kind.Parts given && given.part().equals(part)) {
      return given.list()
          ? operand
          : new Operand(
              operand.written(),
              new Typed.ListOf(
                  operand.span(),
                  new Kind.Parts(part, true),
                  Collections.singletonList(operand.typed())));
    }
    throw new KindException(
        operand.span(),
        named(call, parameter)
            + " takes a list of "
            + part
            + " parts, and this is "
            + KindWords.a(operand.kind()),
        "Write [" + part + "(...), " + part + "(...)]");
  }
}
