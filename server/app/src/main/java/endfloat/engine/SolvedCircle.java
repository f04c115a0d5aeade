package endfloat.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A circle of lines that one solve closes: what the equation reads rests on the unknown, and the
 * unknown is what the solve is for. The solve comes first, with the kind that its bracket gives the
 * unknown; the others follow it as lines of any kind do.
 *
 * @param members the names of the circle but for the solve's own, each after what it reads
 * @param needs what the solve and the lines between unknown and equation read from outside
 */
record SolvedCircle(List<Slot> members, List<Slot> needs) {

  /**
   * The solve that closes a circle.
   *
   * @return null where none does, or where it could be one or the other
   */
  static DefinitionNode closing(List<Node> circle) {
    List<DefinitionNode> able = new ArrayList<>();
    List<DefinitionNode> whole = new ArrayList<>();
    for (Node node : circle) {
      if (node instanceof DefinitionNode solve && solve.isSolved() && closes(solve, circle)) {
        able.add(solve);
        if (Components.of(without(solve, circle)).stream().noneMatch(Order::isCircle)) {
          whole.add(solve);
        }
      }
    }
    List<DefinitionNode> best = whole.isEmpty() ? able : whole;
    return best.size() == 1 ? best.get(0) : null;
  }

  /**
   * Whether all is known that it needs, once its unknowns are given. Another solve of the circle
   * may be for a name of its own only: one that varies an input would vary this unknown with it.
   */
  private static boolean closes(DefinitionNode solve, List<Node> circle) {
    for (Node other : circle) {
      if (other != solve && other.seeks().length > 0) {
        return false;
      }
    }
    Set<Node> inside = new HashSet<>(circle);
    for (Slot read : solve.bracketReads()) {
      if (inside.contains(read.giver())) {
        return false;
      }
    }
    return !Between.upstream(solve).contains(solve.giving());
  }

  static List<Node> without(Node solve, List<Node> circle) {
    List<Node> rest = new ArrayList<>(circle);
    rest.remove(solve);
    return rest;
  }

  static SolvedCircle of(DefinitionNode solve, List<Node> membersInOrder) {
    Set<Node> inside = new HashSet<>(membersInOrder);
    List<Slot> needs = new ArrayList<>();
    for (Slot slot : Between.upstream(solve)) {
      if (!inside.contains(slot.giver())) {
        needs.add(slot);
      }
    }
    return new SolvedCircle(membersInOrder.stream().map(Node::giving).toList(), needs);
  }

  /** Whether a line is one of the circle, the solve left out. */
  boolean holds(Node node) {
    return node.giving() != null && members.contains(node.giving());
  }

  boolean isUnchecked() {
    for (Slot member : members) {
      if (member.giver() != null && member.giver().isUnchecked()) {
        return true;
      }
    }
    return false;
  }

  void uncheck() {
    for (Slot member : members) {
      if (member.giver() != null) {
        member.giver().uncheck();
      }
    }
  }

  /**
   * Finds the kinds of the lines of the circle anew, from the one that its bracket gives the
   * unknown.
   *
   * @return whether those that the solve works through have one
   */
  boolean prepare(DefinitionNode solve, ValueGraph graph) {
    uncheck();
    for (Slot member : members) {
      member.giver().prepare(graph);
    }
    for (Slot sought : solve.seeks()) {
      if (sought.giver() != null && sought.kind() == null) {
        return false;
      }
    }
    for (Node between : Between.of(solve)) {
      if (between.isUnchecked()) {
        return false;
      }
    }
    return true;
  }
}
