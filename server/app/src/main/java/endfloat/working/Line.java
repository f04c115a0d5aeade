package endfloat.working;

import endfloat.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One parsed statement of a working. */
public sealed interface Line {
  Span span();

  /** The comment that ends the line, without its dashes; empty where there is none. */
  String comment();

  /**
   * {@code name [unit] = expression ± spread (k = 2, dof = 12)} or {@code name = solve ...}.
   *
   * @param unit the declared unit, the one the result is shown in
   * @param value empty where the line solves
   * @param spread expanded uncertainty after ±
   */
  record Definition(
      Span span,
      String name,
      Span nameSpan,
      Optional<DeclaredUnit> unit,
      Optional<Expression> value,
      Optional<Solve> solve,
      Optional<Spread> spread,
      String comment)
      implements Line {

    /** An input carries its own value: no other name is read on its right. */
    public boolean isInput() {
      return value.isPresent() && References.of(value.get()).isEmpty();
    }
  }

  /** {@code [mm]} after the name. */
  record DeclaredUnit(Span span, String text, Unit unit) {}

  /**
   * {@code ± half (k = coverage, dof = degrees)}; coverage 2 and infinite degrees where not said.
   */
  record Spread(
      Span span, Expression half, Optional<Expression> coverage, Optional<Expression> degrees) {}

  /** {@code solve left = right, ... for x between low and high, ...}. */
  record Solve(Span span, List<Equation> equations, List<Unknown> unknowns) {}

  /** One equation of a solve. */
  record Equation(Expression left, Expression right) {}

  /** One unknown of a solve and its bracket. */
  record Unknown(String name, Span nameSpan, Expression low, Expression high) {}

  /**
   * {@code limit place: low .. high "authority" (condition: "hot", state: "new", rule: "simple")}.
   *
   * @param low empty for {@code at most} and for ±
   * @param high empty for {@code at least} and for ±
   * @param tolerance {@code nominal ± half}, an exact tolerance
   * @param authority empty text where none is given (prints "engineer's own")
   * @param notes condition, state, rule
   */
  record Limit(
      Span span,
      Expression.Place place,
      Optional<Expression> low,
      Optional<Expression> high,
      Optional<Tolerance> tolerance,
      String authority,
      Map<String, String> notes,
      String comment)
      implements Line {}

  /** {@code nominal ± half} in a limit. */
  record Tolerance(Expression nominal, Expression half) {}

  /** {@code correlate a, b: 0.8}. */
  record Correlate(
      Span span,
      String first,
      Span firstSpan,
      String second,
      Span secondSpan,
      Expression coefficient,
      String comment)
      implements Line {}
}
