package endfloat.http.view;

import endfloat.engine.ValueGraph;
import endfloat.working.Expression;
import endfloat.working.Line;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The numbers of limits as they were typed: 0.10 stays 0.10. */
final class LimitTexts {
  private final ValueGraph graph;
  private final Map<String, Map<Integer, Line.Limit>> clauses = new HashMap<>();

  LimitTexts(ValueGraph graph) {
    this.graph = graph;
  }

  /** Digits of the lower limit on a line of a clause; empty where it is no plain number. */
  Optional<String> low(String clause, int line) {
    return limit(clause, line).flatMap(Line.Limit::low).flatMap(LimitTexts::digits);
  }

  /** Digits of the upper limit. */
  Optional<String> high(String clause, int line) {
    return limit(clause, line).flatMap(Line.Limit::high).flatMap(LimitTexts::digits);
  }

  private Optional<Line.Limit> limit(String clause, int line) {
    return Optional.ofNullable(clauses.computeIfAbsent(clause, this::limits).get(line));
  }

  private Map<Integer, Line.Limit> limits(String clause) {
    Map<Integer, Line.Limit> limits = new HashMap<>();
    for (ValueGraph.PlacedLine placed : graph.lines(clause)) {
      if (placed.line() instanceof Line.Limit limit) {
        limits.put(placed.firstLine() + limit.span().line(), limit);
      }
    }
    return limits;
  }

  private static Optional<String> digits(Expression expression) {
    return expression instanceof Expression.Literal literal
        ? Optional.of(literal.digits())
        : Optional.empty();
  }
}
