package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Catalogue;
import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.HeavyWork;
import endfloat.engine.LimitCount;
import endfloat.engine.PlacedLines;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.review.Results;
import endfloat.sheet.SheetChange;
import endfloat.sheet.Snapshot;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One sheet as its pages see it, and what they are told when it changes. Not safe for threads. */
public final class SheetView {
  /** The blocks of a record that stand beside its clauses. */
  private static final List<String> BLOCKS =
      List.of("title_block", "settings", "parts", "instruments", "materials");

  private final LineViews lineViews = new LineViews();
  private RecordGraph figures;
  private Map<String, Figure> known = new LinkedHashMap<>();
  private final SheetHeads heads = new SheetHeads();
  private InvestigationRecord record;
  private long revision;
  private long base;
  private Map<String, Long> revisions;
  private boolean canUndo;
  private boolean canRedo;
  private List<String> notices;

  /** None until the heavy calculations of the record as it was opened are done. */
  private Optional<SavedFigures> saved = Optional.empty();

  private boolean edited;
  private Object state = new Object();

  /**
   * @param now the sheet as it was opened
   */
  public SheetView(Snapshot now) {
    replace(now);
  }

  /** Takes another record in place of this one. */
  public void replace(Snapshot now) {
    state = new Object();
    record = now.record();
    revision = now.revision();
    base = now.base();
    revisions = new HashMap<>(now.revisions());
    canUndo = now.canUndo();
    canRedo = now.canRedo();
    notices = now.notices();
    if (figures != null) {
      graph().cancelHeavyWork();
    }
    figures = new RecordGraph(new ValueGraph(Catalogue.library()));
    graph().leaveHeavyWork();
    figures.update(record);
    known = new LinkedHashMap<>(graph().figures());
    heads.replace(record, graph(), known.values());
    saved = Optional.empty();
    edited = false;
    compareWithSaved();
  }

  /** Once all figures of the record as it was opened stand. */
  private void compareWithSaved() {
    if (saved.isEmpty() && !edited && !isWorking()) {
      saved = Optional.of(SavedFigures.of(record, results(), known.keySet()));
    }
  }

  private ObjectNode summary() {
    ObjectNode summary = Summary.of(LimitCount.of(graph()), known.values(), heads.all().values());
    saved.ifPresent(figures -> figures.into(summary));
    return summary;
  }

  private ObjectNode view(Figure figure, PlacedLines lines, FigureViews views) {
    ObjectNode view = lineViews.view(figure, lines, known, views);
    saved.ifPresent(figures -> figures.into(figure, view));
    return view;
  }

  ValueGraph graph() {
    return figures.graph();
  }

  GraphSettings settings() {
    return graph().source().settings();
  }

  FigureViews figureViews(PlacedLines lines) {
    return new FigureViews(settings(), lines);
  }

  private CellViews cellViews(FigureViews views) {
    return new CellViews(record, graph(), known, views, lineViews, heads.all());
  }

  /** The revision that the view shows. */
  public long revision() {
    return revision;
  }

  /** Another object whenever anything of the sheet may be another thing than before. */
  public Object state() {
    return state;
  }

  /** The record that the view shows. */
  public InvestigationRecord record() {
    return record;
  }

  /** The figures of the record. */
  public RecordGraph figures() {
    return figures;
  }

  /** All of it. */
  public ObjectNode whole() {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "sheet");
    message.put("revision", revision);
    blocks(message.putObject("record"), Set.copyOf(BLOCKS));
    PlacedLines lines = new PlacedLines(graph());
    FigureViews views = figureViews(lines);
    CellViews cells = cellViews(views);
    message.set(
        "cells",
        ClauseOrder.filled(
            ClauseOrder.of(record), id -> cell(cells, record.cell(id).orElseThrow())));
    ObjectNode all = message.putObject("figures");
    known.forEach((name, figure) -> all.set(name, view(figure, lines, views)));
    message.set("summary", summary());
    ArrayNode found = message.putArray("notices");
    notices.forEach(found::add);
    return message.put("canUndo", canUndo).put("canRedo", canRedo);
  }

  /** What one kept edit changed. */
  public ObjectNode changed(SheetChange change) {
    GraphSettings before = settings();
    record = change.record();
    revision = change.revision();
    canUndo = change.canUndo();
    canRedo = change.canRedo();
    change.cells().forEach(id -> revisions.put(id, revision));
    change.removed().forEach(revisions::remove);
    ValueGraph.Changed update = figures.update(record);
    Set<String> names = new LinkedHashSet<>(update.names());
    Set<String> clauses = new HashSet<>(update.clauses());
    clauses.addAll(change.cells());
    clausesOf(names, clauses);
    if (change.blocks().contains("parts")) {
      // a schedule of fits names the part to renew
      record.cells().stream()
          .filter(cell -> cell.kind().equals("fits"))
          .forEach(cell -> clauses.add(cell.id()));
    }
    if (!settings().equals(before)) {
      // Units, coverage or stage: every figure may read otherwise.
      names.addAll(known.keySet());
    }
    take(names);
    edited = true;
    saved.ifPresent(figures -> figures.forget(update.names()));
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "changed");
    message.put("revision", revision);
    message.put("author", change.edit().author()).put("page", change.edit().client());
    message.put("edit", change.edit().id());
    PlacedLines lines = new PlacedLines(graph());
    FigureViews views = figureViews(lines);
    clausesOf(names, clauses);
    heads.into(message, clauses, change.cells(), record, graph(), known.values());
    CellViews cells = cellViews(views);
    ArrayNode list = message.putArray("cells");
    for (String id : change.cells()) {
      record.cell(id).ifPresent(cell -> list.add(cell(cells, cell)));
    }
    ArrayNode removed = message.putArray("removed");
    change.removed().forEach(removed::add);
    if (change.order()) {
      message.set("order", ClauseOrder.of(record));
    }
    if (!change.blocks().isEmpty()) {
      blocks(message.putObject("record"), change.blocks());
    }
    figuresInto(message.putObject("figures"), withReaders(names), lines, views);
    message.set("summary", summary());
    return message.put("canUndo", canUndo).put("canRedo", canRedo);
  }

  private Set<String> withReaders(Set<String> names) {
    Set<String> shown = new LinkedHashSet<>(names);
    shown.addAll(graph().readers(names));
    return shown;
  }

  /** Heavy calculations that figures wait for and nobody has begun. */
  public List<HeavyWork> takeHeavyWork() {
    return graph().takeHeavyWork();
  }

  /** Whether figures are still being worked out. */
  public boolean isWorking() {
    return graph().isWorking();
  }

  /**
   * What the outcome of a heavy calculation changed: a message of type "changed" without an edit.
   */
  public ObjectNode finished(HeavyWork work) {
    return withoutEdit(graph().finished(work));
  }

  /** Has a java clause run once more: a message as for an edit, without one. */
  public ObjectNode again(String clause) {
    return withoutEdit(graph().again(clause));
  }

  private ObjectNode withoutEdit(ValueGraph.Changed update) {
    Set<String> names = new LinkedHashSet<>(update.names());
    Set<String> clauses = new HashSet<>(update.clauses());
    clausesOf(names, clauses);
    take(names);
    boolean compared = saved.isPresent();
    compareWithSaved();
    if (!compared && saved.isPresent()) {
      names.addAll(saved.get().outOfDate());
    }
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "changed");
    message.put("revision", revision).put("author", "").put("page", "").put("edit", "");
    PlacedLines lines = new PlacedLines(graph());
    clausesOf(names, clauses);
    heads.into(message, clauses, Set.of(), record, graph(), known.values());
    message.putArray("cells");
    message.putArray("removed");
    figuresInto(message.putObject("figures"), withReaders(names), lines, figureViews(lines));
    message.set("summary", summary());
    return message.put("canUndo", canUndo).put("canRedo", canRedo);
  }

  /** Whether charts are to be drawn anew. */
  public boolean isBehindWithCharts() {
    return heads.isBehindWithCharts();
  }

  /**
   * Draws the charts whose values have changed: a message of type "charts" with the heads of their
   * clauses.
   *
   * @param between called over and over; may throw to leave the rest for another time
   */
  public ObjectNode drawCharts(Runnable between) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "charts");
    message.put("revision", revision);
    heads.drawCharts(message, record, graph(), known.values(), between);
    message.set("summary", summary());
    return message;
  }

  /** How far a heavy calculation is, as the page shows it: {@code progress} by name. */
  public ObjectNode progress(HeavyWork work) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "progress");
    String words = String.format(Locale.ROOT, "%.0f %%", 100 * work.progress());
    ObjectNode told = message.putObject("figures").put(work.name(), words);
    if (work.runsElsewhere()) {
      // the run of a java clause has no figure of its own: those that it gives say how far it is
      String clause = work.name().substring(0, work.name().lastIndexOf('.'));
      known.values().stream()
          .filter(figure -> figure.clause().equals(clause))
          .forEach(figure -> told.put(figure.name(), words));
    }
    return message;
  }

  /** Takes up what became of these figures. */
  private void take(Set<String> names) {
    state = new Object();
    boolean others = false;
    for (String name : names) {
      Figure now = graph().figure(name).orElse(null);
      Figure was = now == null ? known.remove(name) : known.put(name, now);
      others |= (was == null) != (now == null);
    }
    if (others) {
      // Names came or went: all in the order of the record again.
      known = new LinkedHashMap<>(graph().figures());
    }
  }

  private void figuresInto(
      ObjectNode into, Set<String> names, PlacedLines lines, FigureViews views) {
    for (String name : names) {
      Figure figure = known.get(name);
      if (figure == null) {
        into.putNull(name);
      } else {
        into.set(name, view(figure, lines, views));
      }
    }
  }

  /** Clauses that these figures stand in, those that set limits on them, and charts of them. */
  private void clausesOf(Set<String> names, Set<String> into) {
    heads.restingOn(names, into);
    for (String name : names) {
      Figure figure = known.get(name);
      if (figure != null) {
        into.add(figure.clause());
        figure.judgements().forEach(limit -> into.add(limit.clause()));
      }
    }
  }

  private void blocks(ObjectNode into, Set<String> wanted) {
    for (String block : BLOCKS) {
      if (wanted.contains(block) && record.tree().has(block)) {
        into.set(block, record.tree().get(block));
      }
    }
  }

  private ObjectNode cell(CellViews cells, Cell cell) {
    return cells.view(cell, revision(cell.id()));
  }

  /** The revision that last changed a clause. */
  long revision(String cell) {
    return revisions.getOrDefault(cell, base);
  }

  /** The figures that are saved with the record. */
  public ObjectNode results() {
    return Results.of(graph());
  }

  /** What a page may ask of the sheet as it is. */
  public SheetQuestions questions() {
    return new SheetQuestions(this);
  }

  LineViews lineViews() {
    return lineViews;
  }

  Map<String, Figure> known() {
    return known;
  }
}
