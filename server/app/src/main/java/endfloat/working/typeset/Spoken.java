package endfloat.working.typeset;

import endfloat.working.Expression;
import endfloat.working.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A line in words, for those who hear it. */
final class Spoken {
  private Spoken() {}

  static String line(Line line) {
    if (line instanceof Line.Definition definition) {
      return definition(definition);
    }
    if (line instanceof Line.Limit limit) {
      return limit(limit);
    }
    Line.Correlate correlate = (Line.Correlate) line;
    return "correlation of "
        + MathName.spoken(correlate.first())
        + " and "
        + MathName.spoken(correlate.second())
        + " is "
        + of(correlate.coefficient());
  }

  private static String definition(Line.Definition definition) {
    if (definition.solve().isPresent()) {
      Line.Solve solve = definition.solve().get();
      return solve.equations().stream()
              .map(e -> of(e.left()) + " equals " + of(e.right()))
              .collect(Collectors.joining(", "))
          + ", solved for "
          + solve.unknowns().stream()
              .map(
                  u ->
                      MathName.spoken(u.name())
                          + " between "
                          + of(u.low())
                          + " and "
                          + of(u.high()))
              .collect(Collectors.joining(", "));
    }
    String value = of(definition.value().orElseThrow());
    return definition.spread().map(s -> value + " plus or minus " + of(s.half())).orElse(value);
  }

  private static String limit(Line.Limit limit) {
    String place = of(limit.place());
    if (limit.tolerance().isPresent()) {
      return place
          + " is "
          + of(limit.tolerance().get().nominal())
          + " plus or minus "
          + of(limit.tolerance().get().half());
    }
    List<String> ends = new ArrayList<>();
    limit.low().ifPresent(l -> ends.add("at least " + of(l)));
    limit.high().ifPresent(h -> ends.add("at most " + of(h)));
    return place + " is " + String.join(" and ", ends);
  }

  static String of(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      return MathNumber.spoken(literal.digits(), literal.unit());
    }
    if (expression instanceof Expression.Text text) {
      return text.text();
    }
    if (expression instanceof Expression.Place place) {
      return named(place.name(), place.fields());
    }
    if (expression instanceof Expression.Call call) {
      return call(call);
    }
    if (expression instanceof Expression.Unary unary) {
      return switch (unary.operator()) {
            case MINUS -> "minus ";
            case PLUS -> "plus ";
            case NOT -> "not ";
          }
          + part(unary.operand());
    }
    if (expression instanceof Expression.Binary binary) {
      return part(binary.left()) + sign(binary.operator()) + part(binary.right());
    }
    if (expression instanceof Expression.Comparison comparison) {
      return comparison(comparison);
    }
    if (expression instanceof Expression.Conditional conditional) {
      return "if "
          + of(conditional.condition())
          + " then "
          + of(conditional.then())
          + " else "
          + of(conditional.otherwise());
    }
    return "the list "
        + ((Expression.Listing) expression)
            .elements().stream().map(Spoken::of).collect(Collectors.joining(", "));
  }

  private static String named(String name, List<String> fields) {
    String said = MathName.spoken(name);
    return fields.isEmpty() ? said : said + " " + MathName.spoken(String.join(" ", fields));
  }

  /** Parts of a sum or a product inside another sign are said in brackets. */
  private static String part(Expression expression) {
    boolean compound =
        expression instanceof Expression.Binary || expression instanceof Expression.Conditional;
    return compound ? "(" + of(expression) + ")" : of(expression);
  }

  private static String sign(Expression.BinaryOperator operator) {
    return switch (operator) {
      case ADD -> " plus ";
      case SUBTRACT -> " minus ";
      case MULTIPLY -> " times ";
      case DIVIDE -> " over ";
      case POWER -> " to the power ";
      case AND -> " and ";
      case OR -> " or ";
    };
  }

  private static String comparison(Expression.Comparison comparison) {
    StringBuilder said = new StringBuilder(of(comparison.operands().get(0)));
    for (int i = 0; i < comparison.operators().size(); i++) {
      said.append(
          switch (comparison.operators().get(i)) {
            case LESS -> " is less than ";
            case AT_MOST -> " is at most ";
            case GREATER -> " is greater than ";
            case AT_LEAST -> " is at least ";
            case EQUAL -> " equals ";
            case UNEQUAL -> " is not ";
          });
      said.append(of(comparison.operands().get(i + 1)));
    }
    return said.toString();
  }

  private static String call(Expression.Call call) {
    String arguments =
        call.arguments().stream()
            .map(a -> a.name().map(n -> MathName.spoken(n) + " ").orElse("") + of(a.value()))
            .collect(Collectors.joining(", "));
    String function =
        switch (call.function()) {
          case "sqrt" -> "square root";
          case "cbrt" -> "cube root";
          case "sin" -> "sine";
          case "cos" -> "cosine";
          case "tan" -> "tangent";
          case "abs" -> "size";
          case "max" -> "greatest";
          case "min" -> "least";
          case "sd" -> "standard deviation";
          default -> MathName.spoken(call.function());
        };
    return named(function + " of " + arguments, call.fields());
  }
}
