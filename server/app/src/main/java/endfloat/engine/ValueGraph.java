package endfloat.engine;

import endfloat.catalogue.Catalogue;
import endfloat.record.EnteredMaterial;
import endfloat.record.Instrument;
import endfloat.working.Checked;
import endfloat.working.CommentedLines;
import endfloat.working.Kind;
import endfloat.working.KindChecker;
import endfloat.working.Line;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The values of a record. {@link #update} takes the record as it is now and works out what that
 * changes and nothing else; what was typed in which order leaves no trace in any figure.
 *
 * <p>One thread at a time; the figures handed out are immutable and may go anywhere.
 */
public final class ValueGraph {
  private final KindChecker checker;
  private final NameScope scope = new NameScope(this);
  private final ChangeList changes = new ChangeList();
  private final Wiring wiring = new Wiring(changes);
  private final Evaluation evaluation = new Evaluation();
  private final ClauseList clauses = new ClauseList(wiring, changes);
  private final Map<String, Instrument> instruments = new LinkedHashMap<>();
  private final RankSet dirty = new RankSet();
  private GraphSource source = GraphSource.EMPTY;

  /** An empty graph over the calculations of a catalogue. */
  public ValueGraph(Catalogue catalogue) {
    this.checker = new KindChecker(catalogue);
  }

  /** A graph of the library's calculations for a record. */
  public static ValueGraph of(GraphSource source) {
    ValueGraph graph = new ValueGraph(Catalogue.library());
    graph.update(source);
    return graph;
  }

  /**
   * What an update has changed.
   *
   * @param names of figures that are new, different or gone
   * @param clauses whose problems may be different
   */
  public record Changed(Set<String> names, Set<String> clauses) {}

  /** Takes the record as it is now. */
  public Changed update(GraphSource now) {
    changes.begin();
    settings(now);
    instruments(now.instruments());
    materials(now.materials());
    clauses.update(now.clauses());
    source = now;
    settle();
    return changes.taken();
  }

  /** Puts one clause in the place of the one of its id; the other clauses are not looked at. */
  public Changed update(Clause clause) {
    ClauseNodes nodes = clauses.get(clause.id());
    if (nodes == null) {
      return update(source.with(clause));
    }
    changes.begin();
    nodes.stands(nodes.place(), clause.label());
    nodes.update(clause);
    source = source.with(clause);
    settle();
    return changes.taken();
  }

  /**
   * Leaves heavy calculations to be run elsewhere: their figures are WORKING until then. Without
   * this they are worked out within the update that needs them.
   */
  public void leaveHeavyWork() {
    evaluation.leaveHeavyWork();
  }

  /** Heavy work that updates have asked for since the last time, but for what is cancelled. */
  public List<HeavyWork> takeHeavyWork() {
    return evaluation.takeWanted();
  }

  /** Whether figures are still to come from heavy work. */
  public boolean isWorking() {
    return evaluation.hasOpenWork();
  }

  /** Cancels all heavy work: the graph is not needed any more. */
  public void cancelHeavyWork() {
    evaluation.cancelWork();
  }

  /** Takes up the outcome of heavy work that has been run. */
  public Changed finished(HeavyWork work) {
    changes.begin();
    if (!work.isCancelled()) {
      for (Node node : wiring.order()) {
        if (node.state() == Figure.State.WORKING) {
          wiring.touch(node);
        }
      }
    }
    settle();
    return changes.taken();
  }

  /**
   * What a text would give in the place of a clause's, without keeping it.
   *
   * @return the figures that would change, those gone left out, and the clause's problems
   */
  public Preview preview(String clause, String text) {
    GraphSource kept = source;
    String label = label(clause);
    evaluation.hold();
    Changed change = update(new Clause.Working(clause, label, text));
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (String name : change.names()) {
      figure(name).ifPresent(f -> figures.put(name, f));
    }
    Preview preview = new Preview(figures, problems(clause), lines(clause));
    evaluation.release();
    update(kept);
    return preview;
  }

  /** What {@link #preview} found. */
  public record Preview(
      Map<String, Figure> figures, List<ClauseProblem> problems, List<PlacedLine> lines) {}

  /**
   * A statement and where it stands.
   *
   * @param firstLine number of lines before it in its clause
   * @param text of it
   * @param line parsed, its spans counted from its own first line
   */
  public record PlacedLine(int firstLine, String text, Line line) {}

  private void settings(GraphSource now) {
    GraphSettings before = source.settings();
    boolean same = now.settings().equals(before);
    boolean readAnew =
        !now.settings().stage().equals(before.stage()) || !now.date().equals(source.date());
    source =
        new GraphSource(
            source.clauses(), source.instruments(), source.materials(), now.settings(), now.date());
    evaluation.settings(now.settings());
    if (same && !readAnew) {
      return;
    }
    for (Node node : clauses.nodes()) {
      if (readAnew && node instanceof ReadingNode) {
        node.uncheck();
      }
      wiring.touch(node);
    }
  }

  private void instruments(List<Instrument> now) {
    if (now.equals(source.instruments())) {
      return;
    }
    Set<String> different = new HashSet<>(instruments.keySet());
    Map<String, Instrument> fresh = new LinkedHashMap<>();
    for (Instrument instrument : now) {
      if (instrument.equals(instruments.get(instrument.id()))) {
        different.remove(instrument.id());
      } else {
        different.add(instrument.id());
      }
      fresh.put(instrument.id(), instrument);
    }
    instruments.clear();
    instruments.putAll(fresh);
    for (Node node : clauses.nodes()) {
      if (node instanceof ReadingNode reading
          && reading.instruments().stream().anyMatch(different::contains)) {
        reading.uncheck();
        wiring.touch(reading);
      }
    }
  }

  /** Rare, so every line is worked out anew and not only those that name a material. */
  private void materials(List<EnteredMaterial> now) {
    if (!now.equals(source.materials())) {
      evaluation.materials(new Materials(now, checker));
      clauses.nodes().forEach(wiring::touch);
    }
  }

  /** Puts a node in the place of another and works out what that changes. */
  List<Node> exchange(Node old, Node fresh) {
    changes.begin();
    wiring.replace(old, fresh);
    settle();
    return changes.nodes();
  }

  private void settle() {
    wiring.settle(clauses::nodes, dirty);
    propagate();
    while (correlate()) {
      propagate();
    }
    evaluation.dropWorkOf(owner -> wiring.isGiven(owner));
  }

  /** Works out what is dirty, each after what it reads; those in a circle may come up again. */
  private void propagate() {
    for (int at = dirty.take(); at >= 0; at = dirty.take()) {
      Node node = wiring.order().get(at);
      Node.Change change = node.update(this);
      if (change != Node.Change.NONE) {
        spread(node, change);
      }
      if (node.circle() != null) {
        node.circle().members().forEach(member -> dirty.add(member.giver().rank()));
      }
    }
  }

  private void spread(Node node, Node.Change change) {
    changes.add(node);
    Slot slot = node.giving();
    if (slot == null || change == Node.Change.WORDS) {
      return;
    }
    for (Node reader : slot.readers()) {
      pass(node, change, reader);
    }
    for (Node watcher : slot.watchers()) {
      pass(node, change, watcher);
    }
  }

  /** A solve comes before the lines of its circle and does not follow from them. */
  private void pass(Node node, Node.Change change, Node reader) {
    if (reader.leads(node)) {
      return;
    }
    // what a solve has found out before their turn stands
    if (change == Node.Change.KIND && !node.leads(reader)) {
      reader.uncheck();
    }
    dirty.add(reader.rank());
  }

  /** Takes up the correlations; whether anything must be worked out again for them. */
  private boolean correlate() {
    if (wiring.correlating().isEmpty() && evaluation.correlations().isEmpty()) {
      return false;
    }
    CorrelationGroups groups = CorrelationGroups.of(wiring.correlating());
    for (CorrelateNode node : groups.changedRefusals()) {
      changes.clause(node.clause());
    }
    Correlations now = groups.correlations();
    Correlations before = evaluation.correlations();
    if (now.pairs().equals(before.pairs())) {
      return false;
    }
    evaluation.correlations(now);
    for (Node node : wiring.order()) {
      if (node.giving() == null
          ? node instanceof LimitNode
          : touches(node.value(), before) || touches(node.value(), now)) {
        dirty.add(node.rank());
        changes.moved(node);
      }
    }
    return !dirty.isEmpty();
  }

  private static boolean touches(Value value, Correlations correlations) {
    if (value instanceof Value.Scalar scalar) {
      return correlations.touch(scalar.gradient());
    }
    if (value instanceof Value.Series series) {
      return series.elements().stream().anyMatch(e -> touches(e, correlations));
    }
    return value instanceof Value.Fields fields
        && fields.values().stream().anyMatch(e -> touches(e, correlations));
  }

  // ----- what nodes ask -----

  Slot slot(String name) {
    return wiring.slot(name);
  }

  /** What a node that is no part of the graph would read of it. */
  Slot[] readsOf(Node node) {
    return wiring.readsOf(node);
  }

  /** The column of a table by its name with the table's. */
  Optional<Slot> column(String name) {
    return existing(name).filter(Slot::isColumn);
  }

  /** The slot of a name, where it is known. */
  Optional<Slot> existing(String name) {
    return Optional.ofNullable(wiring.existing(name));
  }

  Collection<Slot> slots() {
    return wiring.slots();
  }

  /** The kind that a solve has by its brackets alone. */
  Optional<Kind> bracket(Line.Definition solve) {
    return checker.bracket(solve, scope);
  }

  Checked check(Line line) {
    return checker.check(line, scope);
  }

  boolean isDoubled(Node node) {
    return node.giving() != null && node.giving().giver() == null;
  }

  /** Whether the kinds of all names that exist are known. */
  boolean kindsKnown(Slot[] reads) {
    return kindsKnown(java.util.Arrays.asList(reads));
  }

  boolean kindsKnown(Iterable<Slot> reads) {
    for (Slot read : reads) {
      if (!read.givers().isEmpty() && read.kind() == null) {
        return false;
      }
    }
    return true;
  }

  Instrument instrument(String id) {
    return instruments.get(id);
  }

  Evaluation evaluation() {
    return evaluation;
  }

  // ----- what others ask -----

  public GraphSettings settings() {
    return source.settings();
  }

  /** Which roots vary together. */
  public Correlations correlations() {
    return evaluation.correlations();
  }

  /** Standard uncertainty of a value with the correlations of this record [SI]. */
  public double standardUncertainty(Value.Scalar value) {
    return evaluation.correlations().standardUncertainty(value.gradient());
  }

  /** The record as it was last taken. */
  public GraphSource source() {
    return source;
  }

  /** How many lines and readings have been worked out since the start; for tests. */
  public long evaluations() {
    return evaluation.count();
  }

  public Optional<Figure> figure(String name) {
    Slot slot = wiring.existing(name);
    return slot == null || slot.givers().isEmpty()
        ? Optional.empty()
        : Optional.of(new FigureMaker(this).figure(slot));
  }

  /** All figures, in the order of the record. */
  public Map<String, Figure> figures() {
    FigureMaker maker = new FigureMaker(this);
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (Node node : clauses.nodes()) {
      if (node.giving() != null && !(node instanceof TableNode)) {
        figures.computeIfAbsent(node.name(), n -> maker.figure(node.giving()));
      }
    }
    return figures;
  }

  /** How a value stands to what it is only compared with, such as the limits of a new part. */
  public List<Judgement> comparisons(String name) {
    Slot slot = wiring.existing(name);
    return slot == null || slot.givers().isEmpty()
        ? List.of()
        : new FigureMaker(this).judgements(slot, false);
  }

  /** The names that the line of a name reads; none where it is not given once. */
  public Set<String> reads(String name) {
    Slot slot = wiring.existing(name);
    if (slot == null || slot.giver() == null) {
      return Set.of();
    }
    Set<String> names = new LinkedHashSet<>();
    for (Slot read : slot.giver().reads()) {
      names.add(read.name());
    }
    return names;
  }

  /**
   * Coefficient of correlation of two single values, by the roots they share; 0 where either is
   * exact.
   */
  public double correlation(Figure x, Figure y) {
    double both = x.standardUncertainty() * y.standardUncertainty();
    if (both == 0) {
      return 0;
    }
    double covariance =
        correlations()
            .covariance(
                ((Value.Scalar) x.value().orElseThrow()).gradient(),
                ((Value.Scalar) y.value().orElseThrow()).gradient());
    return Math.max(-1, Math.min(1, covariance / both));
  }

  /** All that is wrong or worth a hint in a clause, in its order. */
  public List<ClauseProblem> problems(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    if (nodes == null) {
      return List.of();
    }
    FigureMaker maker = new FigureMaker(this);
    List<ClauseProblem> problems = maker.problems(nodes.nodes());
    CommentedLines.in(nodes.text(), scope())
        .forEach(p -> problems.add(new ClauseProblem(clause, "", maker.said(p))));
    return problems;
  }

  /** The statements of a working that can be read. */
  public List<PlacedLine> lines(String clause) {
    List<PlacedLine> lines = new ArrayList<>();
    if (clauses.get(clause) != null) {
      for (Node node : clauses.get(clause).nodes()) {
        if (node instanceof LineNode line) {
          lines.add(new PlacedLine(node.offset(), line.piece().text(), line.line()));
        }
      }
    }
    return lines;
  }

  String label(String clause) {
    return clauses.label(clause);
  }

  /** Place of a clause in the record, counted from 0. */
  int place(String clause) {
    return clauses.place(clause);
  }

  /** Where a figure comes from and what needs it; empty for a name that does not exist. */
  public Optional<Trace> trace(String name) {
    return figure(name).map(f -> new TraceMaker(this).trace(name));
  }

  /** Names of the values whose own line names one of these. */
  public Set<String> readers(Collection<String> names) {
    Set<String> readers = new LinkedHashSet<>();
    for (String name : names) {
      Slot slot = wiring.existing(name);
      if (slot != null) {
        for (Node reader : slot.readers()) {
          readers.add(reader.name());
        }
      }
    }
    readers.remove("");
    return readers;
  }

  /** The kind of a name, as the language's checker sees it. */
  Optional<Kind> kindOf(String name) {
    Slot slot = wiring.existing(name);
    return slot == null ? Optional.empty() : Optional.ofNullable(slot.kind());
  }

  /** The unit of a name; empty where none is known. */
  Optional<endfloat.units.Unit> unitOf(String name) {
    Slot slot = wiring.existing(name);
    return slot == null ? Optional.empty() : Optional.ofNullable(slot.unit());
  }

  /** The names around a line, for completion and hover. */
  public endfloat.working.Scope scope() {
    return scope;
  }

  List<Node> nodes() {
    return wiring.order();
  }
}
