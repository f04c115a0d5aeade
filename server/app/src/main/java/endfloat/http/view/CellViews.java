package endfloat.http.view;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.sheet.NoteMarkup;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Clauses as the page shows them. */
final class CellViews implements NoteMarkup.References {
  private final InvestigationRecord record;
  private final ValueGraph graph;
  private final Map<String, Figure> figures;
  private final FigureViews figureViews;
  private final LineViews lineViews;
  private final Map<String, ClauseHead> heads;

  CellViews(
      InvestigationRecord record,
      ValueGraph graph,
      Map<String, Figure> figures,
      FigureViews figureViews,
      LineViews lineViews,
      Map<String, ClauseHead> heads) {
    this.record = record;
    this.graph = graph;
    this.figures = figures;
    this.figureViews = figureViews;
    this.lineViews = lineViews;
    this.heads = heads;
  }

  ObjectNode view(Cell cell, long revision) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("id", cell.id()).put("number", cell.number()).put("kind", cell.kind());
    view.put("title", cell.title()).put("revision", revision);
    boolean table = cell.kind().equals("table");
    view.set("source", table ? TableHead.source(cell) : source(cell));
    switch (cell.kind()) {
      case "note", "caution" -> view.put("html", NoteMarkup.html(cell.text(), this));
      case "working" -> {
        view.set("lines", lineViews.lines(graph.lines(cell.id())));
        view.set("tokens", LineViews.tokens(cell.text()));
      }
      default -> {}
    }
    ClauseHead head = heads.get(cell.id());
    if (head != null) {
      head.into(view);
    }
    return view;
  }

  /**
   * The clause as the file has it; a section without the clauses in it, which have views of their
   * own.
   */
  private static ObjectNode source(Cell cell) {
    if (!cell.isSection()) {
      return cell.source();
    }
    ObjectNode alone = JsonNodeFactory.instance.objectNode();
    cell.source()
        .properties()
        .forEach(
            field -> {
              if (!field.getKey().equals("cells")) {
                alone.set(field.getKey(), field.getValue());
              }
            });
    return alone;
  }

  @Override
  public Optional<String> figure(String name) {
    // a column of a table has a point in its name
    if (figures.containsKey(name)) {
      return figureViews.text(figures.get(name), List.of());
    }
    List<String> steps = List.of(name.split("\\.", -1));
    return Optional.ofNullable(figures.get(steps.get(0)))
        .flatMap(figure -> figureViews.text(figure, steps.subList(1, steps.size())));
  }

  @Override
  public Optional<String> clauseNumber(String id) {
    return record.cell(id).map(Cell::number);
  }
}
