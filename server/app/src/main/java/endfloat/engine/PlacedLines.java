package endfloat.engine;

import endfloat.engine.ValueGraph.PlacedLine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lines of workings by where they stand, looked up a clause at a time. */
public final class PlacedLines {
  private final ValueGraph graph;
  private final Map<String, Map<Integer, PlacedLine>> clauses = new HashMap<>();

  public PlacedLines(ValueGraph graph) {
    this.graph = graph;
  }

  /** The same, but for one clause with other lines in it: those of a preview. */
  public PlacedLines with(String clause, List<PlacedLine> lines) {
    PlacedLines others = new PlacedLines(graph);
    others.clauses.put(clause, byPlace(lines));
    return others;
  }

  /** The statement that begins on a line of a clause. */
  public Optional<PlacedLine> at(String clause, int line) {
    return Optional.ofNullable(clauses.computeIfAbsent(clause, this::lines).get(line));
  }

  private Map<Integer, PlacedLine> lines(String clause) {
    return byPlace(graph.lines(clause));
  }

  private static Map<Integer, PlacedLine> byPlace(List<PlacedLine> lines) {
    Map<Integer, PlacedLine> places = new HashMap<>();
    for (PlacedLine placed : lines) {
      places.put(placed.firstLine() + placed.line().span().line(), placed);
    }
    return places;
  }

  /** The limits of a new part that a figure of a schedule is only compared with. */
  public Optional<Judgement> asNew(String figure) {
    return figure.indexOf('.') < 0
        ? Optional.empty()
        : graph.comparisons(figure).stream().filter(one -> one.state().equals("new")).findFirst();
  }
}
