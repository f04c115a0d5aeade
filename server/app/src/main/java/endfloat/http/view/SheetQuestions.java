package endfloat.http.view;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.engine.Figure;
import endfloat.engine.PlacedLines;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.EditRefusedException;
import endfloat.record.RecordChange;
import endfloat.record.TableClause;
import endfloat.working.Completion;
import endfloat.working.Hover;
import endfloat.working.Scope;
import endfloat.working.Terms;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    message.set("lines", sheet.lineViews().lines(preview.lines()));
    message.set("tokens", LineViews.tokens(text));
    return found(message, preview, lines);
  }

  /**
   * What would be computed if a clause that is entered by fields held a value at a place; nothing
   * is kept.
   *
   * @param at where the value is put, which may be above the field
   * @param field the field that is typed in: the answer names its figure
   */
  public ObjectNode preview(String cell, String at, JsonNode value, String field) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "preview");
    message.put("cell", cell).put("field", field);
    try {
      Cell typed =
          RecordChange.apply(sheet.record(), Change.put(cell, at, value))
              .record()
              .cell(cell)
              .orElseThrow();
      RecordGraph.nameAt(typed, field).ifPresent(name -> message.put("figure", name));
      sheet
          .figures()
          .preview(typed)
          .ifPresent(preview -> found(message, preview, new PlacedLines(sheet.graph())));
    } catch (EditRefusedException e) {
      message
          .putArray("problems")
          .addObject()
          .put("at", field)
          .put("message", e.getMessage())
          .put("wayOut", e.wayOut())
          .put("severity", "ERROR");
    }
    return message;
  }

  private ObjectNode found(ObjectNode message, ValueGraph.Preview preview, PlacedLines lines) {
    FigureViews views = sheet.figureViews(lines);
    Map<String, Figure> figures = new HashMap<>(sheet.known());
    figures.putAll(preview.figures());
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

  /**
   * What may be typed at a place.
   *
   * @param alone whether the text is an expression alone, as in a field, and not lines of a working
   */
  public ObjectNode completions(String text, int offset, boolean alone) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "completions");
    Scope scope = sheet.graph().scope();
    Completion completion =
        alone
            ? Completion.inExpression(text, offset, scope, Catalogue.library())
            : Completion.at(text, offset, scope, Catalogue.library());
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

  /** What helps with the source of a java clause. */
  public JavaHelp javaHelp(String cell) {
    return new JavaHelp(cell, sheet.graph());
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

  /**
   * The rows of a table as they stand now; empty where no clause of that id is one.
   *
   * @param filter condition of the language on the rows that are kept; empty for all
   * @throws RefusedOrderException if the condition cannot be understood
   */
  public Optional<TableRows> rows(String id, String filter) {
    return sheet
        .record()
        .cell(id)
        .filter(cell -> cell.kind().equals("table"))
        .map(
            cell -> {
              TableClause table = cell.table();
              List<Optional<Figure>> columns =
                  table.columns().stream()
                      .map(column -> sheet.graph().figure(table.name() + "." + column.head()))
                      .toList();
              return new TableRows(
                  table,
                  sheet.revision(id),
                  columns,
                  sheet.graph().problems(id),
                  KeptRows.where(sheet.graph(), table, TableHead.rows(table, columns), filter),
                  sheet.settings());
            });
  }
}
