package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Nodes that rest on one another, together (strongly connected components, by Tarjan's algorithm),
 * each component after those it rests on. Without recursion: a chain may be as long as a record.
 */
final class Components {
  private final IdentityHashMap<Node, Visit> visits = new IdentityHashMap<>();
  private final ArrayDeque<Visit> open = new ArrayDeque<>();
  private final List<List<Node>> found = new ArrayList<>();

  private static final class Visit {
    final Node node;
    List<Node> rests = List.of();
    int next;
    int number = -1;
    int lowest;
    boolean isOpen;

    Visit(Node node) {
      this.node = node;
    }
  }

  private Components(Collection<Node> nodes) {
    nodes.forEach(n -> visits.put(n, new Visit(n)));
  }

  /** The components of these nodes; what else they rest on is left out of account. */
  static List<List<Node>> of(Collection<Node> nodes) {
    Components components = new Components(nodes);
    int numbered = 0;
    for (Node node : nodes) {
      Visit visit = components.visits.get(node);
      if (visit.number < 0) {
        numbered = components.from(visit, numbered);
      }
    }
    return components.found;
  }

  private int from(Visit start, int from) {
    int numbered = from;
    ArrayDeque<Visit> way = new ArrayDeque<>();
    begin(start, numbered++, way);
    while (!way.isEmpty()) {
      Visit here = way.peek();
      if (here.next < here.rests.size()) {
        Visit there = visits.get(here.rests.get(here.next++));
        if (there != null && there.number < 0) {
          begin(there, numbered++, way);
        } else if (there != null && there.isOpen) {
          here.lowest = Math.min(here.lowest, there.number);
        }
      } else {
        way.pop();
        if (!way.isEmpty()) {
          way.peek().lowest = Math.min(way.peek().lowest, here.lowest);
        }
        if (here.lowest == here.number) {
          close(here);
        }
      }
    }
    return numbered;
  }

  private void begin(Visit visit, int number, ArrayDeque<Visit> way) {
    visit.number = number;
    visit.lowest = number;
    visit.rests = visit.node.restsOn();
    visit.isOpen = true;
    open.push(visit);
    way.push(visit);
  }

  private void close(Visit first) {
    List<Node> component = new ArrayList<>(1);
    Visit last;
    do {
      last = open.pop();
      last.isOpen = false;
      component.add(last.node);
    } while (last != first);
    found.add(component);
  }
}
