package endfloat.engine;

import endfloat.engine.Value.Fields;
import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.units.Unit;
import endfloat.working.CommentedLines;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes figures of nodes: the only place that says where a line stands now. */
final class FigureMaker {
  /** A series of no more elements is told whole at once. */
  private static final int FEW = 200;

  private final ValueGraph graph;
  private OwnNames words;

  FigureMaker(ValueGraph graph) {
    this.graph = graph;
  }

  /** A problem in the words of the record's side. */
  LineProblem said(LineProblem problem) {
    if (problem == null) {
      return null;
    }
    words = words == null ? new OwnNames(graph) : words;
    return words.said(problem);
  }

  /** The figures that some nodes give, in their order. */
  Map<String, Figure> figures(List<Node> nodes) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (Node node : nodes) {
      if (node.giving() != null && !(node instanceof TableNode) && !(node instanceof RunNode)) {
        figures.computeIfAbsent(node.name(), n -> figure(node.giving()));
      }
    }
    return figures;
  }

  Figure figure(Slot slot) {
    Node node = first(slot);
    Optional<Value> value = Optional.ofNullable(node.value());
    if (value.isEmpty() && node instanceof ReadingNode reading) {
      value = Optional.ofNullable(reading.readable());
    }
    List<Judgement> judgements = judgements(slot, true);
    Correlations together = graph.correlations();
    double u = value.map(v -> standardUncertainty(v, together)).orElse(0.0);
    return new Figure(
        slot.name(),
        node.clause(),
        span(node),
        node.state(),
        Optional.ofNullable(node.kind()),
        Optional.ofNullable(node.unit()),
        value,
        u,
        value.map(v -> degreesOfFreedom(v, u, together)).orElse(Double.POSITIVE_INFINITY),
        typed(node),
        node instanceof DefinitionNode d ? d.typedSpread() : Optional.empty(),
        elements(node, value, judgements),
        judgements,
        Optional.ofNullable(said(problem(node))),
        node.state() == Figure.State.WAITING ? new Waits(graph).of(node) : List.of(),
        node.hints().stream().map(h -> said(placed(node, h))).toList(),
        node instanceof DefinitionNode definition ? definition.definition().comment() : "");
  }

  private static double standardUncertainty(Value value, Correlations correlations) {
    return value instanceof Scalar scalar ? correlations.standardUncertainty(scalar.gradient()) : 0;
  }

  private static double degreesOfFreedom(Value value, double u, Correlations correlations) {
    return value instanceof Scalar scalar
        ? correlations.degreesOfFreedom(scalar.gradient(), u)
        : Double.POSITIVE_INFINITY;
  }

  private static int offset(Node node) {
    return node instanceof ReadingNode ? 0 : node.offset();
  }

  /** A problem where it stands: counted from the first line of the clause, or of its field. */
  private static LineProblem placed(Node node, LineProblem problem) {
    return node.fields() == null
        ? Places.moved(problem, offset(node))
        : node.fields().inField(problem);
  }

  static Span span(Node node) {
    return node instanceof DefinitionNode definition && node.fields() == null
        ? Places.moved(definition.line().span(), node.offset())
        : new Span(node.offset() + 1, 1, 1);
  }

  private static Optional<String> typed(Node node) {
    if (node instanceof DefinitionNode definition) {
      return definition.typed();
    }
    String text = node instanceof ReadingNode reading ? reading.typed(List.of()) : "";
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /**
   * The judgements of a value.
   *
   * @param decides those that are verdicts of the record, or those it is only compared with
   */
  List<Judgement> judgements(Slot slot, boolean decides) {
    List<LimitNode> limits = new ArrayList<>();
    for (Node reader : slot.readers()) {
      if (reader instanceof LimitNode limit
          && limit.decides() == decides
          && limit.judged().equals(slot.name())) {
        limits.add(limit);
      }
    }
    if (limits.isEmpty()) {
      return List.of();
    }
    limits.sort(byPlace());
    List<Judgement> all = new ArrayList<>();
    limits.forEach(limit -> all.addAll(limit.judgements()));
    return all;
  }

  private Comparator<Node> byPlace() {
    return Comparator.<Node>comparingInt(n -> graph.place(n.clause()))
        .thenComparingInt(Node::offset)
        .thenComparing(n -> n.getClass().getName());
  }

  private List<Figure.Element> elements(
      Node node, Optional<Value> value, List<Judgement> judgements) {
    List<Figure.Element> elements = new ArrayList<>();
    if (node instanceof TableNode) {
      return elements;
    }
    if (value.isPresent() && value.get() instanceof Series series) {
      return elements(node, series, judgements, graph.correlations());
    } else if (value.isPresent() && value.get() instanceof Fields fields) {
      Map<String, Unit> units =
          node instanceof DefinitionNode definition
              ? definition.fieldUnits()
              : node instanceof GivenNode given ? given.fieldUnits() : Map.of();
      for (int i = 0; i < fields.names().size(); i++) {
        String field = fields.names().get(i);
        elements.add(
            element(
                field,
                Map.of(),
                fields.values().get(i),
                Optional.ofNullable(units.get(field)),
                "",
                judgements.stream().filter(j -> j.field().equals(field)).toList(),
                graph.correlations()));
      }
    }
    return elements;
  }

  private static List<Figure.Element> elements(
      Node node, Series series, List<Judgement> judgements, Correlations correlations) {
    Optional<Unit> unit = Optional.ofNullable(node.unit());
    SeriesElements elements =
        new SeriesElements(
            series,
            judgements,
            (at, judged) -> {
              String typed =
                  node instanceof ReadingNode reading
                      ? reading.typed(series.labels().get(at))
                      : node instanceof ColumnNode column ? column.typed(at) : "";
              return element(
                  "",
                  series.labelsAt(at),
                  series.elements().get(at),
                  unit,
                  typed,
                  judged,
                  correlations);
            });
    // of a column of a hundred thousand rows a page looks at a few; what a reading has typed may
    // be another text tomorrow
    return node instanceof ReadingNode || series.size() <= FEW ? List.copyOf(elements) : elements;
  }

  private static Figure.Element element(
      String field,
      Map<String, String> station,
      Value value,
      Optional<Unit> unit,
      String typed,
      List<Judgement> judgements,
      Correlations correlations) {
    double u = standardUncertainty(value, correlations);
    return new Figure.Element(
        field,
        station,
        value,
        u,
        degreesOfFreedom(value, u, correlations),
        unit,
        typed.isEmpty() ? Optional.empty() : Optional.of(typed),
        judgements,
        within(value).stream().map(v -> standardUncertainty(v, correlations)).toList());
  }

  private static List<Value> within(Value value) {
    return value instanceof Series series
        ? series.elements()
        : value instanceof Fields fields ? fields.values() : List.of();
  }

  /** The giver that stands first in the record. */
  Node first(Slot slot) {
    Node only = slot.giver();
    return only != null ? only : slot.givers().stream().min(byPlace()).orElseThrow();
  }

  /** What is wrong with a node, said of the places as they are now; null for nothing. */
  private LineProblem problem(Node node) {
    if (graph.isDoubled(node)) {
      List<String> places =
          node.giving().givers().stream().sorted(byPlace()).map(this::place).toList();
      return LineProblem.error(
          span(node),
          "The name " + node.name() + " is defined twice: " + String.join(" and ", places) + ".",
          "Give one of them another name, or take it out.");
    }
    if (!node.cycle().isEmpty()) {
      List<String> names = node.cycle().stream().map(Slot::name).toList();
      return LineProblem.error(
          span(node),
          names.size() == 1
              ? "The value " + names.get(0) + " rests on itself."
              : "These rest on one another in a circle: "
                  + String.join(", ", names)
                  + ", "
                  + names.get(0)
                  + ".",
          solvesOf(node) > 1
              ? "Solve for all of them in one line, with an equation for each."
              : "Give one of them a value of its own, or solve for it.");
    }
    return node.problem() == null ? null : placed(node, node.problem());
  }

  private static long solvesOf(Node node) {
    return node.cycle().stream()
        .filter(s -> s.giver() instanceof DefinitionNode definition && definition.isSolved())
        .count();
  }

  private String place(Node node) {
    return Places.words(graph.label(node.clause()), span(node).line());
  }

  /** All that is wrong or worth a hint in a clause, in its order. */
  List<ClauseProblem> problems(ClauseNodes clause) {
    List<ClauseProblem> all = found(clause.nodes());
    CommentedLines.in(clause.text(), graph.scope())
        .forEach(p -> all.add(new ClauseProblem(clause.id(), "", p)));
    all.replaceAll(one -> new ClauseProblem(one.clause(), one.at(), said(one.problem())));
    return all;
  }

  private List<ClauseProblem> found(List<Node> nodes) {
    List<ClauseProblem> all = new ArrayList<>();
    for (Node node : nodes) {
      if (node.fields() != null) {
        fieldProblems(node, all);
      } else if (node instanceof ColumnNode column) {
        columnProblems(column, all);
      } else if (node instanceof TableNode && !graph.isDoubled(node)) {
        // what is wrong with a table is said of its columns
      } else if (node instanceof RunNode run) {
        runProblems(run, all);
      } else if (node instanceof ReadingNode reading) {
        readingProblems(reading, all);
      } else if (node instanceof BrokenNode broken && !graph.isDoubled(node)) {
        broken.problems().forEach(p -> add(node, Places.moved(p, node.offset()), all));
      } else {
        LineProblem problem = problem(node);
        if (problem != null) {
          add(node, problem, all);
        } else if (node instanceof CorrelateNode correlate && correlate.refusal() != null) {
          add(node, Places.moved(correlate.refusal(), node.offset()), all);
        }
        node.hints().forEach(h -> add(node, Places.moved(h, node.offset()), all));
      }
    }
    return all;
  }

  private void fieldProblems(Node node, List<ClauseProblem> all) {
    FieldPlaces fields = node.fields();
    List<LineProblem> raw = new ArrayList<>();
    if (node instanceof BrokenNode broken) {
      raw.addAll(broken.problems());
    } else if (graph.isDoubled(node) || !node.cycle().isEmpty()) {
      LineProblem problem = problem(node);
      all.add(new ClauseProblem(node.clause(), fields.at(problem), problem));
    } else if (node.problem() != null) {
      raw.add(node.problem());
    }
    raw.addAll(node.hints());
    raw.forEach(p -> all.add(new ClauseProblem(node.clause(), fields.at(p), fields.inField(p))));
  }

  private void readingProblems(ReadingNode reading, List<ClauseProblem> all) {
    String at = "/readings/" + reading.offset();
    List<EntryProblem> entries = reading.entryProblems();
    entries.forEach(e -> all.add(new ClauseProblem(e.clause(), e.at(), e.problem())));
    LineProblem problem = problem(reading);
    if (problem != null && entries.isEmpty()) {
      all.add(new ClauseProblem(reading.clause(), at, problem));
    }
    reading.hints().forEach(h -> all.add(new ClauseProblem(reading.clause(), at, h)));
  }

  /** At a line of the source, or of the clause as a whole, as when its process has ended. */
  private static ClauseProblem ofSource(RunNode run, LineProblem problem) {
    boolean isWhole = problem.span().equals(RunNode.WHOLE);
    return new ClauseProblem(run.clause(), isWhole ? "" : "/text", problem);
  }

  private void runProblems(RunNode run, List<ClauseProblem> all) {
    run.headProblems().forEach(p -> all.add(new ClauseProblem(run.clause(), "/gives", p)));
    LineProblem problem = problem(run);
    if (problem != null && run.headProblems().isEmpty()) {
      all.add(ofSource(run, problem));
    }
    run.hints().forEach(h -> all.add(ofSource(run, h)));
  }

  private void columnProblems(ColumnNode column, List<ClauseProblem> all) {
    List<EntryProblem> entries = column.entryProblems();
    entries.forEach(e -> all.add(new ClauseProblem(e.clause(), e.at(), e.problem())));
    LineProblem problem = problem(column);
    if (problem != null && entries.isEmpty() && !column.saysItElsewhere()) {
      all.add(new ClauseProblem(column.clause(), column.at(), problem));
    }
    column.hints().forEach(h -> all.add(new ClauseProblem(column.clause(), column.at(), h)));
  }

  private static void add(Node node, LineProblem problem, List<ClauseProblem> all) {
    all.add(new ClauseProblem(node.clause(), "", problem));
  }
}
