package endfloat.working;

import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes lines back into the language; reading them again gives the same tree. */
public final class Written {
  private Written() {}

  public static String line(Line line) {
    String text;
    if (line instanceof Line.Definition definition) {
      text = definition(definition);
    } else if (line instanceof Line.Limit limit) {
      text = limit(limit);
    } else {
      Line.Correlate correlate = (Line.Correlate) line;
      text =
          "correlate "
              + correlate.first()
              + ", "
              + correlate.second()
              + ": "
              + inSum(correlate.coefficient());
    }
    return line.comment().isEmpty() ? text : text + " -- " + line.comment();
  }

  private static String definition(Line.Definition definition) {
    String left =
        definition.name() + definition.unit().map(u -> " [" + u.text() + "]").orElse("") + " = ";
    if (definition.solve().isPresent()) {
      return left + solve(definition.solve().get());
    }
    return left
        + expression(definition.value().orElseThrow())
        + definition.spread().map(Written::spread).orElse("");
  }

  private static String spread(Line.Spread spread) {
    List<String> notes = new ArrayList<>();
    spread.coverage().ifPresent(k -> notes.add("k = " + inSum(k)));
    spread.degrees().ifPresent(d -> notes.add("dof = " + inSum(d)));
    return " ± "
        + held(spread.half(), 5)
        + (notes.isEmpty() ? "" : " (" + String.join(", ", notes) + ")");
  }

  private static String solve(Line.Solve solve) {
    return "solve "
        + solve.equations().stream()
            .map(e -> inSum(e.left()) + " = " + inSum(e.right()))
            .collect(Collectors.joining(", "))
        + " for "
        + solve.unknowns().stream()
            .map(u -> u.name() + " between " + inSum(u.low()) + " and " + inSum(u.high()))
            .collect(Collectors.joining(", "));
  }

  private static String limit(Line.Limit limit) {
    String bounds;
    if (limit.tolerance().isPresent()) {
      Line.Tolerance tolerance = limit.tolerance().get();
      bounds = inSum(tolerance.nominal()) + " ± " + held(tolerance.half(), 5);
    } else if (limit.low().isEmpty()) {
      bounds = "at most " + inSum(limit.high().orElseThrow());
    } else if (limit.high().isEmpty()) {
      bounds = "at least " + inSum(limit.low().orElseThrow());
    } else {
      bounds = inSum(limit.low().get()) + " .. " + inSum(limit.high().get());
    }
    String authority = limit.authority().isEmpty() ? "" : " " + quoted(limit.authority());
    return "limit " + expression(limit.place()) + ": " + bounds + authority + notes(limit.notes());
  }

  private static String notes(Map<String, String> notes) {
    return notes.isEmpty()
        ? ""
        : notes.entrySet().stream()
            .map(e -> e.getKey() + ": " + quoted(e.getValue()))
            .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }

  /** Where the grammar takes a sum only, all else stands in brackets. */
  private static String inSum(Expression expression) {
    return held(expression, 4);
  }

  public static String expression(Expression expression) {
    if (expression instanceof Expression.Literal literal) {
      return literal.digits() + literal.unit().map(Unit::symbol).map(s -> " " + s).orElse("");
    }
    if (expression instanceof Expression.Text text) {
      return quoted(text.text());
    }
    if (expression instanceof Expression.Place place) {
      return place.name() + fields(place.fields());
    }
    if (expression instanceof Expression.Call call) {
      return call.function()
          + call.arguments().stream()
              .map(a -> a.name().map(n -> n + ": ").orElse("") + expression(a.value()))
              .collect(Collectors.joining(", ", "(", ")"))
          + fields(call.fields());
    }
    if (expression instanceof Expression.Unary unary) {
      return switch (unary.operator()) {
        case MINUS -> "-" + afterSign(unary.operand());
        case PLUS -> "+" + afterSign(unary.operand());
        case NOT -> "not " + held(unary.operand(), 3);
      };
    }
    if (expression instanceof Expression.Binary binary) {
      return binary(binary);
    }
    if (expression instanceof Expression.Comparison comparison) {
      return comparison(comparison);
    }
    if (expression instanceof Expression.Conditional conditional) {
      return "if "
          + held(conditional.condition(), 1)
          + " then "
          + expression(conditional.then())
          + " else "
          + expression(conditional.otherwise());
    }
    return ((Expression.Listing) expression)
        .elements().stream().map(Written::expression).collect(Collectors.joining(", ", "[", "]"));
  }

  /** Two dashes side by side would begin a comment or be refused. */
  private static String afterSign(Expression operand) {
    String text = held(operand, 6);
    return text.startsWith("-") || text.startsWith("+") ? " " + text : text;
  }

  private static String fields(List<String> fields) {
    return fields.stream().map(f -> "." + f).collect(Collectors.joining());
  }

  private static String comparison(Expression.Comparison comparison) {
    StringBuilder text = new StringBuilder(held(comparison.operands().get(0), 4));
    for (int i = 0; i < comparison.operators().size(); i++) {
      text.append(' ').append(sign(comparison.operators().get(i))).append(' ');
      text.append(held(comparison.operands().get(i + 1), 4));
    }
    return text.toString();
  }

  private static String sign(Expression.Comparator comparator) {
    return switch (comparator) {
      case LESS -> "<";
      case AT_MOST -> "<=";
      case GREATER -> ">";
      case AT_LEAST -> ">=";
      case EQUAL -> "=";
      case UNEQUAL -> "!=";
    };
  }

  private static String binary(Expression.Binary binary) {
    return switch (binary.operator()) {
      case OR -> held(binary.left(), 1) + " or " + held(binary.right(), 2);
      case AND -> held(binary.left(), 2) + " and " + held(binary.right(), 3);
      case ADD -> held(binary.left(), 4) + " + " + held(binary.right(), 5);
      case SUBTRACT -> held(binary.left(), 4) + " - " + held(binary.right(), 5);
      case MULTIPLY -> held(binary.left(), 5) + " * " + held(binary.right(), 6);
      case DIVIDE -> over(binary);
      case POWER -> base(binary.left()) + "^" + exponent(binary.right());
    };
  }

  /** Two whole numbers before a unit would be read as a fraction, so the lower stands apart. */
  private static String over(Expression.Binary binary) {
    boolean fraction = literal(binary.right()).flatMap(Expression.Literal::unit).isPresent();
    String right = held(binary.right(), 6);
    return held(binary.left(), 5) + " / " + (fraction ? "(" + right + ")" : right);
  }

  private static Optional<Expression.Literal> literal(Expression expression) {
    if (expression instanceof Expression.Binary power
        && power.operator() == Expression.BinaryOperator.POWER) {
      return literal(power.left());
    }
    return expression instanceof Expression.Literal literal
        ? Optional.of(literal)
        : Optional.empty();
  }

  private static String base(Expression expression) {
    boolean withUnit =
        expression instanceof Expression.Literal literal && literal.unit().isPresent();
    return withUnit ? "(" + expression(expression) + ")" : held(expression, 8);
  }

  /** {@code x^3/8 in} would divide by 8 in. */
  private static String exponent(Expression expression) {
    boolean withUnit =
        expression instanceof Expression.Literal literal && literal.unit().isPresent();
    return withUnit ? "(" + expression(expression) + ")" : held(expression, 6);
  }

  /** How tightly the signs of the grammar hold, from if (0) over sums (4) to a value alone (8). */
  private static int hold(Expression expression) {
    if (expression instanceof Expression.Conditional) {
      return 0;
    }
    if (expression instanceof Expression.Comparison) {
      return 3;
    }
    if (expression instanceof Expression.Unary unary) {
      return unary.operator() == Expression.UnaryOperator.NOT ? 3 : 6;
    }
    if (expression instanceof Expression.Binary binary) {
      return switch (binary.operator()) {
        case OR -> 1;
        case AND -> 2;
        case ADD, SUBTRACT -> 4;
        case MULTIPLY, DIVIDE -> 5;
        case POWER -> 7;
      };
    }
    return 8;
  }

  private static String held(Expression expression, int least) {
    String text = expression(expression);
    return hold(expression) < least ? "(" + text + ")" : text;
  }
}
