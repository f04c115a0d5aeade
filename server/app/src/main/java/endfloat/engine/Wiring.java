package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Which line reads which name, in what order they are worked out, and what is to be done anew. */
final class Wiring {
  private final Map<String, Slot> slots = new HashMap<>();
  private final Map<String, Set<Node>> mentions = new HashMap<>();
  private final Set<CorrelateNode> correlating = new LinkedHashSet<>();
  private final ChangeList changes;
  private Map<Node, Set<Slot>> watching = Map.of();
  private Set<Node> touched = new LinkedHashSet<>();
  private List<Node> order = List.of();
  private boolean restructured;

  Wiring(ChangeList changes) {
    this.changes = changes;
  }

  /** The slot of a name; a name that nobody gives has one too, so that it is known who waits. */
  Slot slot(String name) {
    return slots.computeIfAbsent(name, Slot::new);
  }

  /** The slot of a name that someone gives or reads; null for any other. */
  Slot existing(String name) {
    return slots.get(name);
  }

  boolean isGiven(String name) {
    Slot slot = slots.get(name);
    return slot != null && !slot.givers().isEmpty();
  }

  Collection<Slot> slots() {
    return slots.values();
  }

  /** The names that the line of a name reads; none where it is not given once. */
  Set<String> namesReadBy(String name) {
    Slot slot = slots.get(name);
    Set<String> names = new LinkedHashSet<>();
    if (slot != null && slot.giver() != null) {
      for (Slot read : slot.giver().reads()) {
        names.add(read.name());
      }
    }
    return names;
  }

  /** Names of the values whose own line names one of these. */
  Set<String> namesThatRead(Collection<String> names) {
    Set<String> readers = new LinkedHashSet<>();
    for (String name : names) {
      Slot slot = slots.get(name);
      if (slot != null) {
        for (Node reader : slot.readers()) {
          readers.add(reader instanceof RunNode ? "" : reader.name());
        }
      }
    }
    readers.remove("");
    return readers;
  }

  Set<CorrelateNode> correlating() {
    return correlating;
  }

  /** All nodes, each after what it reads. */
  List<Node> order() {
    return order;
  }

  /** Takes a node in; it is worked out when the update settles. */
  void add(Node node) {
    if (!node.name().isEmpty()) {
      Slot slot = slot(node.name());
      node.giving(slot);
      slot.addGiver(node);
      contested(slot);
      readAnew(node);
    }
    mention(node);
    read(node, readsOf(node));
    node.seeks(seeks(node, node.namesRead()));
    for (Slot sought : node.seeks()) {
      sought.seekers().add(node);
    }
    if (node instanceof CorrelateNode correlate) {
      correlating.add(correlate);
    }
    restructured = true;
    touch(node);
  }

  /**
   * What a node reads as things stand: of {@code wear.lash} the column where there is one, else the
   * name before the point.
   */
  Slot[] readsOf(Node node) {
    Set<Slot> reads = new LinkedHashSet<>();
    for (String name : node.namesRead()) {
      boolean whole = false;
      for (String field : node.fieldsRead(name)) {
        Slot column = field.isEmpty() ? null : slots.get(name + "." + field);
        boolean isColumn = column != null && column.isColumn();
        whole |= !isColumn;
        if (isColumn) {
          reads.add(column);
        }
      }
      if (whole) {
        reads.add(slot(name));
      }
    }
    return reads.toArray(new Slot[0]);
  }

  private static void read(Node node, Slot[] reads) {
    for (Slot slot : reads) {
      slot.addReader(node);
    }
    node.reads(reads);
  }

  private void mention(Node node) {
    for (String name : node.namesRead()) {
      for (String field : node.fieldsRead(name)) {
        if (!field.isEmpty()) {
          mentions.computeIfAbsent(name + "." + field, n -> new LinkedHashSet<>()).add(node);
        }
      }
    }
  }

  private void forget(Node node) {
    for (String name : node.namesRead()) {
      for (String field : node.fieldsRead(name)) {
        Set<Node> mentioning = mentions.get(name + "." + field);
        if (mentioning != null) {
          mentioning.remove(node);
        }
      }
    }
  }

  /** A column has come or gone: those that name it read it, or no longer do. */
  private void readAnew(Node column) {
    if (!column.isColumn()) {
      return;
    }
    for (Node node : List.copyOf(mentions.getOrDefault(column.name(), Set.of()))) {
      for (Slot read : node.reads()) {
        read.removeReader(node);
      }
      read(node, readsOf(node));
      node.uncheck();
      touch(node);
    }
  }

  private Slot[] seeks(Node node, Set<String> reads) {
    List<Slot> seeks = new ArrayList<>();
    if (node instanceof DefinitionNode definition) {
      for (String unknown : definition.unknowns()) {
        if (!unknown.equals(definition.name()) && !reads.contains(unknown)) {
          seeks.add(slot(unknown));
        }
      }
    }
    return seeks.toArray(new Slot[0]);
  }

  /** Takes a node out. */
  void remove(Node node) {
    for (Slot read : node.reads()) {
      read.removeReader(node);
    }
    for (Slot sought : node.seeks()) {
      sought.seekers().remove(node);
    }
    if (node.giving() != null) {
      node.giving().removeGiver(node);
      contested(node.giving());
      readAnew(node);
    }
    forget(node);
    if (node instanceof CorrelateNode correlate) {
      correlating.remove(correlate);
    }
    changes.gone(node);
    touched.remove(node);
    restructured = true;
  }

  /**
   * Puts a node in the place of one that gives the same name and reads the same: the order stays as
   * it is.
   */
  void replace(Node old, Node fresh) {
    if (restructured || old.rank() < 0 || !standsFor(old, fresh)) {
      remove(old);
      add(fresh);
      return;
    }
    fresh.rank(old.rank());
    fresh.cycle(old.cycle());
    fresh.giving(old.giving());
    fresh.inherit(old);
    if (old.giving() != null) {
      old.giving().replaceGiver(old, fresh);
      touchWatchers(old.giving());
      for (Node reader : old.giving().readers()) {
        if (reader instanceof LimitNode) {
          // it is printed with the digits that are typed here
          changes.moved(reader);
        }
      }
    }
    for (Slot read : old.reads()) {
      read.removeReader(old);
      read.addReader(fresh);
    }
    fresh.reads(old.reads());
    forget(old);
    mention(fresh);
    changes.gone(old);
    order.set(fresh.rank(), fresh);
    touched.remove(old);
    touch(fresh);
  }

  private static boolean standsFor(Node old, Node fresh) {
    return old.name().equals(fresh.name())
        && old.isColumn() == fresh.isColumn()
        && old.namesRead().equals(fresh.namesRead())
        && old.namesRead().stream().allMatch(n -> old.fieldsRead(n).equals(fresh.fieldsRead(n)))
        && !(old instanceof CorrelateNode)
        && !(solves(old) || solves(fresh));
  }

  private static boolean solves(Node node) {
    return node instanceof DefinitionNode definition && definition.isSolved();
  }

  private void contested(Slot slot) {
    for (Node giver : slot.givers()) {
      giver.uncheck();
      touch(giver);
    }
    for (Node reader : slot.readers()) {
      reader.uncheck();
      touch(reader);
    }
    slot.watchers().forEach(Node::uncheck);
    touchWatchers(slot);
  }

  private void touchWatchers(Slot slot) {
    slot.watchers().forEach(this::touch);
  }

  /** It is to be worked out anew. */
  void touch(Node node) {
    touched.add(node);
  }

  /**
   * Brings the order up to date and gives out what was touched.
   *
   * @param nodes all of the record
   */
  void settle(java.util.function.Supplier<List<Node>> nodes, RankSet dirty) {
    if (restructured) {
      restructured = false;
      reorder(nodes.get());
    }
    for (Node node : touched) {
      boolean isIn =
          node.rank() >= 0 && node.rank() < order.size() && order.get(node.rank()) == node;
      if (isIn) {
        dirty.add(node.rank());
      }
    }
    touched = new LinkedHashSet<>();
  }

  private void reorder(List<Node> all) {
    Map<Node, List<Slot>> cycles = new HashMap<>();
    Map<Node, SolvedCircle> circles = new HashMap<>();
    for (Node node : all) {
      if (!node.cycle().isEmpty()) {
        cycles.put(node, node.cycle());
      }
      if (node.circle() != null) {
        circles.put(node, node.circle());
      }
    }
    order = new ArrayList<>(Order.of(all));
    for (Node node : all) {
      if (!node.cycle().equals(cycles.getOrDefault(node, List.of()))) {
        node.uncheck();
        touch(node);
      }
      if (!Objects.equals(node.circle(), circles.get(node))) {
        node.uncheck();
        touch(node);
      }
    }
    watch(all);
  }

  /**
   * A solve for an input of the record, or through other lines, works out anew what lies between
   * the input and its equations, so it depends on every line there and on all that those read, not
   * only on their present values, and on whether there is such an input.
   */
  private void watch(List<Node> all) {
    Map<Node, Set<Slot>> now = new HashMap<>();
    for (Node node : all) {
      if (node instanceof DefinitionNode definition && definition.isSolved()) {
        Set<Slot> seen = new HashSet<>();
        if (node.seeks().length > 0 || node.circle() != null) {
          seen.addAll(List.of(node.seeks()));
          seen.addAll(upstream(node));
        }
        if (node.circle() != null) {
          for (Slot member : node.circle().members()) {
            seen.add(member);
            seen.addAll(upstream(member.giver()));
          }
        }
        now.put(node, seen);
      }
    }
    watching.forEach((node, seen) -> seen.forEach(slot -> slot.watchers().remove(node)));
    now.forEach((node, seen) -> seen.forEach(slot -> slot.watchers().add(node)));
    for (Map.Entry<Node, Set<Slot>> one : now.entrySet()) {
      if (!one.getValue().equals(watching.get(one.getKey()))) {
        touch(one.getKey());
      }
    }
    watching = now;
  }

  /** All that a node rests on. */
  static Set<Slot> upstream(Node node) {
    Set<Slot> seen = new HashSet<>(List.of(node.reads()));
    ArrayDeque<Slot> next = new ArrayDeque<>(seen);
    while (!next.isEmpty()) {
      for (Node giver : next.poll().givers()) {
        for (Slot read : giver.reads()) {
          if (seen.add(read)) {
            next.add(read);
          }
        }
      }
    }
    return seen;
  }
}
