package endfloat.engine;

import endfloat.record.Reading;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Working;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The nodes of one clause. A new text keeps every node whose own text is as it was. */
final class ClauseNodes {
  private final Wiring wiring;
  private final ChangeList changes;
  private final String id;
  private int place;
  private String label = "";
  private Clause clause;
  private List<Group> groups = List.of();
  private List<Node> nodes = List.of();

  /** What one statement or one reading gives: as a rule one node. */
  private record Group(Object source, List<Node> nodes) {}

  ClauseNodes(Wiring wiring, ChangeList changes, String id) {
    this.wiring = wiring;
    this.changes = changes;
    this.id = id;
  }

  String id() {
    return id;
  }

  /** Where the clause stands in the record, and how it is cited. */
  void stands(int at, String cited) {
    place = at;
    label = cited;
  }

  int place() {
    return place;
  }

  String label() {
    return label;
  }

  List<Node> nodes() {
    return nodes;
  }

  /** The lines of a working; empty for any other clause. */
  String text() {
    return clause instanceof Clause.Working working ? working.text() : "";
  }

  /** The statements that can be read, each at its place. */
  List<ValueGraph.PlacedLine> lines() {
    List<ValueGraph.PlacedLine> lines = new ArrayList<>();
    for (Node node : nodes) {
      if (node instanceof LineNode line) {
        lines.add(new ValueGraph.PlacedLine(node.offset(), line.piece().text(), line.line()));
      }
    }
    return lines;
  }

  void clear() {
    nodes.forEach(wiring::remove);
    nodes = List.of();
    groups = List.of();
    clause = null;
  }

  void update(Clause now) {
    if (now == clause) {
      return;
    }
    boolean same = sameSource(now);
    clause = now;
    if (same) {
      return;
    }
    Map<Object, ArrayDeque<Group>> kept = new HashMap<>();
    for (Group group : groups) {
      kept.computeIfAbsent(group.source(), k -> new ArrayDeque<>()).add(group);
    }
    List<Node> added = new ArrayList<>();
    List<Group> fresh = new ArrayList<>();
    if (now instanceof Clause.Working working) {
      for (Piece piece : Piece.of(working.text())) {
        if (!piece.text().isBlank()) {
          Group group = keep(kept, piece.text(), piece.firstLine());
          fresh.add(group != null ? group : make(piece.text(), added, () -> read(piece)));
        }
      }
    } else if (now instanceof Clause.Fields fields) {
      for (int i = 0; i < fields.lines().size(); i++) {
        FieldLine line = fields.lines().get(i);
        int place = i;
        Group group = keep(kept, line, place);
        fresh.add(group != null ? group : make(line, added, () -> FieldNodes.of(id, place, line)));
      }
    } else if (now instanceof Clause.Table table) {
      for (int i = 0; i < table.parts().size(); i++) {
        TablePart part = table.parts().get(i);
        int place = i;
        Group group = keep(kept, part, place);
        fresh.add(group != null ? group : make(part, added, () -> TableNodes.of(id, place, part)));
      }
    } else if (now instanceof Clause.Java java) {
      fresh.add(make(java, added, () -> GivenNode.of(java)));
    } else {
      List<Reading> readings = ((Clause.Readings) now).readings();
      for (int i = 0; i < readings.size(); i++) {
        Reading reading = readings.get(i);
        int place = i;
        Group group = keep(kept, reading, place);
        fresh.add(
            group != null
                ? group
                : make(reading, added, () -> List.of(new ReadingNode(id, place, reading))));
      }
    }
    List<Node> old = new ArrayList<>();
    kept.values().forEach(q -> q.forEach(group -> old.addAll(group.nodes())));
    exchange(old, added);
    groups = fresh;
    nodes = new ArrayList<>();
    groups.forEach(group -> nodes.addAll(group.nodes()));
  }

  private boolean sameSource(Clause now) {
    if (now instanceof Clause.Fields a && clause instanceof Clause.Fields b) {
      return a.lines().equals(b.lines());
    }
    if (now instanceof Clause.Working a && clause instanceof Clause.Working b) {
      return a.text().equals(b.text());
    }
    if (now instanceof Clause.Table a && clause instanceof Clause.Table b) {
      return a.parts().equals(b.parts());
    }
    if (now instanceof Clause.Java a && clause instanceof Clause.Java b) {
      return a.gives().equals(b.gives()) && a.text().equals(b.text());
    }
    return now instanceof Clause.Readings a
        && clause instanceof Clause.Readings b
        && a.readings().equals(b.readings());
  }

  /** The group that had this source, moved to its new place; null for none. Equal ones in order. */
  private Group keep(Map<Object, ArrayDeque<Group>> kept, Object source, int place) {
    ArrayDeque<Group> same = kept.get(source);
    Group group = same == null ? null : same.poll();
    if (group != null) {
      for (Node node : group.nodes()) {
        if (node.offset() != place) {
          node.moveTo(place);
          changes.moved(node);
        }
      }
    }
    return group;
  }

  private static Group make(Object source, List<Node> added, Supplier<List<Node>> maker) {
    List<Node> made = maker.get();
    added.addAll(made);
    return new Group(source, made);
  }

  /** Puts each new node in the place of the old one that it stands for, where there is one. */
  private void exchange(List<Node> old, List<Node> added) {
    Map<Object, ArrayDeque<Node>> byFace = new HashMap<>();
    for (Node node : old) {
      byFace.computeIfAbsent(face(node), f -> new ArrayDeque<>()).add(node);
    }
    List<Node> unmatched = new ArrayList<>();
    List<Node[]> pairs = new ArrayList<>();
    for (Node fresh : added) {
      ArrayDeque<Node> alike = byFace.get(face(fresh));
      Node before = alike == null ? null : alike.poll();
      if (before == null) {
        unmatched.add(fresh);
      } else {
        pairs.add(new Node[] {before, fresh});
      }
    }
    pairs.forEach(pair -> wiring.replace(pair[0], pair[1]));
    byFace.values().forEach(left -> left.forEach(wiring::remove));
    unmatched.forEach(wiring::add);
  }

  private static Object face(Node node) {
    return List.of(node.getClass(), node.name(), node.namesRead());
  }

  private List<Node> read(Piece piece) {
    Working working = piece.parse();
    List<LineProblem> errors = new ArrayList<>();
    List<LineProblem> remarks = new ArrayList<>();
    for (LineProblem problem : working.problems()) {
      (problem.severity() == LineProblem.Severity.ERROR ? errors : remarks).add(problem);
    }
    List<Node> made = new ArrayList<>();
    if (!errors.isEmpty()) {
      made.add(new BrokenNode(id, piece, errors));
    }
    for (Line line : working.lines()) {
      Node node = node(piece, line);
      node.remarks(remarks);
      made.add(node);
    }
    return made;
  }

  private Node node(Piece piece, Line line) {
    if (line instanceof Line.Definition definition) {
      return new DefinitionNode(id, piece, definition);
    }
    return line instanceof Line.Limit limit
        ? new LimitNode(id, piece, limit)
        : new CorrelateNode(id, piece, (Line.Correlate) line);
  }
}
