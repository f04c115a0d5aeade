package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A name of the record: who gives it, who reads it, which limits are set on it. */
final class Slot {
  private final String name;
  private final List<Node> givers = new ArrayList<>(1);
  private Node only;
  private final Set<Node> readers = new LinkedHashSet<>();
  private final Set<Node> watchers = new LinkedHashSet<>(2);
  private final Set<Node> seekers = new LinkedHashSet<>(2);
  private Node[] inARow;

  Slot(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  /** Those that give it, as a rule one; not to be altered. */
  List<Node> givers() {
    return givers;
  }

  void addGiver(Node node) {
    givers.add(node);
    only = givers.size() == 1 ? node : null;
  }

  void removeGiver(Node node) {
    givers.remove(node);
    only = givers.size() == 1 ? givers.get(0) : null;
  }

  void replaceGiver(Node old, Node fresh) {
    givers.set(givers.indexOf(old), fresh);
    only = givers.size() == 1 ? fresh : null;
  }

  /** Those that read it; not to be altered. */
  Node[] readers() {
    if (inARow == null) {
      inARow = readers.toArray(new Node[0]);
    }
    return inARow;
  }

  void addReader(Node node) {
    readers.add(node);
    inARow = null;
  }

  void removeReader(Node node) {
    readers.remove(node);
    inARow = null;
  }

  /** Solves that are for this name without giving it: they ask for its kind, not its value. */
  Set<Node> seekers() {
    return seekers;
  }

  /** Solves that work this value out anew, so that a change of any kind concerns them. */
  Set<Node> watchers() {
    return watchers;
  }

  /** The one that gives it; null where none or several do. */
  Node giver() {
    return only;
  }

  /** Whether it is a column of a table. */
  boolean isColumn() {
    for (Node giver : givers) {
      if (giver.isColumn()) {
        return true;
      }
    }
    return false;
  }

  boolean isFresh() {
    return only != null && only.state() == Figure.State.FRESH;
  }

  Kind kind() {
    Node giver = giver();
    return giver == null ? null : giver.kind();
  }

  Unit unit() {
    Node giver = giver();
    return giver == null ? null : giver.unit();
  }

  Value value() {
    return only.value();
  }

  @Override
  public String toString() {
    return name;
  }
}
