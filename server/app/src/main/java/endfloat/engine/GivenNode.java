package endfloat.engine;

import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.List;
import java.util.Set;

/** One figure that a java clause gives. */
final class GivenNode extends Node {
  private final Give give;
  private final int place;
  private boolean lost;

  /**
   * @param place of it in the head, from 0
   */
  GivenNode(String clause, int place, Give give) {
    super(clause, place);
    this.give = give;
    this.place = place;
  }

  @Override
  String name() {
    return give.name();
  }

  @Override
  Set<String> namesRead() {
    return Set.of(RunNode.nameOf(clause()));
  }

  Give give() {
    return give;
  }

  @Override
  void check(ValueGraph graph) {
    found(give.kind(), give.unit().orElse(null), List.of());
  }

  /** It works while the run does. */
  @Override
  Figure.State unfed() {
    Node run = reads()[0].giver();
    return run != null && run.state() == Figure.State.WORKING
        ? Figure.State.WORKING
        : Figure.State.WAITING;
  }

  @Override
  Value evaluate(Frame frame) {
    Value.Ran ran = (Value.Ran) frame.of(reads()[0]);
    String why = ran.lost().get(place);
    lost = !why.isEmpty();
    if (lost) {
      frame.hint(new LineProblem(new Span(1, 1, 2), why, "", LineProblem.Severity.HINT));
    }
    return ran.given().get(place);
  }

  @Override
  String givesUncarried() {
    return lost ? give.name() : "";
  }

  /** Units of the columns of a table. */
  java.util.Map<String, endfloat.units.Unit> fieldUnits() {
    java.util.Map<String, endfloat.units.Unit> units = new java.util.LinkedHashMap<>();
    for (Give.Column column : give.columns()) {
      column.unit().ifPresent(unit -> units.put(column.name(), unit));
    }
    return units;
  }

  static List<Node> of(Clause.Java clause) {
    GivesHead head = GivesHead.of(clause.gives());
    List<Node> nodes = new java.util.ArrayList<>();
    nodes.add(new RunNode(clause, head));
    for (int i = 0; i < head.gives().size(); i++) {
      if (head.gives().get(i).isFigure()) {
        nodes.add(new GivenNode(clause.id(), i, head.gives().get(i)));
      }
    }
    return nodes;
  }
}
