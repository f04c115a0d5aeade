package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Puts nodes so that each comes after what it reads, and finds those that read themselves. */
final class Order {
  private final List<Node> ordered = new ArrayList<>();

  /** All nodes, each after what it reads as far as there are no cycles; ranks are set. */
  static List<Node> of(Collection<Node> nodes) {
    Order order = new Order();
    order.sort(nodes);
    return order.ordered;
  }

  private void sort(Collection<Node> nodes) {
    java.util.Map<Node, Integer> open = new java.util.IdentityHashMap<>();
    ArrayDeque<Node> ready = new ArrayDeque<>();
    for (Node node : nodes) {
      node.cycle(List.of());
      int count = 0;
      for (Slot read : node.reads()) {
        count += read.givers().size();
      }
      open.put(node, count);
      if (count == 0) {
        ready.add(node);
      }
    }
    drain(open, ready);
    if (ordered.size() < nodes.size()) {
      cycles(nodes, open, ready);
      drain(open, ready);
    }
  }

  private void drain(java.util.Map<Node, Integer> open, ArrayDeque<Node> ready) {
    while (!ready.isEmpty()) {
      place(ready.poll(), open, ready);
    }
  }

  private void place(Node node, java.util.Map<Node, Integer> open, ArrayDeque<Node> ready) {
    node.rank(ordered.size());
    ordered.add(node);
    open.remove(node);
    if (node.giving() == null) {
      return;
    }
    for (Node reader : node.giving().readers()) {
      Integer left = open.get(reader);
      if (left != null) {
        open.put(reader, left - 1);
        if (left == 1) {
          ready.add(reader);
        }
      }
    }
  }

  /** Of what is left some nodes are in a cycle; the rest comes after those. */
  private void cycles(
      Collection<Node> nodes, java.util.Map<Node, Integer> open, ArrayDeque<Node> ready) {
    List<Node> cyclic = new ArrayList<>();
    for (Node node : nodes) {
      if (open.containsKey(node) && node.giving() != null) {
        node.cycle(cycle(node));
        if (!node.cycle().isEmpty()) {
          cyclic.add(node);
        }
      }
    }
    cyclic.forEach(open::remove);
    for (Node node : cyclic) {
      place(node, open, ready);
    }
  }

  /** The shortest way from a node through what it reads back to itself; empty for none. */
  private static List<Slot> cycle(Node start) {
    java.util.Map<Slot, Slot> from = new java.util.HashMap<>();
    ArrayDeque<Slot> next = new ArrayDeque<>();
    Set<Slot> seen = new HashSet<>();
    next.add(start.giving());
    while (!next.isEmpty()) {
      Slot slot = next.poll();
      for (Node giver : slot.givers()) {
        for (Slot read : giver.reads()) {
          if (read == start.giving()) {
            return way(slot, from, start.giving());
          }
          if (seen.add(read)) {
            from.put(read, slot);
            next.add(read);
          }
        }
      }
    }
    return List.of();
  }

  private static List<Slot> way(Slot last, java.util.Map<Slot, Slot> from, Slot start) {
    List<Slot> way = new ArrayList<>();
    for (Slot slot = last; slot != start; slot = from.get(slot)) {
      way.add(0, slot);
    }
    way.add(0, start);
    return way;
  }
}
