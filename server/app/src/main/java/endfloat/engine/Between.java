package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a trial works through: the lines between what is tried and what follows from it. */
final class Between {
  private Between() {}

  /** All that a solve rests on, its unknowns being given. */
  static Set<Slot> upstream(DefinitionNode solve) {
    Set<Slot> given = solve.unknownSlots();
    Set<Slot> seen = new LinkedHashSet<>();
    ArrayDeque<Slot> next = new ArrayDeque<>();
    for (Slot read : solve.reads()) {
      if (!given.contains(read) && seen.add(read)) {
        next.add(read);
      }
    }
    while (!next.isEmpty()) {
      for (Node giver : next.poll().givers()) {
        for (Slot read : giver.feeds()) {
          if (!given.contains(read) && seen.add(read)) {
            next.add(read);
          }
        }
      }
    }
    return seen;
  }

  /** The lines to work out anew for each trial of the unknowns, each after what it reads. */
  static List<Node> of(DefinitionNode solve) {
    return moved(new HashSet<>(solve.unknownSlots()), upstream(solve));
  }

  /**
   * The lines among some names that move with others, each after what it reads.
   *
   * @param moving what moves; the names of the lines are added
   */
  static List<Node> moved(Set<Slot> moving, Set<Slot> among) {
    List<Node> upstream = new ArrayList<>();
    for (Slot slot : among) {
      if (slot.giver() != null) {
        upstream.add(slot.giver());
      }
    }
    upstream.sort(Comparator.comparingInt(Node::rank));
    List<Node> between = new ArrayList<>();
    for (Node needed : upstream) {
      boolean moves = false;
      for (Slot read : needed.feeds()) {
        moves |= moving.contains(read);
      }
      if (moves) {
        moving.add(needed.giving());
        between.add(needed);
      }
    }
    return between;
  }
}
