package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.Trace;
import endfloat.record.Instrument;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Where a figure comes from, what its uncertainty is made of, and what needs it. */
final class TraceView {
  private TraceView() {}

  static void into(
      ObjectNode message, Trace trace, Map<String, Figure> figures, FigureViews views) {
    message.set("tree", origin(trace.origin(), figures, views));
    ArrayNode shares = message.putArray("contributions");
    for (Trace.Contribution one : trace.contributions()) {
      shares
          .addObject()
          .put("kind", one.kind().name().toLowerCase(Locale.ROOT))
          .put("subject", one.subject())
          .put("words", one.words())
          .put(
              "share",
              LimitViews.probability(Math.max(0, one.share()), trace.contributions().size() == 1))
          .put("rises", one.standardUncertainty() >= 0);
    }
    ArrayNode needs = message.putArray("neededBy");
    for (Trace.Need need : trace.neededBy()) {
      ObjectNode view = needs.addObject().put("name", need.name()).put("cell", need.clause());
      view.put("label", need.label()).put("line", need.line());
      view.put("limit", need.limit()).put("direct", need.direct());
      text(need.name(), figures, views, view);
    }
  }

  private static ObjectNode origin(
      Trace.Origin origin, Map<String, Figure> figures, FigureViews views) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("name", origin.name()).put("cell", origin.clause()).put("label", origin.label());
    view.put("line", origin.line()).put("sort", origin.sort().name().toLowerCase(Locale.ROOT));
    view.put("text", origin.text()).put("given", origin.given());
    text(origin.name(), figures, views, view);
    instruments(origin.instruments(), view);
    if (!origin.from().isEmpty()) {
      ArrayNode from = view.putArray("from");
      origin.from().forEach(one -> from.add(origin(one, figures, views)));
    }
    return view;
  }

  private static void text(
      String name, Map<String, Figure> figures, FigureViews views, ObjectNode view) {
    Figure figure = figures.get(name);
    if (figure != null) {
      if (name.indexOf('.') >= 0) {
        view.put("title", figure.given());
      }
      views.text(figure, List.of()).ifPresent(shown -> view.put("value", shown));
      view.put("verdict", FigureViews.word(figure.verdict()));
    }
  }

  private static void instruments(List<Instrument> instruments, ObjectNode view) {
    if (instruments.isEmpty()) {
      return;
    }
    ArrayNode list = view.putArray("instruments");
    for (Instrument one : instruments) {
      list.addObject()
          .put("id", one.id())
          .put("name", one.name())
          .put("calibrated", one.calibrated())
          .put("due", one.due())
          .put("certificate", one.certificate());
    }
  }
}
