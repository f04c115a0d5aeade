package endfloat.working.typeset;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.definition.OwnUncertainty;
import endfloat.working.Expression;
import endfloat.working.Parser;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A call of a calculation whose relation is known, as that relation with its arguments put in. */
final class Substitution {
  private final Map<String, Expression> arguments;

  private Substitution(Map<String, Expression> arguments) {
    this.arguments = arguments;
  }

  /** Empty where the calculation has no relation to set, or the call does not fill it. */
  static Optional<Expression> of(Catalogue catalogue, Expression.Call call) {
    if (!call.fields().isEmpty()) {
      return Optional.empty();
    }
    Optional<Calculation> calculation = catalogue.find(call.function());
    Optional<Expression> formula =
        calculation.flatMap(Calculation::formula).flatMap(f -> Parser.expression(f).expression());
    if (formula.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Expression> arguments = arguments(call, calculation.get().parameters());
    boolean filled =
        endfloat.working.References.of(formula.get()).stream().allMatch(arguments::containsKey);
    return filled ? Optional.of(new Substitution(arguments).put(formula.get())) : Optional.empty();
  }

  private static Map<String, Expression> arguments(
      Expression.Call call, List<Parameter> parameters) {
    Map<String, Expression> arguments = new HashMap<>();
    int position = 0;
    for (Expression.Argument argument : call.arguments()) {
      if (argument.name().isPresent()) {
        arguments.put(argument.name().get(), argument.value());
      } else if (position < parameters.size()) {
        arguments.put(parameters.get(position++).name(), argument.value());
      }
    }
    for (Parameter parameter : parameters) {
      parameter
          .fallback()
          .filter(f -> !OwnUncertainty.isLeftOut(f) && !arguments.containsKey(parameter.name()))
          .flatMap(f -> Parser.expression(f).expression())
          .ifPresent(e -> arguments.put(parameter.name(), e));
    }
    return arguments;
  }

  private Expression put(Expression formula) {
    if (formula instanceof Expression.Place place && !place.name().equals("pi")) {
      return arguments.get(place.name());
    }
    if (formula instanceof Expression.Unary unary) {
      return new Expression.Unary(unary.span(), unary.operator(), put(unary.operand()));
    }
    if (formula instanceof Expression.Binary binary) {
      Expression left = put(binary.left());
      Expression right = put(binary.right());
      boolean product =
          binary.operator() == Expression.BinaryOperator.MULTIPLY
              || binary.operator() == Expression.BinaryOperator.DIVIDE;
      return product && isOne(right)
          ? left
          : new Expression.Binary(binary.span(), binary.operator(), left, right);
    }
    if (formula instanceof Expression.Call call) {
      return new Expression.Call(
          call.span(),
          call.nameSpan(),
          call.function(),
          call.arguments().stream()
              .map(a -> new Expression.Argument(a.span(), a.name(), put(a.value())))
              .toList(),
          call.fields());
    }
    if (formula instanceof Expression.Comparison comparison) {
      return new Expression.Comparison(
          comparison.span(),
          comparison.operands().stream().map(this::put).toList(),
          comparison.operators());
    }
    if (formula instanceof Expression.Conditional conditional) {
      return new Expression.Conditional(
          conditional.span(),
          put(conditional.condition()),
          put(conditional.then()),
          put(conditional.otherwise()));
    }
    if (formula instanceof Expression.Listing listing) {
      return new Expression.Listing(
          listing.span(), listing.elements().stream().map(this::put).toList());
    }
    return formula;
  }

  /** The cosine of an angle that nobody gave and that is nought says nothing on the page. */
  private static boolean isOne(Expression factor) {
    return factor instanceof Expression.Call call
        && call.function().equals("cos")
        && call.arguments().get(0).value() instanceof Expression.Literal angle
        && angle.si() == 0;
  }
}
