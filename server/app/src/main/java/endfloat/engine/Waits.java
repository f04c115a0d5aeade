package endfloat.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a line without a value waits for. */
final class Waits {
  private static final Comparator<Figure.Waiting> BY_PLACE =
      Comparator.comparing(Figure.Waiting::label)
          .thenComparing(Figure.Waiting::clause)
          .thenComparing(Figure.Waiting::line)
          .thenComparing(Figure.Waiting::name);

  private final ValueGraph graph;

  Waits(ValueGraph graph) {
    this.graph = graph;
  }

  /** The lines at whose repair the wait ends. */
  List<Figure.Waiting> of(Node start) {
    Set<Figure.Waiting> found = new LinkedHashSet<>();
    if (start.problem() != null) {
      // nothing is wrong, but a reading is still to be taken: this one, or the one of a stage
      List<Slot> read = start instanceof ReadingNode ? List.of(start.giving()) : staged(start);
      read.forEach(slot -> slot.givers().forEach(giver -> found.add(waiting(slot, giver))));
      return List.copyOf(found);
    }
    Set<Node> seen = new HashSet<>(Set.of(start));
    ArrayDeque<Node> next = new ArrayDeque<>(List.of(start));
    while (!next.isEmpty()) {
      Node waits = next.poll();
      for (Slot read : awaited(waits)) {
        for (Node giver : read.givers()) {
          boolean done = !seen.add(giver);
          if (!done && giver.state() == Figure.State.WAITING && giver.problem() == null) {
            next.add(giver);
          } else if (!done && !(giver instanceof RunNode)) {
            found.add(waiting(read, giver));
          } else if (!done && waits != start) {
            // the run of a java clause has no name: what it gives has
            found.add(waiting(waits.giving(), waits));
          }
        }
      }
    }
    return found.stream().sorted(BY_PLACE).toList();
  }

  private Figure.Waiting waiting(Slot read, Node giver) {
    return new Figure.Waiting(
        read.name(), giver.clause(), graph.label(giver.clause()), FigureMaker.span(giver).line());
  }

  private static List<Slot> staged(Node node) {
    return Arrays.stream(node.reads()).filter(node::readsAtStages).toList();
  }

  private static List<Slot> awaited(Node node) {
    List<Slot> all = new ArrayList<>();
    for (Slot read : node.reads()) {
      if (!node.isFedBy(read)) {
        all.add(read);
      }
    }
    for (Slot sought : node.seeks()) {
      if (sought.kind() == null) {
        all.add(sought);
      }
    }
    return all;
  }
}
