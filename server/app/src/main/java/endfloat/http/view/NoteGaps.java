package endfloat.http.view;

import endfloat.engine.ClauseProblem;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.sheet.NoteMarkup;
import endfloat.working.LineProblem;
import endfloat.working.Nearest;
import endfloat.working.Span;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** References of a note that lead nowhere: a finding must not be issued with a hole in it. */
final class NoteGaps {
  private static final Span TEXT = new Span(1, 1, 1);

  private final InvestigationRecord record;
  private final ValueGraph graph;

  NoteGaps(InvestigationRecord record, ValueGraph graph) {
    this.record = record;
    this.graph = graph;
  }

  /** What leads nowhere, and the names with which that may change. */
  ClauseBoard of(Cell cell) {
    List<NoteMarkup.Reference> references = NoteMarkup.references(cell.text());
    List<ClauseProblem> gaps =
        references.stream()
            .distinct()
            .flatMap(one -> gap(one).stream())
            .map(one -> new ClauseProblem(cell.id(), "/text", one))
            .toList();
    Set<String> names = new HashSet<>();
    references.stream()
        .filter(one -> !one.isClause())
        .forEach(one -> names.addAll(List.of(one.name(), ofFigure(one.name()))));
    return new ClauseBoard(Optional.empty(), gaps, names);
  }

  private Optional<LineProblem> gap(NoteMarkup.Reference reference) {
    String name = reference.name();
    if (reference.isClause()) {
      return record.cell(name).isPresent()
          ? Optional.empty()
          : Optional.of(
              LineProblem.error(
                  TEXT,
                  "{#" + name + "} names no clause of this record",
                  byId(name).orElse("Name the clause by its mark, or take the braces out")));
    }
    if (graph.figure(name).isPresent() || graph.figure(ofFigure(name)).isPresent()) {
      return Optional.empty();
    }
    Collection<String> known = graph.figures().keySet();
    return Optional.of(
        LineProblem.error(
            TEXT,
            "{" + name + "} names no value of this record",
            byId(name)
                .orElseGet(
                    () ->
                        Nearest.wayOut(
                            name, known, "Define it in a working, or take the braces out"))));
  }

  /** How a clause is named, where its mark or its number was written as the name of a value. */
  private Optional<String> byId(String written) {
    return record.cells().stream()
        .filter(cell -> cell.id().equals(written) || cell.number().equals(written))
        .findFirst()
        .map(cell -> "For the number of clause " + cell.number() + " write {#" + cell.id() + "}");
  }

  private static String ofFigure(String name) {
    return name.split("\\.", -1)[0];
  }
}
