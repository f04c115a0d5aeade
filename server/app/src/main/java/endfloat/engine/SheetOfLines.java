package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.LineProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lines of the working language on their own, worked out once: what the command {@code work} does.
 *
 * @param results in the order of the lines; a record of results as {@code name.field}
 * @param errors by line and column
 * @param hints that leave every result standing
 */
public record SheetOfLines(
    List<Result> results, List<LineProblem> errors, List<LineProblem> hints) {

  /**
   * One result at full precision.
   *
   * @param value a Double, a String, a Boolean, or a list of these
   * @param unit symbol; null for a text or a truth
   * @param u standard uncertainty in the unit, a Double or a list of them; null for a text or a
   *     truth
   * @param verdict the worst; empty where there is no limit
   * @param figure that it is of
   */
  public record Result(
      String name, Object value, String unit, Object u, Optional<Verdict> verdict, Figure figure) {}

  public static SheetOfLines of(String text) {
    return of(text, GraphSettings.STANDARD);
  }

  public static SheetOfLines of(String text, GraphSettings settings) {
    Clause clause = new Clause.Working("work", "", text);
    return of(new GraphSource(List.of(clause), List.of(), settings));
  }

  /** Lines in a clause {@code work}, with readings beside it. */
  static SheetOfLines of(GraphSource source) {
    GraphSettings settings = source.settings();
    ValueGraph graph = ValueGraph.of(source);
    List<Result> results = new ArrayList<>();
    for (Figure figure : graph.figures().values()) {
      if (figure.state() == Figure.State.FRESH) {
        add(figure, settings, results);
      }
    }
    List<LineProblem> errors = new ArrayList<>();
    List<LineProblem> hints = new ArrayList<>();
    for (ClauseProblem problem : graph.problems("work")) {
      (problem.problem().severity() == LineProblem.Severity.ERROR ? errors : hints)
          .add(problem.problem());
    }
    return new SheetOfLines(results, errors, hints);
  }

  /** The result of a name or {@code name.field}. */
  public Optional<Result> result(String name) {
    return results.stream().filter(r -> r.name().equals(name)).findFirst();
  }

  private static void add(Figure figure, GraphSettings settings, List<Result> results) {
    Value value = figure.value().orElseThrow();
    if (value instanceof Value.Fields) {
      for (Figure.Element element : figure.elements()) {
        String name = figure.name() + "." + element.field();
        if (!(element.value() instanceof Value.Absent)) {
          Unit unit = unit(figure, Optional.of(element), settings);
          results.add(
              result(
                  name,
                  figure,
                  element.value(),
                  unit,
                  element.standardUncertainty(),
                  element.verdict()));
        }
      }
      return;
    }
    Unit unit = unit(figure, figure.elements().stream().findFirst(), settings);
    if (value instanceof Value.Series) {
      List<Object> values = new ArrayList<>();
      List<Object> uncertainties = new ArrayList<>();
      for (Figure.Element element : figure.elements()) {
        Result one =
            result(
                "", figure, element.value(), unit, element.standardUncertainty(), Optional.empty());
        values.add(one.value());
        uncertainties.add(one.u());
      }
      boolean numbers = !uncertainties.contains(null);
      results.add(
          new Result(
              figure.name(),
              values,
              numbers ? unit.symbol() : null,
              numbers ? uncertainties : null,
              figure.verdict(),
              figure));
      return;
    }
    results.add(
        result(figure.name(), figure, value, unit, figure.standardUncertainty(), figure.verdict()));
  }

  private static Unit unit(
      Figure figure, Optional<Figure.Element> element, GraphSettings settings) {
    Optional<Unit> declared = element.flatMap(Figure.Element::unit).or(figure::unit);
    return declared.isPresent()
        ? declared.get()
        : element
            .map(e -> FigureUnit.of(e.unit(), Shown.kind(figure, e), settings))
            .orElseGet(() -> FigureUnit.of(figure.unit(), figure.kind(), settings));
  }

  private static Result result(
      String name, Figure figure, Value value, Unit unit, double u, Optional<Verdict> verdict) {
    if (value instanceof Value.Scalar scalar) {
      return new Result(
          name,
          unit.fromSi(scalar.si()),
          unit.symbol(),
          u == 0 ? 0.0 : unit.interval().fromSi(u),
          verdict,
          figure);
    }
    Object plain =
        value instanceof Value.Truth truth
            ? (Object) truth.holds()
            : value instanceof Value.Words words ? words.text() : value.toString();
    return new Result(name, plain, null, null, verdict, figure);
  }
}
