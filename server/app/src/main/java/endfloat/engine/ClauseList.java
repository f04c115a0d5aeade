package endfloat.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The clauses of a record in their order, each with its nodes. */
final class ClauseList {
  private final Wiring wiring;
  private final ChangeList changes;
  private final Map<String, ClauseNodes> clauses = new LinkedHashMap<>();

  ClauseList(Wiring wiring, ChangeList changes) {
    this.wiring = wiring;
    this.changes = changes;
  }

  /** The nodes of a clause; null for a clause that is not there. */
  ClauseNodes get(String id) {
    return clauses.get(id);
  }

  /** All nodes in the order of the record. */
  List<Node> nodes() {
    List<Node> all = new ArrayList<>();
    for (ClauseNodes clause : clauses.values()) {
      all.addAll(clause.nodes());
    }
    return all;
  }

  String label(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    return nodes == null ? "" : nodes.label();
  }

  int place(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    return nodes == null ? -1 : nodes.place();
  }

  /** Takes the clauses as they are now. */
  void update(List<Clause> now) {
    if (!sameOrder(now)) {
      rearrange(now);
    }
    int place = 0;
    for (ClauseNodes nodes : clauses.values()) {
      Clause clause = now.get(place);
      nodes.stands(place++, clause.label());
      nodes.update(clause);
    }
  }

  private boolean sameOrder(List<Clause> now) {
    if (now.size() != clauses.size()) {
      return false;
    }
    int place = 0;
    for (ClauseNodes nodes : clauses.values()) {
      if (!nodes.id().equals(now.get(place++).id())) {
        return false;
      }
    }
    return true;
  }

  private void rearrange(List<Clause> now) {
    Map<String, ClauseNodes> before = new LinkedHashMap<>(clauses);
    clauses.clear();
    for (Clause clause : now) {
      ClauseNodes nodes = before.remove(clause.id());
      clauses.put(
          clause.id(), nodes != null ? nodes : new ClauseNodes(wiring, changes, clause.id()));
    }
    for (ClauseNodes gone : before.values()) {
      gone.clear();
      changes.clause(gone.id());
    }
    if (clauses.size() != now.size()) {
      throw new IllegalArgumentException("two clauses have the same id");
    }
  }
}
