package endfloat.engine;

import endfloat.definition.RefusedException;
import endfloat.evidence.BigEnough;
import endfloat.record.CauseBoard;
import endfloat.record.Cell;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What each cause of a board adds against the size needed, and what is left unexplained.
 *
 * @param observed name of the figure; it exists where one was entered
 * @param unexplained name of the figure of what the causes that stand open leave
 * @param problems of the board as a whole, beside those of its expressions
 */
public record CauseSizes(
    String observed,
    String needed,
    String unexplained,
    List<Adds> causes,
    List<ClauseProblem> problems) {
  private static final Span FIELD = new Span(1, 1, 1);

  /**
   * One cause.
   *
   * @param figure name of what it adds; it exists where one was entered
   * @param enough empty where it or the size needed has no value, or is no single number
   */
  public record Adds(CauseBoard.Cause cause, String figure, Optional<BigEnough.Size> enough) {}

  /** The board of a clause of causes. */
  public static CauseSizes of(Cell cell, ValueGraph graph) {
    CauseBoard board = cell.causes();
    String id = cell.id();
    List<ClauseProblem> problems = new ArrayList<>();
    Optional<Figure> needed = single(graph, CauseLines.needed(id));
    if (needed.isPresent() && !(needed.get().si() > 0)) {
      problems.add(
          problem(
              id,
              "/needed",
              "The size needed is not above zero",
              "Count the effect positive in the sense in which it was found",
              LineProblem.Severity.ERROR));
      needed = Optional.empty();
    }
    List<Adds> causes = new ArrayList<>();
    for (int i = 0; i < board.causes().size(); i++) {
      CauseBoard.Cause cause = board.causes().get(i);
      String figure = CauseLines.contribution(id, cause);
      Set<String> uncarried = new TreeSet<>(graph.uncarried(figure));
      uncarried.addAll(graph.uncarried(CauseLines.needed(id)));
      if (!uncarried.isEmpty()) {
        problems.add(
            problem(
                id,
                "/causes/" + i + "/contribution",
                "Whether it is big enough cannot be said: the uncertainty of "
                    + String.join(", ", uncarried)
                    + " is not carried",
                "Write its source as a smooth function of what it reads",
                LineProblem.Severity.HINT));
      }
      Optional<Figure> known = uncarried.isEmpty() ? needed : Optional.empty();
      causes.add(new Adds(cause, figure, enough(graph, figure, known)));
      if (cause.ruledOut() && cause.isOpen()) {
        problems.add(
            problem(
                id,
                "/causes/" + i + "/fact",
                "Ruled out takes one decisive fact",
                "Name it, or let the cause stand open",
                LineProblem.Severity.ERROR));
      }
    }
    countedTwice(board, id, graph, problems);
    return new CauseSizes(
        CauseLines.observed(id),
        CauseLines.needed(id),
        CauseLines.remainder(id),
        List.copyOf(causes),
        List.copyOf(problems));
  }

  private static Optional<BigEnough.Size> enough(
      ValueGraph graph, String name, Optional<Figure> needed) {
    Optional<Figure> adds = single(graph, name);
    boolean alike = !graph.comparisons(name).isEmpty();
    if (adds.isEmpty() || needed.isEmpty() || !alike) {
      return Optional.empty();
    }
    Figure c = adds.get();
    Figure n = needed.get();
    try {
      return Optional.of(
          BigEnough.bigEnough(
              c.si(),
              n.si(),
              c.standardUncertainty(),
              n.standardUncertainty(),
              graph.correlation(c, n)));
    } catch (RefusedException e) {
      return Optional.empty();
    }
  }

  private static Optional<Figure> single(ValueGraph graph, String name) {
    return graph
        .figure(name)
        .filter(f -> f.state() == Figure.State.FRESH)
        .filter(f -> f.value().filter(Value.Scalar.class::isInstance).isPresent());
  }

  /** The same value named by two causes that stand open is taken from the effect twice. */
  private static void countedTwice(
      CauseBoard board, String id, ValueGraph graph, List<ClauseProblem> problems) {
    for (int i = 0; i < board.causes().size(); i++) {
      for (int j = 0; j < i; j++) {
        CauseBoard.Cause late = board.causes().get(i);
        CauseBoard.Cause early = board.causes().get(j);
        if (!late.isOpen() || !early.isOpen()) {
          continue;
        }
        Set<String> both = new TreeSet<>(graph.reads(CauseLines.contribution(id, late)));
        both.retainAll(graph.reads(CauseLines.contribution(id, early)));
        if (!both.isEmpty()) {
          problems.add(
              problem(
                  id,
                  "/causes/" + i + "/contribution",
                  String.join(", ", both) + " stands in " + early.name() + " too",
                  "See that no effect is counted twice",
                  LineProblem.Severity.HINT));
        }
      }
    }
  }

  private static ClauseProblem problem(
      String clause, String at, String message, String wayOut, LineProblem.Severity severity) {
    return new ClauseProblem(clause, at, new LineProblem(FIELD, message, wayOut, severity));
  }
}
