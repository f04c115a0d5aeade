package endfloat.picture;

import endfloat.engine.Question;
import endfloat.engine.QuestionRefusedException;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.ChartClause;
import endfloat.working.LineProblem;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A chart of a record: the picture, the same for page, report and print, and its numbers as text.
 *
 * @param svg looks by class, with presentation attributes for where there is no style sheet; empty
 *     where there is a problem
 * @param description what the picture shows, with its main numbers
 * @param heads of the columns of numbers
 * @param rows the numbers
 * @param notes what the picture means and leaves out
 * @param problem why there is no picture
 * @param restsOn names that the picture may change with
 */
public record ChartPicture(
    String svg,
    String description,
    List<String> heads,
    List<List<String>> rows,
    List<String> notes,
    Optional<Problem> problem,
    Set<String> restsOn) {

  /**
   * Why there is no picture.
   *
   * @param field JSON Pointer to what was entered
   */
  public record Problem(String field, LineProblem problem) {}

  /** Kinds of chart that are drawn here. */
  private static final Set<String> KINDS =
      Set.of("against", "round", "spread", "calculation", "histogram", "scatter", "box", "run");

  /** What a kind of chart draws. */
  record Drawn(
      String svg,
      String description,
      List<String> heads,
      List<List<String>> rows,
      List<String> notes) {}

  /** The picture of a clause of charts; empty where its kind of chart is not drawn here. */
  public static Optional<ChartPicture> of(Cell cell, ValueGraph graph) {
    return of(cell, graph, () -> {});
  }

  /**
   * The same, for somebody who may have to leave it undone.
   *
   * @param between called between the points of a curve; what it throws ends the drawing
   */
  public static Optional<ChartPicture> of(Cell cell, ValueGraph graph, Runnable between) {
    ChartClause clause = cell.chart();
    if (!KINDS.contains(clause.chart())) {
      return Optional.empty();
    }
    Set<String> names = names(clause, graph);
    try {
      Drawn drawn =
          switch (clause.chart()) {
            case "against" -> new AgainstChart(clause, graph).drawn(between);
            case "round" -> new RoundChart(clause, graph).drawn();
            case "histogram" -> new HistogramChart(clause, graph).drawn();
            case "scatter" -> new ScatterChart(clause, graph).drawn();
            case "box" -> new BoxChart(clause, graph).drawn();
            case "run" -> new RunChart(clause, graph).drawn();
            case "calculation" -> new CalculationChart(clause, graph).drawn();
            default -> new SpreadChart(clause, graph).drawn();
          };
      return Optional.of(
          new ChartPicture(
              drawn.svg(),
              drawn.description(),
              drawn.heads(),
              drawn.rows(),
              drawn.notes(),
              Optional.empty(),
              names));
    } catch (QuestionRefusedException e) {
      return Optional.of(
          new ChartPicture(
              "",
              "",
              List.of(),
              List.of(),
              List.of(),
              Optional.of(new Problem(e.field(), e.problem())),
              names));
    }
  }

  private static Set<String> names(ChartClause clause, ValueGraph graph) {
    Set<String> names = new LinkedHashSet<>();
    for (String entered : List.of(clause.of(), clause.input(), clause.from(), clause.to())) {
      names.addAll(Question.names(graph, entered));
    }
    return names;
  }
}
