package endfloat.working;

import java.util.LinkedHashSet;
import java.util.Set;

/** Which names a line or an expression reads. */
public final class References {
  private References() {}

  public static Set<String> of(Expression expression) {
    Set<String> names = new LinkedHashSet<>();
    collect(expression, names);
    return names;
  }

  /**
   * Every name that a line reads. The unknowns of a solve are not read but given, so they are left
   * out here even where the equations write them.
   */
  public static Set<String> of(Line line) {
    Set<String> names = new LinkedHashSet<>();
    if (line instanceof Line.Definition definition) {
      definition.value().ifPresent(v -> collect(v, names));
      definition.spread().ifPresent(s -> collectSpread(s, names));
      definition.solve().ifPresent(s -> collectSolve(s, names));
    } else if (line instanceof Line.Limit limit) {
      collect(limit.place(), names);
      limit.low().ifPresent(e -> collect(e, names));
      limit.high().ifPresent(e -> collect(e, names));
      limit
          .tolerance()
          .ifPresent(
              t -> {
                collect(t.nominal(), names);
                collect(t.half(), names);
              });
    } else if (line instanceof Line.Correlate correlate) {
      names.add(correlate.first());
      names.add(correlate.second());
      collect(correlate.coefficient(), names);
    }
    return names;
  }

  private static void collectSpread(Line.Spread spread, Set<String> names) {
    collect(spread.half(), names);
    spread.coverage().ifPresent(e -> collect(e, names));
    spread.degrees().ifPresent(e -> collect(e, names));
  }

  private static void collectSolve(Line.Solve solve, Set<String> names) {
    for (Line.Equation equation : solve.equations()) {
      collect(equation.left(), names);
      collect(equation.right(), names);
    }
    for (Line.Unknown unknown : solve.unknowns()) {
      names.remove(unknown.name());
    }
    for (Line.Unknown unknown : solve.unknowns()) {
      collect(unknown.low(), names);
      collect(unknown.high(), names);
    }
  }

  private static void collect(Expression expression, Set<String> names) {
    if (expression instanceof Expression.Place place) {
      if (!place.name().equals("pi")) {
        names.add(place.name());
      }
    } else if (expression instanceof Expression.Call call) {
      call.arguments().forEach(a -> collect(a.value(), names));
    } else if (expression instanceof Expression.Unary unary) {
      collect(unary.operand(), names);
    } else if (expression instanceof Expression.Binary binary) {
      collect(binary.left(), names);
      collect(binary.right(), names);
    } else if (expression instanceof Expression.Comparison comparison) {
      comparison.operands().forEach(o -> collect(o, names));
    } else if (expression instanceof Expression.Conditional conditional) {
      collect(conditional.condition(), names);
      collect(conditional.then(), names);
      collect(conditional.otherwise(), names);
    } else if (expression instanceof Expression.Listing listing) {
      listing.elements().forEach(e -> collect(e, names));
    }
  }
}
