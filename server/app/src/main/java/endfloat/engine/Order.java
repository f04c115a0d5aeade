package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.IdentityHashMap;
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
    IdentityHashMap<Node, Integer> open = new IdentityHashMap<>();
    ArrayDeque<Node> ready = new ArrayDeque<>();
    for (Node node : nodes) {
      node.cycle(List.of());
      node.circle(null);
      int count = node.countRests();
      open.put(node, count);
      if (count == 0) {
        ready.add(node);
      }
    }
    while (!ready.isEmpty()) {
      Node node = ready.poll();
      place(node);
      open.remove(node);
      follow(node, open, ready);
    }
    if (ordered.size() < nodes.size()) {
      List<Node> left = new ArrayList<>();
      nodes.stream().filter(open::containsKey).forEach(left::add);
      arrange(left);
    }
  }

  private void place(Node node) {
    node.rank(ordered.size());
    ordered.add(node);
  }

  private static void follow(
      Node node, IdentityHashMap<Node, Integer> open, ArrayDeque<Node> ready) {
    // a name given twice has no value, whatever its givers come to: nobody waits for them
    if (node.giving() == null || node.giving().giver() == null) {
      return;
    }
    for (Node reader : node.giving().readers()) {
      follow(reader, open, ready, open.get(reader));
    }
    for (Node seeker : node.giving().seekers()) {
      follow(seeker, open, ready, open.get(seeker));
    }
  }

  private static void follow(
      Node reader, IdentityHashMap<Node, Integer> open, ArrayDeque<Node> ready, Integer left) {
    if (left != null) {
      open.put(reader, left - 1);
      if (left == 1) {
        ready.add(reader);
      }
    }
  }

  /** What is left is in a circle, or rests on one. */
  private void arrange(List<Node> left) {
    for (List<Node> part : Components.of(left)) {
      DefinitionNode solve = isCircle(part) ? SolvedCircle.closing(part) : null;
      if (solve == null) {
        end(part);
        continue;
      }
      place(solve);
      List<Node> members = new ArrayList<>();
      for (List<Node> inner : Components.of(SolvedCircle.without(solve, part))) {
        end(inner);
        members.addAll(inner);
      }
      solve.circle(SolvedCircle.of(solve, members));
    }
  }

  /** Places a node, or the nodes of a circle that nothing closes. */
  private void end(List<Node> part) {
    if (isCircle(part)) {
      part.forEach(node -> node.cycle(cycle(node, new HashSet<>(part))));
    }
    part.forEach(this::place);
  }

  static boolean isCircle(List<Node> component) {
    Node first = component.get(0);
    return component.size() > 1 || first.restsOn().contains(first);
  }

  /** The shortest way from a node through what it rests on back to itself. */
  private static List<Slot> cycle(Node start, Set<Node> within) {
    java.util.Map<Node, Node> from = new java.util.HashMap<>();
    ArrayDeque<Node> next = new ArrayDeque<>();
    next.add(start);
    while (!next.isEmpty()) {
      Node node = next.poll();
      for (Node rest : node.restsOn()) {
        if (rest == start) {
          return way(node, from, start);
        }
        if (within.contains(rest) && !from.containsKey(rest)) {
          from.put(rest, node);
          next.add(rest);
        }
      }
    }
    throw new IllegalStateException("no circle through " + start.name());
  }

  private static List<Slot> way(Node last, java.util.Map<Node, Node> from, Node start) {
    List<Slot> way = new ArrayList<>();
    for (Node node = last; node != start; node = from.get(node)) {
      way.add(0, node.giving());
    }
    way.add(0, start.giving());
    return way;
  }
}
