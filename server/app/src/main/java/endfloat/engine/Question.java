package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.Expression;
import endfloat.working.Kind;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Parser;
import endfloat.working.References;
import endfloat.working.Span;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An expression that is asked of a graph without being a line of it: the graph stays as it is, and
 * nothing tells the asker that the answer has changed.
 */
public final class Question {
  private final ValueGraph graph;
  private final String field;
  private final DefinitionNode node;

  private Question(ValueGraph graph, String field, DefinitionNode node) {
    this.graph = graph;
    this.field = field;
    this.node = node;
  }

  /**
   * Reads an expression.
   *
   * @param field JSON Pointer to where it was entered, for problems
   * @throws QuestionRefusedException if it means nothing in this graph
   */
  public static Question of(ValueGraph graph, String field, String expression) {
    if (expression.isBlank()) {
      throw refused(field, "Nothing is entered here.", "Write a name or an expression.");
    }
    FieldLine line =
        new FieldLine.Stated(
            "asked.",
            "",
            new FieldLine.Entered(field, ""),
            new FieldLine.Entered(field, expression));
    Node read = FieldNodes.of("", 0, line).get(0);
    if (read instanceof BrokenNode broken) {
      throw new QuestionRefusedException(field, read.fields().inField(broken.problems().get(0)));
    }
    DefinitionNode node = (DefinitionNode) read;
    node.reads(graph.readsOf(node));
    if (!graph.kindsKnown(node.reads())) {
      throw waiting(field, node.reads());
    }
    try {
      node.check(graph);
    } catch (LineFailure e) {
      throw new QuestionRefusedException(field, node.fields().inField(e.problem()));
    }
    return new Question(graph, field, node);
  }

  /** What an expression rests on, as far as it can be read. */
  public static Set<String> names(ValueGraph graph, String expression) {
    Set<String> names = new LinkedHashSet<>();
    Parser.expression(expression)
        .expression()
        .ifPresent(
            read -> {
              for (String name : References.of(read)) {
                names.add(name);
                graph
                    .existing(name)
                    .ifPresent(
                        slot ->
                            slot.givers()
                                .forEach(
                                    giver ->
                                        Wiring.upstream(giver)
                                            .forEach(above -> names.add(above.name()))));
              }
            });
    return names;
  }

  /** A refusal of what was entered in a field. */
  public static QuestionRefusedException refused(String field, String message, String wayOut) {
    return new QuestionRefusedException(
        field, LineProblem.error(new Span(1, 1, 1), message, wayOut));
  }

  private static QuestionRefusedException waiting(String field, Slot[] reads) {
    Set<String> names = new LinkedHashSet<>();
    for (Slot read : reads) {
      if (!read.isFresh()) {
        names.add(read.name());
      }
    }
    return new QuestionRefusedException(
        field,
        new LineProblem(
            new Span(1, 1, 1),
            "It waits for " + String.join(", ", names) + ".",
            "",
            LineProblem.Severity.HINT));
  }

  public Kind kind() {
    return node.kind();
  }

  /** Declared or typed in; empty where none is known. */
  public Optional<Unit> unit() {
    return Optional.ofNullable(node.unit());
  }

  /**
   * Its value now.
   *
   * @throws QuestionRefusedException if it has none
   */
  public Value value() {
    for (Slot read : node.reads()) {
      if (!node.isFedBy(read)) {
        throw waiting(field, node.reads());
      }
    }
    return value(graph.evaluation());
  }

  Value value(Frame frame) {
    try {
      return node.tried(new Overlay(frame, "to draw"));
    } catch (LineFailure e) {
      throw new QuestionRefusedException(field, node.fields().inField(e.problem()));
    }
  }

  /**
   * Its value now, a single number.
   *
   * @throws QuestionRefusedException if it is not one
   */
  public Value.Scalar number() {
    if (value() instanceof Value.Scalar scalar) {
      return scalar;
    }
    throw refused(field, "This is not a single number.", "Pick one, or reduce it: max, min, mean.");
  }

  /** The name or field that it is, and nothing else; empty for a longer expression. */
  public Optional<Expression.Place> place() {
    return ((Line.Definition) node.line())
        .value()
        .filter(Expression.Place.class::isInstance)
        .map(Expression.Place.class::cast);
  }

  /** The judgements of the figure that it names; none where it names none. */
  public List<Judgement> judgements() {
    if (place().isEmpty()) {
      return List.of();
    }
    Expression.Place place = place().get();
    List<String> fields = place.fields();
    String name = place.name();
    if (!fields.isEmpty() && graph.column(name + "." + fields.get(0)).isPresent()) {
      name = name + "." + fields.get(0);
      fields = fields.subList(1, fields.size());
    }
    String of = String.join(".", fields);
    return graph.figure(name).stream()
        .map(Figure::judgements)
        .flatMap(Collection::stream)
        .filter(j -> j.field().equals(of))
        .toList();
  }

  /** All names that the value rests on, whatever they are now. */
  public Set<String> restsOn() {
    Set<String> names = new LinkedHashSet<>();
    names.addAll(node.namesRead());
    Wiring.upstream(node).forEach(slot -> names.add(slot.name()));
    return names;
  }

  ValueGraph graph() {
    return graph;
  }

  String field() {
    return field;
  }

  DefinitionNode node() {
    return node;
  }
}
