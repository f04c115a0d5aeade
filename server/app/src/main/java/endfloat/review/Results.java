package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.LibraryVersion;
import endfloat.engine.Figure;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;

/**
 * The figures of a record as they are saved with it: each with clause, unit as shown, value,
 * standard uncertainty and worst verdict, and which library they came from. A figure in error is
 * not saved.
 */
public final class Results {
  private Results() {}

  /** The figures of a graph as they are now. */
  public static ObjectNode of(ValueGraph graph) {
    FigureNumbers numbers = FigureNumbers.asShown(graph.settings());
    ObjectNode results = JsonNodeFactory.instance.objectNode();
    results.put("library", LibraryVersion.text());
    ArrayNode figures = results.putArray("figures");
    for (Figure figure : graph.figures().values()) {
      for (ObjectNode entry : numbers.of(figure)) {
        figures.add(entry.put("cell", figure.clause()));
      }
    }
    return results;
  }

  /** Works a record out anew, whatever figures are saved with it. */
  public static ObjectNode recomputed(InvestigationRecord record) {
    return of(RecordGraph.of(record).graph());
  }
}
