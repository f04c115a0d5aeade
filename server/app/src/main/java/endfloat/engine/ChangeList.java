package endfloat.engine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What one update changes, as it goes along. */
final class ChangeList {
  private long update;
  private Set<String> names = new LinkedHashSet<>();
  private Set<String> clauses = new LinkedHashSet<>();
  private List<Node> nodes = new ArrayList<>();

  /**
   * Fresh sets: one that once held a whole record takes as long to clear as a whole record does.
   */
  void begin() {
    update++;
    names = new LinkedHashSet<>();
    clauses = new LinkedHashSet<>();
    nodes = new ArrayList<>();
  }

  /** A node was worked out and is different. */
  void add(Node node) {
    if (node.changedIn() != update) {
      node.changedIn(update);
      nodes.add(node);
    }
  }

  /** A node was taken out, or another put in its place. */
  void gone(Node node) {
    moved(node);
    clauses.add(node.clause());
  }

  /** A node stands at another place now. */
  void moved(Node node) {
    if (node instanceof RunNode) {
      clauses.add(node.clause());
      return;
    }
    String name = node instanceof LimitNode limit ? limit.judged() : node.name();
    if (!name.isEmpty()) {
      names.add(name);
    }
  }

  void clause(String id) {
    clauses.add(id);
  }

  List<Node> nodes() {
    return nodes;
  }

  ValueGraph.Changed taken() {
    nodes.forEach(this::gone);
    return new ValueGraph.Changed(Set.copyOf(names), Set.copyOf(clauses));
  }
}
