package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.CauseSizes;
import endfloat.engine.ClauseProblem;
import endfloat.engine.ValueGraph;
import endfloat.picture.ChartPicture;
import endfloat.record.Cell;
import endfloat.record.Finding;
import endfloat.record.InvestigationRecord;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the rows of a clause come to beside their figures, and what their fields leave unsaid.
 *
 * @param view empty for a kind that has none
 * @param restsOn names with which it may change though its own figures do not
 */
record ClauseBoard(Optional<ObjectNode> view, List<ClauseProblem> problems, Set<String> restsOn) {
  private static final Span FIELD = new Span(1, 1, 1);

  private ClauseBoard(Optional<ObjectNode> view, List<ClauseProblem> problems) {
    this(view, problems, Set.of());
  }

  /**
   * @param between called over and over while a chart is drawn
   */
  static ClauseBoard of(Cell cell, InvestigationRecord record, ValueGraph graph, Runnable between) {
    return switch (cell.kind()) {
      case "fits" -> new ClauseBoard(Optional.of(new FitViews(record, graph).of(cell)), List.of());
      case "causes" -> {
        CauseSizes sizes = CauseSizes.of(cell, graph);
        yield new ClauseBoard(Optional.of(CauseViews.of(sizes)), sizes.problems());
      }
      case "chart" -> {
        if (cell.chart().of().isBlank()) {
          // that nothing was entered yet is no error
          yield new ClauseBoard(Optional.empty(), List.of());
        }
        Optional<ChartPicture> picture = ChartPicture.of(cell, graph, between);
        yield new ClauseBoard(
            picture.map(ChartViews::of),
            picture.map(p -> ChartViews.problems(cell.id(), p)).orElse(List.of()),
            picture.map(ChartPicture::restsOn).orElse(Set.of()));
      }
      case "table" -> new ClauseBoard(Optional.of(TableHead.of(cell, graph)), List.of());
      case "java" -> new ClauseBoard(JavaBoard.of(cell, graph), List.of());
      case "note", "caution" -> new NoteGaps(record, graph).of(cell);
      case "findings" -> new ClauseBoard(Optional.empty(), gaps(cell));
      default -> new ClauseBoard(Optional.empty(), List.of());
    };
  }

  /** What findings leave unsaid, at its field. */
  private static List<ClauseProblem> gaps(Cell cell) {
    List<ClauseProblem> gaps = new ArrayList<>();
    List<Finding> findings = cell.findings();
    for (int i = 0; i < findings.size(); i++) {
      String field = findings.get(i).missing();
      String[] words =
          switch (field) {
            case "method" ->
                new String[] {
                  "No indication says nothing without a method", "Say how it was looked for"
                };
            case "smallest" ->
                new String[] {
                  "No indication says nothing without the smallest size the method would show",
                  "Say how small a flaw would have been seen"
                };
            case "damage" -> new String[] {"Something was found", "Say what kind of damage it is"};
            default -> new String[0];
          };
      if (words.length > 0) {
        gaps.add(
            new ClauseProblem(
                cell.id(),
                "/findings/" + i + "/" + field,
                new LineProblem(FIELD, words[0], words[1], LineProblem.Severity.WARNING)));
      }
    }
    return gaps;
  }
}
