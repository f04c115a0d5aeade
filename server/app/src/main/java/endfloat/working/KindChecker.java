package endfloat.working;

import endfloat.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds the kind of every line, once, before anything is evaluated: dimensions, temperatures,
 * series, texts, and the arguments of every call.
 */
public final class KindChecker {
  private final Catalogue catalogue;
  private final Defaults defaults = new Defaults();

  public KindChecker(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * Finds the kinds of a line.
   *
   * @param scope must know the kind of every name that {@link References} finds in the line, or say
   *     that there is no such name
   */
  public Checked check(Line line, Scope scope) {
    Checking checking = new Checking(catalogue, defaults, scope);
    try {
      if (line instanceof Line.Definition definition) {
        return definition.solve().isPresent()
            ? new SolveKinds(checking).checked(definition)
            : new DefinitionKinds(checking).checked(definition);
      }
      if (line instanceof Line.Limit limit) {
        return new LimitKinds(checking).checked(limit);
      }
      return correlated((Line.Correlate) line, checking);
    } catch (KindException e) {
      List<LineProblem> problems = new ArrayList<>();
      problems.add(e.problem());
      problems.addAll(checking.hints);
      return new Checked.Refused(line, List.copyOf(problems));
    }
  }

  /**
   * The kind that a solve gives its unknown, from its bracket alone: the kinds of the lines that
   * the equations read may rest on it. Empty where the line does not solve, or its brackets are in
   * error.
   */
  public Optional<Kind> unknown(Line.Definition line, String name, Scope scope) {
    return line.solve()
        .flatMap(s -> s.unknowns().stream().filter(u -> u.name().equals(name)).findFirst())
        .flatMap(u -> quietly(scope, c -> new SolveKinds(c).unknown(line, u).kind()));
  }

  /**
   * The kind that a solve has by its brackets alone, before the kinds of the lines are known that
   * its equations read. Empty where the brackets are in error.
   */
  public Optional<Kind> bracket(Line.Definition line, Scope scope) {
    return quietly(scope, c -> new SolveKinds(c).bracket(line));
  }

  /** The unit of the answer of a solve; empty where it has none, or several unknowns. */
  public static Optional<endfloat.units.Unit> unit(Line.Definition line) {
    return SolveKinds.unit(line, line.solve().orElseThrow());
  }

  /** One expression that stands in a note, a chart or a table. */
  public Formula formula(Expression expression, Scope scope) {
    Checking checking = new Checking(catalogue, defaults, scope);
    try {
      Typed typed = checking.expressions.typed(expression);
      return new Formula(
          Optional.of(typed), UnitsShown.of(expression, typed, scope), List.copyOf(checking.hints));
    } catch (KindException e) {
      return new Formula(Optional.empty(), Optional.empty(), List.of(e.problem()));
    }
  }

  /**
   * A checked expression.
   *
   * @param typed empty where it is in error
   * @param unit to show it in, where it says one
   */
  public record Formula(
      Optional<Typed> typed, Optional<endfloat.units.Unit> unit, List<LineProblem> problems) {}

  private <T> Optional<T> quietly(Scope scope, Function<Checking, T> question) {
    try {
      return Optional.of(question.apply(new Checking(catalogue, defaults, scope)));
    } catch (KindException e) {
      return Optional.empty();
    }
  }

  private static Checked correlated(Line.Correlate line, Checking checking) {
    input(line.first(), line.firstSpan(), checking);
    input(line.second(), line.secondSpan(), checking);
    if (line.first().equals(line.second())) {
      throw new KindException(
          line.secondSpan(), "A value varies with itself anyway", "Name two inputs");
    }
    Operand coefficient = checking.operand(line.coefficient());
    if (!Kinds.isNumber(coefficient.kind()) || Kinds.isSeries(coefficient.kind())) {
      throw new KindException(
          coefficient.span(),
          "A correlation is a pure number from -1 to 1, and this is "
              + KindWords.a(coefficient.kind()),
          "Write it as correlate a, b: 0.8");
    }
    if (coefficient.typed() instanceof Typed.Constant c && !(Math.abs(c.si()) <= 1)) {
      throw new KindException(
          coefficient.span(), "A correlation lies between -1 and 1", "Write such a number");
    }
    return new Checked.Correlated(line, coefficient.typed(), List.copyOf(checking.hints));
  }

  private static void input(String name, Span span, Checking checking) {
    Kind kind =
        checking.scope.kindOf(name).orElseThrow(() -> new Places(checking).unknown(name, span));
    if (!(kind instanceof Kind.Quantity) && !(kind instanceof Kind.Temperature)) {
      throw new KindException(
          span,
          "\"" + name + "\" is " + KindWords.a(kind) + ", and two single values are correlated",
          "Name an input that has one value and its ±");
    }
  }
}
