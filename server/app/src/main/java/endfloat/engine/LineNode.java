package endfloat.engine;

import endfloat.working.Checked;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.References;
import java.util.Map;
import java.util.Set;

/** A node that is a line of a working. */
abstract class LineNode extends Node {
  private final Piece piece;
  private final Line line;
  private final Map<String, Set<String>> fieldsRead;
  private final Set<String> readAtStages;

  LineNode(String clause, Piece piece, Line line) {
    super(clause, piece.firstLine());
    this.piece = piece;
    this.line = line;
    this.fieldsRead = References.fields(line);
    this.readAtStages = piece.text().contains("stage") ? References.atStages(line) : Set.of();
  }

  Piece piece() {
    return piece;
  }

  Line line() {
    return line;
  }

  @Override
  Set<String> namesRead() {
    return fieldsRead.keySet();
  }

  @Override
  Set<String> fieldsRead(String name) {
    return fieldsRead.getOrDefault(name, Set.of(""));
  }

  @Override
  boolean readsAtStages(Slot read) {
    return readAtStages.contains(read.name());
  }

  @Override
  void check(ValueGraph graph) {
    Checked checked = graph.check(line);
    if (checked instanceof Checked.Refused refused) {
      throw new LineFailure(first(refused));
    }
    made(checked, new Planner(graph::slot, piece::at, owner()));
  }

  /** What calls in this line belong to; the same wherever the line stands. */
  abstract String owner();

  /** Takes over the checked line. */
  abstract void made(Checked checked, Planner planner);

  private static LineProblem first(Checked.Refused refused) {
    return refused.problems().stream()
        .filter(p -> p.severity() == LineProblem.Severity.ERROR)
        .findFirst()
        .orElseThrow();
  }
}
