package endfloat.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
   * Which fields of each name a line reads first: of {@code wear.lash} the field {@code lash}; an
   * empty one where the name stands alone. The unknowns of a solve are left out, as in {@link #of}.
   */
  public static Map<String, Set<String>> fields(Line line) {
    Map<String, Set<String>> fields = new LinkedHashMap<>();
    Set<String> names = of(line);
    names.forEach(name -> fields.put(name, new LinkedHashSet<>()));
    for (Expression.Place place : places(line)) {
      Set<String> known = fields.get(place.name());
      if (known != null) {
        known.add(place.fields().isEmpty() ? "" : place.fields().get(0));
      }
    }
    // what is not written as a place, such as the names of a correlation, is read whole
    fields.values().stream().filter(Set::isEmpty).forEach(known -> known.add(""));
    return fields;
  }

  /**
   * Names that a line reads only at stages that it names: of {@code pick(x, stage: "as left")} the
   * name x, unless it stands alone beside it.
   */
  public static Set<String> atStages(Line line) {
    Set<String> staged = new LinkedHashSet<>();
    Set<String> plain = new LinkedHashSet<>();
    expressions(line).forEach(root -> atStages(root, staged, plain));
    staged.removeAll(plain);
    return staged;
  }

  private static void atStages(Expression part, Set<String> staged, Set<String> plain) {
    List<Expression> inner = parts(part);
    if (part instanceof Expression.Place place) {
      plain.add(place.name());
    } else if (part instanceof Expression.Call call
        && call.function().equals("pick")
        && inner.size() > 1
        && inner.get(0) instanceof Expression.Place of
        && of.fields().isEmpty()
        && call.arguments().stream().anyMatch(a -> a.name().filter("stage"::equals).isPresent())) {
      staged.add(of.name());
      inner.subList(1, inner.size()).forEach(one -> atStages(one, staged, plain));
    } else {
      inner.forEach(one -> atStages(one, staged, plain));
    }
  }

  private static List<Expression.Place> places(Line line) {
    List<Expression.Place> places = new ArrayList<>();
    expressions(line).forEach(root -> places(root, places));
    return places;
  }

  /** The expressions of a line, each whole. */
  private static List<Expression> expressions(Line line) {
    List<Expression> roots = new ArrayList<>();
    if (line instanceof Line.Definition definition) {
      definition.value().ifPresent(roots::add);
      definition.spread().ifPresent(s -> spread(s, roots));
      definition.solve().ifPresent(s -> solve(s, roots));
    } else if (line instanceof Line.Limit limit) {
      roots.add(limit.place());
      limit.low().ifPresent(roots::add);
      limit.high().ifPresent(roots::add);
      limit.tolerance().ifPresent(t -> roots.addAll(List.of(t.nominal(), t.half())));
    } else if (line instanceof Line.Correlate correlate) {
      roots.add(correlate.coefficient());
    }
    return roots;
  }

  private static void spread(Line.Spread spread, List<Expression> roots) {
    roots.add(spread.half());
    spread.coverage().ifPresent(roots::add);
    spread.degrees().ifPresent(roots::add);
  }

  private static void solve(Line.Solve solve, List<Expression> roots) {
    solve.equations().forEach(e -> roots.addAll(List.of(e.left(), e.right())));
    solve.unknowns().forEach(u -> roots.addAll(List.of(u.low(), u.high())));
  }

  private static void places(Expression expression, List<Expression.Place> into) {
    if (expression instanceof Expression.Place place) {
      into.add(place);
    } else {
      parts(expression).forEach(part -> places(part, into));
    }
  }

  /** The expressions that one is directly made of. */
  private static List<Expression> parts(Expression expression) {
    if (expression instanceof Expression.Call call) {
      return call.arguments().stream().map(Expression.Argument::value).toList();
    }
    if (expression instanceof Expression.Unary unary) {
      return List.of(unary.operand());
    }
    if (expression instanceof Expression.Binary binary) {
      return List.of(binary.left(), binary.right());
    }
    if (expression instanceof Expression.Comparison comparison) {
      return comparison.operands();
    }
    if (expression instanceof Expression.Conditional conditional) {
      return List.of(conditional.condition(), conditional.then(), conditional.otherwise());
    }
    return expression instanceof Expression.Listing listing ? listing.elements() : List.of();
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
    } else {
      parts(expression).forEach(part -> collect(part, names));
    }
  }
}
