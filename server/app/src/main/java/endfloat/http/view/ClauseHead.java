package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.engine.Figure;
import endfloat.engine.Judgement;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.working.LineProblem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * How a clause stands: what the rail shows of it.
 *
 * @param state fresh, error, waiting or working
 * @param worst the worst verdict of its figures and of the limits it sets; empty for none
 * @param problems of its lines, readings or fields
 * @param board what its rows come to, of a clause of fits or of causes; the picture of a chart; of
 *     a table its heads and counts
 * @param boardName under which the page gets it: board, chart or table
 * @param restsOn names with which a chart may change
 */
record ClauseHead(
    String state,
    String worst,
    List<ClauseProblem> problems,
    Optional<ObjectNode> board,
    String boardName,
    Set<String> restsOn) {

  /**
   * How these clauses stand.
   *
   * @param boards what the rows of a clause come to, or its picture
   */
  static Map<String, ClauseHead> of(
      Set<String> clauses,
      InvestigationRecord record,
      ValueGraph graph,
      Collection<Figure> figures,
      Function<Cell, ClauseBoard> boards) {
    Map<String, Verdict> worst = new HashMap<>();
    Map<String, Figure.State> states = new HashMap<>();
    for (Figure figure : figures) {
      states.merge(figure.clause(), figure.state(), ClauseHead::graver);
      for (Judgement limit : figure.judgements()) {
        worst.merge(figure.clause(), limit.verdict(), ClauseHead::worse);
        worst.merge(limit.clause(), limit.verdict(), ClauseHead::worse);
      }
    }
    Map<String, ClauseHead> heads = new LinkedHashMap<>();
    for (Cell cell : record.cells()) {
      if (!clauses.contains(cell.id())) {
        continue;
      }
      ClauseBoard board = boards.apply(cell);
      List<ClauseProblem> problems = new ArrayList<>(graph.problems(cell.id()));
      problems.addAll(board.problems());
      boolean wrong =
          problems.stream().anyMatch(p -> p.problem().severity() == LineProblem.Severity.ERROR);
      Figure.State state = states.getOrDefault(cell.id(), Figure.State.FRESH);
      String word = wrong ? "error" : word(state);
      Verdict verdict = worst.get(cell.id());
      heads.put(
          cell.id(),
          new ClauseHead(
              word,
              verdict == null ? "" : verdict.word(),
              List.copyOf(problems),
              board.view(),
              boardName(cell.kind()),
              board.restsOn()));
    }
    return heads;
  }

  private static String boardName(String kind) {
    return kind.equals("chart") || kind.equals("table") ? kind : "board";
  }

  private static Verdict worse(Verdict a, Verdict b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  private static Figure.State graver(Figure.State a, Figure.State b) {
    return rank(a) >= rank(b) ? a : b;
  }

  private static int rank(Figure.State state) {
    return switch (state) {
      case FRESH -> 0;
      case WORKING -> 1;
      case WAITING -> 2;
      case ERROR -> 3;
    };
  }

  private static String word(Figure.State state) {
    return switch (state) {
      case FRESH -> "fresh";
      case WORKING -> "working";
      case WAITING -> "waiting";
      case ERROR -> "error";
    };
  }

  void into(ObjectNode view) {
    view.put("state", state).put("worst", worst);
    ArrayNode list = view.putArray("problems");
    problems.forEach(problem -> list.add(ProblemViews.view(problem)));
    board.ifPresent(found -> view.set(boardName, found));
  }

  ObjectNode view() {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    into(view);
    return view;
  }
}
