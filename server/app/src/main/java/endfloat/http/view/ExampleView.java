package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Check;
import endfloat.engine.CheckSource;
import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.PlacedLines;
import endfloat.engine.ValueGraph;
import java.util.Map;

/** A published check of a calculation, worked out now: its lines, and what they come to. */
final class ExampleView {
  private ExampleView() {}

  /** {@code {readings, lines, figures, problems}}, lines and figures as a sheet has them. */
  static ObjectNode of(Check check, GraphSettings settings) {
    ValueGraph graph = ValueGraph.of(CheckSource.of(check, settings));
    PlacedLines lines = new PlacedLines(graph);
    FigureViews figureViews = new FigureViews(settings, lines);
    LineViews lineViews = new LineViews();
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    ArrayNode readings = view.putArray("readings");
    for (Check.Station station : check.readings()) {
      ObjectNode one = readings.addObject().put("name", station.name());
      one.put("taken", station.taken()).put("unit", station.unit());
      station.at().forEach(one.putObject("at")::put);
    }
    view.set("lines", lineViews.lines(graph.lines(CheckSource.LINES)));
    Map<String, Figure> figures = graph.figures();
    ObjectNode shown = view.putObject("figures");
    figures.forEach(
        (name, figure) -> shown.set(name, lineViews.view(figure, lines, figures, figureViews)));
    ArrayNode problems = view.putArray("problems");
    graph.problems(CheckSource.LINES).forEach(one -> problems.add(ProblemViews.view(one)));
    return view;
  }
}
