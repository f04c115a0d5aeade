package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.LibraryVersion;
import endfloat.engine.Figure;
import endfloat.engine.LimitCount;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.engine.Verdict;
import endfloat.record.InvestigationRecord;
import java.util.List;
import java.util.Optional;

/**
 * The figures of a record as they are saved with it: how its limits read, and each with clause,
 * unit as shown, value, standard uncertainty and worst verdict, and which library they came from. A
 * figure in error is not saved.
 */
public final class Results {
  private Results() {}

  /** What was typed into a table stands there already; how it was judged does not. */
  private static List<ObjectNode> typed(Figure figure) {
    return figure.verdict().stream()
        .map(
            verdict ->
                JsonNodeFactory.instance
                    .objectNode()
                    .put("name", figure.name())
                    .put("verdict", verdict.word()))
        .toList();
  }

  /** The figures of a graph as they are now. */
  public static ObjectNode of(ValueGraph graph) {
    FigureNumbers numbers = FigureNumbers.asShown(graph.settings());
    ObjectNode results = JsonNodeFactory.instance.objectNode();
    LimitCount limits = LimitCount.of(graph);
    results
        .putObject("limits")
        .put("within", limits.within())
        .put("not_proven", limits.notProven())
        .put("outside", limits.outside())
        .put("waiting", limits.waiting())
        .put("in_error", limits.inError());
    results.put("library", LibraryVersion.text());
    ArrayNode figures = results.putArray("figures");
    for (Figure figure : graph.figures().values()) {
      for (ObjectNode entry :
          graph.isTypedColumn(figure.name()) ? typed(figure) : numbers.of(figure)) {
        figures.add(entry.put("cell", figure.clause()));
      }
    }
    return results;
  }

  /**
   * How its limits read, as saved with a record; of one that was saved without it the verdicts of
   * its figures, each figure's worst.
   */
  public static LimitCount limits(InvestigationRecord record) {
    Optional<LimitCount> counted = counted(record.tree().path("results"));
    if (counted.isPresent()) {
      return counted.get();
    }
    int[] verdicts = new int[Verdict.values().length];
    for (JsonNode figure : record.savedFigures()) {
      for (Verdict verdict : Verdict.values()) {
        if (verdict.word().equals(figure.path("verdict").asText())) {
          verdicts[verdict.ordinal()]++;
        }
      }
    }
    return new LimitCount(
        verdicts[Verdict.WITHIN.ordinal()],
        verdicts[Verdict.NOT_PROVEN.ordinal()],
        verdicts[Verdict.OUTSIDE.ordinal()],
        0,
        0);
  }

  /** The limits as counted in results; empty where they were saved without. */
  static Optional<LimitCount> counted(JsonNode results) {
    JsonNode saved = results.path("limits");
    return saved.isObject()
        ? Optional.of(
            new LimitCount(
                saved.path("within").asInt(),
                saved.path("not_proven").asInt(),
                saved.path("outside").asInt(),
                saved.path("waiting").asInt(),
                saved.path("in_error").asInt()))
        : Optional.empty();
  }

  /** Works a record out anew, whatever figures are saved with it. */
  public static ObjectNode recomputed(InvestigationRecord record) {
    return of(RecordGraph.of(record).graph());
  }
}
