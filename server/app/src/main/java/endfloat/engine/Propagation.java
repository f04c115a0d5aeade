package endfloat.engine;

/** Works out what an update has touched and what follows from it, each line after what it reads. */
final class Propagation {
  private final ValueGraph graph;
  private final Wiring wiring;
  private final Evaluation evaluation;
  private final ChangeList changes;
  private final RankSet dirty = new RankSet();

  Propagation(ValueGraph graph, Wiring wiring, Evaluation evaluation, ChangeList changes) {
    this.graph = graph;
    this.wiring = wiring;
    this.evaluation = evaluation;
    this.changes = changes;
  }

  /** Until nothing is left to be worked out anew. */
  void settle(ClauseList clauses) {
    wiring.settle(clauses::nodes, dirty);
    propagate();
    while (correlate()) {
      propagate();
    }
    evaluation.dropWorkOf(owner -> wiring.isGiven(owner));
  }

  /** Those in a circle may come up again. */
  private void propagate() {
    for (int at = dirty.take(); at >= 0; at = dirty.take()) {
      Node node = wiring.order().get(at);
      Node.Change change = node.update(graph);
      if (change != Node.Change.NONE) {
        spread(node, change);
      }
      if (node.circle() != null) {
        node.circle().members().forEach(member -> dirty.add(member.giver().rank()));
      }
    }
  }

  private void spread(Node node, Node.Change change) {
    changes.add(node);
    Slot slot = node.giving();
    if (slot == null || change == Node.Change.WORDS) {
      return;
    }
    for (Node reader : slot.readers()) {
      pass(node, change, reader);
    }
    for (Node watcher : slot.watchers()) {
      pass(node, change, watcher);
    }
  }

  /** A solve comes before the lines of its circle and does not follow from them. */
  private void pass(Node node, Node.Change change, Node reader) {
    if (reader.leads(node)) {
      return;
    }
    // what a solve has found out before their turn stands
    if (change == Node.Change.KIND && !node.leads(reader)) {
      reader.uncheck();
    }
    dirty.add(reader.rank());
  }

  /** Takes up the correlations; whether anything must be worked out again for them. */
  private boolean correlate() {
    if (wiring.correlating().isEmpty() && evaluation.correlations().isEmpty()) {
      return false;
    }
    CorrelationGroups groups = CorrelationGroups.of(wiring.correlating());
    for (CorrelateNode node : groups.changedRefusals()) {
      changes.clause(node.clause());
    }
    Correlations now = groups.correlations();
    Correlations before = evaluation.correlations();
    if (now.pairs().equals(before.pairs())) {
      return false;
    }
    evaluation.correlations(now);
    for (Node node : wiring.order()) {
      if (node.giving() == null
          ? node instanceof LimitNode
          : touches(node.value(), before) || touches(node.value(), now)) {
        dirty.add(node.rank());
        changes.moved(node);
      }
    }
    return !dirty.isEmpty();
  }

  private static boolean touches(Value value, Correlations correlations) {
    if (value instanceof Value.Scalar scalar) {
      return correlations.touch(scalar.gradient());
    }
    if (value instanceof Value.Series series) {
      return series.elements().stream().anyMatch(e -> touches(e, correlations));
    }
    return value instanceof Value.Fields fields
        && fields.values().stream().anyMatch(e -> touches(e, correlations));
  }
}
