package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.record.Instrument;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Follows a graph from a figure back to what it rests on and forth to what rests on it. */
final class TraceMaker {
  /** Deeper than a person would follow, and than a page could show. */
  private static final int DEEPEST = 200;

  private final ValueGraph graph;
  private final FigureMaker maker;

  TraceMaker(ValueGraph graph) {
    this.graph = graph;
    this.maker = new FigureMaker(graph);
  }

  Trace trace(String name) {
    Slot slot = graph.slot(name);
    Node node = maker.first(slot);
    return new Trace(origin(slot, node, new HashSet<>(), 0), contributions(node), needs(slot));
  }

  private Trace.Origin origin(Slot slot, Node node, Set<Slot> seen, int depth) {
    List<Trace.Origin> from = new ArrayList<>();
    if (seen.add(slot) && depth < DEEPEST) {
      for (Slot read : rests(node)) {
        if (!read.givers().isEmpty()) {
          from.add(origin(read, maker.first(read), seen, depth + 1));
        }
      }
    }
    return new Trace.Origin(
        slot.name(),
        node.clause(),
        graph.label(node.clause()),
        line(node),
        sort(node),
        text(node),
        node instanceof DefinitionNode d ? d.definition().comment() : "",
        instruments(node),
        from);
  }

  /** What a java clause gives rests on what its source reads. */
  private static List<Slot> rests(Node node) {
    return node instanceof GivenNode && node.reads()[0].giver() instanceof RunNode run
        ? run.feeds()
        : List.of(node.reads());
  }

  private static int line(Node node) {
    return node instanceof LineNode line
        ? node.offset() + line.line().span().line()
        : node.offset() + 1;
  }

  private static Trace.Sort sort(Node node) {
    if (node instanceof ReadingNode || node instanceof ColumnNode) {
      return Trace.Sort.READING;
    }
    if (node instanceof GivenNode || node instanceof RunNode || node instanceof TableNode) {
      return Trace.Sort.COMPUTED;
    }
    if (!(node instanceof DefinitionNode definition)) {
      return Trace.Sort.BROKEN;
    }
    return definition.isSolved()
        ? Trace.Sort.SOLVED
        : definition.definition().isInput() ? Trace.Sort.INPUT : Trace.Sort.COMPUTED;
  }

  private static String text(Node node) {
    if (node instanceof ReadingNode reading) {
      return reading.reading().what();
    }
    if (node instanceof GivenNode || node instanceof RunNode) {
      return "java clause";
    }
    if (node instanceof ColumnNode column) {
      return column.what();
    }
    if (node instanceof TableNode) {
      return "table";
    }
    if (node.fields() != null) {
      return node.fields().shown().strip();
    }
    if (node instanceof LineNode line) {
      return line.piece().text().strip();
    }
    return node instanceof BrokenNode broken ? broken.piece().text().strip() : "";
  }

  private List<Instrument> instruments(Node node) {
    return Registers.instrumentsOf(node).stream()
        .map(graph::instrument)
        .filter(Objects::nonNull)
        .toList();
  }

  private List<Trace.Contribution> contributions(Node node) {
    if (!(node.value() instanceof Scalar scalar)) {
      return List.of();
    }
    Gradient gradient = scalar.gradient();
    double u = graph.correlations().standardUncertainty(gradient);
    List<Trace.Contribution> all = new ArrayList<>();
    for (int i = 0; i < gradient.size(); i++) {
      Root root = gradient.root(i);
      double part = gradient.part(i);
      all.add(
          new Trace.Contribution(
              root.kind(), root.subject(), root.words(), part, u == 0 ? 0 : part / u * (part / u)));
    }
    all.sort(
        Comparator.comparingDouble((Trace.Contribution c) -> -Math.abs(c.standardUncertainty()))
            .thenComparing(Trace.Contribution::subject)
            .thenComparing(Trace.Contribution::words));
    return all;
  }

  private List<Trace.Need> needs(Slot start) {
    List<Trace.Need> needs = new ArrayList<>();
    Set<Node> seen = new HashSet<>();
    ArrayDeque<Slot> next = new ArrayDeque<>();
    next.add(start);
    while (!next.isEmpty()) {
      Slot slot = next.poll();
      for (Node reader : slot.readers()) {
        if (!seen.add(reader)) {
          continue;
        }
        if (reader instanceof RunNode) {
          next.add(reader.giving());
        } else {
          boolean limit = reader instanceof LimitNode;
          needs.add(
              new Trace.Need(
                  reader instanceof LimitNode l ? l.judged() : reader.name(),
                  reader.clause(),
                  graph.label(reader.clause()),
                  line(reader),
                  limit,
                  slot == start));
          if (reader.giving() != null) {
            next.add(reader.giving());
          }
        }
      }
    }
    needs.sort(
        Comparator.comparing((Trace.Need n) -> !n.direct())
            .thenComparing(Trace.Need::label)
            .thenComparing(Trace.Need::line)
            .thenComparing(Trace.Need::name));
    return needs;
  }
}
