package endfloat.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code normal(85 degC, 1.4 K)} and the like, alone on the right of an input. */
final class DistributionKinds {
  private final Checking checking;

  DistributionKinds(Checking checking) {
    this.checking = checking;
  }

  /**
   * What an input is drawn from.
   *
   * @param first the parameter that says in which unit it was meant
   * @param mean of the distribution
   */
  record Drawn(Expression first, Typed mean, Checked.Distribution distribution) {}

  Drawn drawn(Expression.Call call) {
    Checked.Shape shape = Checked.Shape.valueOf(call.function().toUpperCase(Locale.ROOT));
    return switch (shape) {
      case NORMAL -> around(call, shape, List.of("value", "u"));
      case STUDENT_T -> around(call, shape, List.of("value", "scale", "dof"));
      case RECTANGULAR, ARCSINE -> between(call, shape, List.of("low", "high"));
      case TRIANGULAR -> between(call, shape, List.of("low", "mode", "high"));
      case SAMPLED -> sampled(call);
    };
  }

  private static List<Expression> written(Expression.Call call, List<String> names) {
    Given given = Given.of(call, names);
    given.require(call, names);
    return names.stream().map(n -> given.byName().get(n).value()).toList();
  }

  private Drawn around(Expression.Call call, Checked.Shape shape, List<String> names) {
    List<Expression> written = written(call, names);
    Operand value = single(checking.operand(written.get(0)));
    List<Typed> parameters = new ArrayList<>();
    parameters.add(value.typed());
    Typed width = SpreadKinds.difference(checking, value, written.get(1));
    if (width instanceof Typed.Constant c && c.si() < 0) {
      throw new KindException(
          written.get(1).span(), "An uncertainty is not negative", "Take the minus out");
    }
    parameters.add(width);
    if (names.size() == 3) {
      Operand degrees = checking.operand(written.get(2));
      if (!Kinds.isPure(degrees.kind())
          || (degrees.typed() instanceof Typed.Constant c && !(c.si() > 0))) {
        throw new KindException(
            degrees.span(), "Degrees of freedom are a pure number above 0", "Write such as 12");
      }
      parameters.add(degrees.typed());
    }
    return new Drawn(
        written.get(0), value.typed(), new Checked.Distribution(shape, List.copyOf(parameters)));
  }

  private static Operand single(Operand operand) {
    if (operand.kind() instanceof Kind.Quantity || operand.kind() instanceof Kind.Temperature) {
      return operand;
    }
    throw new KindException(
        operand.span(),
        "A distribution is of one value, and this is " + KindWords.a(operand.kind()),
        "Give it one value");
  }

  private Drawn between(Expression.Call call, Checked.Shape shape, List<String> names) {
    List<Expression> written = written(call, names);
    Expression last = written.get(written.size() - 1);
    List<Operand> operands = new ArrayList<>();
    for (Expression expression : written) {
      Expression partner = expression == last ? written.get(0) : last;
      operands.add(single(Partners.of(checking, expression, partner)));
    }
    Kind kind = operands.get(0).kind();
    for (Operand operand : operands.subList(1, operands.size())) {
      kind = SumRules.common(operands.get(0), operand, SumRules.Act.BRACKET);
    }
    for (int i = 1; i < operands.size(); i++) {
      if (operands.get(i - 1).typed() instanceof Typed.Constant a
          && operands.get(i).typed() instanceof Typed.Constant b
          && a.si() > b.si()) {
        throw new KindException(
            operands.get(i).span(),
            "The ends do not rise",
            "Write " + call.function() + "(" + String.join(", ", names) + ")");
      }
    }
    List<Typed> parameters = operands.stream().map(Operand::typed).toList();
    Typed mean = new Typed.Apply(call.span(), kind, BuiltIn.MEAN, parameters);
    Expression unit = operands.get(0).written();
    return new Drawn(unit, mean, new Checked.Distribution(shape, parameters));
  }

  private Drawn sampled(Expression.Call call) {
    List<Expression> written = written(call, List.of("x"));
    Operand series = checking.operand(written.get(0));
    if (!(series.kind() instanceof Kind.Series)) {
      throw new KindException(
          series.span(),
          "sampled takes a series, and this is " + KindWords.a(series.kind()),
          "Give it a reading with several values, or a list");
    }
    SumRules.numeric(series);
    Typed mean =
        new Typed.Reduce(
            call.span(),
            series.element(),
            BuiltIn.MEAN,
            series.typed(),
            List.of(),
            List.of(),
            Optional.empty());
    return new Drawn(
        written.get(0),
        mean,
        new Checked.Distribution(Checked.Shape.SAMPLED, List.of(series.typed())));
  }
}
