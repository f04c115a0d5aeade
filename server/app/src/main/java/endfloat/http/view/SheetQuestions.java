package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.engine.Figure;
import endfloat.engine.PlacedLines;
import endfloat.engine.ValueGraph;
import endfloat.working.Completion;
import endfloat.working.Hover;
import endfloat.working.Terms;
import java.util.HashMap;
import java.util.Map;

/** What a page may ask of a sheet; none of it changes anything. */
public final class SheetQuestions {
  private final SheetView sheet;

  SheetQuestions(SheetView sheet) {
    this.sheet = sheet;
  }

  /** What would be computed if a working read so; nothing is kept. */
  public ObjectNode preview(String cell, String text) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "preview");
    message.put("cell", cell);
    boolean working = sheet.record().cell(cell).filter(c -> c.kind().equals("working")).isPresent();
    if (!working) {
      return message;
    }
    ValueGraph.Preview preview = sheet.graph().preview(cell, text);
    // The limits and numbers of the text that is previewed, not of the one that is kept.
    PlacedLines lines = new PlacedLines(sheet.graph()).with(cell, preview.lines());
    FigureViews views = sheet.figureViews(lines);
    Map<String, Figure> figures = new HashMap<>(sheet.known());
    figures.putAll(preview.figures());
    message.set("lines", sheet.lineViews().lines(preview.lines()));
    message.set("tokens", LineViews.tokens(text));
    ArrayNode problems = message.putArray("problems");
    preview.problems().forEach(one -> problems.add(ProblemViews.view(one)));
    ObjectNode changed = message.putObject("figures");
    preview
        .figures()
        .forEach(
            (name, figure) ->
                changed.set(name, sheet.lineViews().view(figure, lines, figures, views)));
    return message;
  }

  /** What may be typed at a place. */
  public ObjectNode completions(String cell, String text, int offset) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "completions");
    Completion completion = Completion.at(text, offset, sheet.graph().scope(), Catalogue.library());
    ArrayNode options = message.put("from", completion.from()).putArray("options");
    for (Completion.Option option : completion.options()) {
      ObjectNode one = options.addObject();
      one.put("label", option.label())
          .put("detail", option.detail())
          .put("apply", option.apply())
          .put("kind", option.kind());
      if (option.kind().equals("function")) {
        Catalogue.library()
            .find(option.label())
            .ifPresent(found -> one.put("stops", CallText.stops(found)));
      }
    }
    return message;
  }

  /** What a name is: its kind and unit, or the arguments and source of a calculation. */
  public ObjectNode hover(String cell, String name) {
    ObjectNode message =
        JsonNodeFactory.instance.objectNode().put("type", "hover").put("name", name);
    Hover.of(name, sheet.graph().scope(), Catalogue.library())
        .ifPresent(
            hover -> {
              message.put("title", hover.title());
              hover.lines().forEach(message.putArray("lines")::add);
            });
    Catalogue.library()
        .find(name)
        .filter(found -> sheet.graph().scope().kindOf(name).isEmpty())
        .ifPresent(found -> help(message, found));
    return message;
  }

  /** What may be made of a value that is pressed, and of the one that was pressed before it. */
  public ObjectNode offer(String name, String before) {
    return new ValueOffers(sheet.graph()).of(name, before);
  }

  /** What the line of help beneath a pad needs: the arguments one by one, and the source. */
  private void help(ObjectNode message, Calculation calculation) {
    ReferenceView.Reader reader =
        new ReferenceView.Reader(
            sheet.graph().source().settings().units(), Terms.of(sheet.record().settings().terms()));
    message.put("summary", reader.terms().say(calculation.summary()));
    message.put("source", calculation.source());
    ArrayNode arguments = message.putArray("arguments");
    calculation.parameters().forEach(one -> arguments.add(ReferenceView.parameter(one, reader)));
  }

  /** Where a figure comes from, and what needs it. */
  public ObjectNode trace(String name) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "trace");
    message.put("name", name);
    FigureViews views = sheet.figureViews(new PlacedLines(sheet.graph()));
    sheet
        .graph()
        .trace(name)
        .ifPresent(trace -> TraceView.into(message, trace, sheet.known(), views));
    return message;
  }
}
