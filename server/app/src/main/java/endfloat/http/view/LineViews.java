package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Catalogue;
import endfloat.engine.Figure;
import endfloat.engine.PlacedLines;
import endfloat.engine.ValueGraph.PlacedLine;
import endfloat.working.Line;
import endfloat.working.Parser;
import endfloat.working.Token;
import endfloat.working.typeset.Typeset;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The lines of a working, typeset, and the spans that its editor paints. */
final class LineViews {
  private final Typeset typeset = new Typeset(Catalogue.library());

  /**
   * The lines that stand as rows: values, correlations, and limits on values of another clause.
   * Limits on a value of the same clause stand beside it.
   */
  ArrayNode lines(List<PlacedLine> placed) {
    Set<String> own = new HashSet<>();
    for (PlacedLine one : placed) {
      if (one.line() instanceof Line.Definition definition) {
        own.add(definition.name());
      }
    }
    ArrayNode views = JsonNodeFactory.instance.arrayNode();
    for (PlacedLine one : placed) {
      if (!(one.line() instanceof Line.Limit limit) || !own.contains(limit.place().name())) {
        views.add(line(one));
      }
    }
    return views;
  }

  private ObjectNode line(PlacedLine placed) {
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
    view.put("formula", typeset.formula(line));
    view.put("given", line.comment()).put("source", placed.text());
    return view;
  }

  /** A figure, with the numbers put into its line where that names others. */
  ObjectNode view(
      Figure figure, PlacedLines lines, Map<String, Figure> figures, FigureViews views) {
    ObjectNode view = views.view(figure);
    String numbers = numbers(figure, lines, figures, views);
    return numbers.isEmpty() ? view : view.put("numbers", numbers);
  }

  private String numbers(
      Figure figure, PlacedLines lines, Map<String, Figure> figures, FigureViews views) {
    return lines
        .at(figure.clause(), figure.span().line())
        .map(PlacedLine::line)
        .filter(Line.Definition.class::isInstance)
        .map(line -> typeset.numbers(line, place -> shown(place, figures, views)))
        .orElse("");
  }

  /** The figure of a name or of {@code fit.pressure}; null where there is none to show. */
  private static String shown(String place, Map<String, Figure> figures, FigureViews views) {
    List<String> parts = List.of(place.split("\\."));
    Figure read = figures.get(parts.get(0));
    return read == null ? null : views.text(read, parts.subList(1, parts.size())).orElse(null);
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
}
