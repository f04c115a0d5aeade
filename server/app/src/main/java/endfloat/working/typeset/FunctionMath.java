package endfloat.working.typeset;

import endfloat.working.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sets calls of functions: roots, powers of e, the sine of an angle, and all others by name. */
final class FunctionMath {
  /** Functions whose argument may stand without brackets. */
  private static final Set<String> OPEN = Set.of("sin", "cos", "tan", "ln");

  private static final Map<String, String> NAMES =
      Map.of("asin", "arcsin", "acos", "arccos", "atan", "arctan", "sd", "s");

  private final ExpressionMath maths;

  FunctionMath(ExpressionMath maths) {
    this.maths = maths;
  }

  /** A call that another factor follows: its argument in brackets, so that the two stay apart. */
  String closed(Expression.Call call) {
    boolean literal = isOpen(call) && call.arguments().get(0).value() instanceof Expression.Literal;
    return isOpen(call) && !literal ? applied(Markup.upright(call.function()), call) : set(call);
  }

  private static boolean isOpen(Expression.Call call) {
    if (!OPEN.contains(call.function()) || call.arguments().size() != 1) {
      return false;
    }
    Expression argument = call.arguments().get(0).value();
    return argument instanceof Expression.Literal
        || (argument instanceof Expression.Place place && place.fields().isEmpty());
  }

  String set(Expression.Call call) {
    List<Expression> values = call.arguments().stream().map(Expression.Argument::value).toList();
    boolean one = values.size() == 1;
    return switch (call.function()) {
      case "sqrt" -> one ? Markup.element("msqrt", maths.set(values.get(0))) : named(call);
      case "cbrt" ->
          one
              ? Markup.element("mroot", Markup.row(maths.set(values.get(0))), "<mn>3</mn>")
              : named(call);
      case "abs" ->
          one
              ? Markup.row(
                  "<mo stretchy=\"true\">|</mo>",
                  maths.set(values.get(0)),
                  "<mo stretchy=\"true\">|</mo>")
              : named(call);
      case "exp" ->
          one
              ? Markup.element("msup", Markup.upright("e"), Markup.row(maths.set(values.get(0))))
              : named(call);
      case "hypot" -> hypot(values);
      case "log10" -> applied("<msub><mi>log</mi><mn>10</mn></msub>", call);
      case "pick" -> picked(call);
      default -> named(call);
    };
  }

  private String hypot(List<Expression> values) {
    List<String> squares = new ArrayList<>();
    for (Expression value : values) {
      String set = maths.set(value);
      boolean plain = value instanceof Expression.Place && !maths.hasFigure(value);
      squares.add(Markup.element("msup", plain ? set : Markup.bracketed(set), "<mn>2</mn>"));
    }
    return Markup.element("msqrt", Markup.row(String.join(Markup.sign("+"), squares)));
  }

  private String named(Expression.Call call) {
    String name = NAMES.getOrDefault(call.function(), call.function()).replace('_', ' ');
    String set = name.indexOf(' ') >= 0 ? Markup.text(name) : Markup.upright(name);
    if (isOpen(call)) {
      return Markup.row(set, Markup.space(), maths.set(call.arguments().get(0).value()));
    }
    return applied(over(call, set), call);
  }

  /** {@code max(x, over: "plane")}: the axis stands below the function. */
  private String over(Expression.Call call, String set) {
    for (Expression.Argument argument : call.arguments()) {
      if (argument.name().filter("over"::equals).isPresent()
          && argument.value() instanceof Expression.Text text) {
        return Markup.element("msub", set, Markup.text(text.text()));
      }
    }
    return set;
  }

  private String applied(String function, Expression.Call call) {
    List<String> arguments = new ArrayList<>();
    for (Expression.Argument argument : call.arguments()) {
      String value = maths.set(argument.value());
      String name = argument.name().orElse("");
      if (name.isEmpty()) {
        arguments.add(value);
      } else if (!(name.equals("over") && argument.value() instanceof Expression.Text)) {
        arguments.add(Markup.row(Markup.text(name.replace('_', ' ') + ": "), value));
      }
    }
    return Markup.row(
        function, Markup.bracketed(String.join(Markup.sign(",") + Markup.space(), arguments)));
  }

  /** {@code pick(x, cylinder: 3)}: the station stands below the value. */
  private String picked(Expression.Call call) {
    if (call.arguments().isEmpty()) {
      return named(call);
    }
    List<String> stations = new ArrayList<>();
    for (Expression.Argument argument : call.arguments().subList(1, call.arguments().size())) {
      String label =
          argument.value() instanceof Expression.Text text
              ? text.text()
              : argument.value() instanceof Expression.Literal literal ? literal.digits() : "";
      stations.add((argument.name().orElse("") + " " + label).strip());
    }
    return Markup.element(
        "msub",
        Markup.row(maths.named(call.arguments().get(0).value())),
        Markup.text(String.join(", ", stations)));
  }
}
