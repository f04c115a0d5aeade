package endfloat.engine;

import endfloat.catalogue.Catalogue;
import endfloat.record.Instrument;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.KindChecker;
import endfloat.working.Line;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The values of a record. {@link #update} takes the record as it is now and works out what that
 * changes and nothing else; what was typed in which order leaves no trace in any figure.
 *
 * <p>One thread at a time; the figures handed out are immutable and may go anywhere.
 */
public final class ValueGraph {
  private final KindChecker checker;
  private final CellRunner runner;
  private final NameScope scope = new NameScope(this);
  private final ChangeList changes = new ChangeList();
  private final Wiring wiring = new Wiring(changes);
  private final Evaluation evaluation = new Evaluation();
  private final ClauseList clauses = new ClauseList(wiring, changes);
  private final Registers registers;
  private final Propagation propagation = new Propagation(this, wiring, evaluation, changes);
  private GraphSource source = GraphSource.EMPTY;

  /** An empty graph over the calculations of a catalogue. */
  public ValueGraph(Catalogue catalogue) {
    this(catalogue, ProgramRunner.get());
  }

  /** An empty graph that has its java clauses run. */
  public ValueGraph(Catalogue catalogue, CellRunner runner) {
    this.checker = new KindChecker(catalogue);
    this.registers = new Registers(clauses, wiring, evaluation, checker);
    this.runner = runner;
  }

  /** A graph of the library's calculations for a record. */
  public static ValueGraph of(GraphSource source) {
    return of(source, ProgramRunner.get());
  }

  /** The same with a runner of its java clauses. */
  public static ValueGraph of(GraphSource source, CellRunner runner) {
    ValueGraph graph = new ValueGraph(Catalogue.library(), runner);
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
    registers.update(source, now);
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

  /** Whether another process is at work for a figure, which takes as long as its source likes. */
  public boolean isWorkingElsewhere() {
    return evaluation.hasOpenWorkElsewhere();
  }

  /** Cancels all heavy work: the graph is not needed any more. */
  public void cancelHeavyWork() {
    evaluation.cancelWork();
  }

  /** Has a java clause run once more: its source was approved, or its run had failed. */
  public Changed again(String clause) {
    changes.begin();
    run(clause)
        .ifPresent(
            node -> {
              node.again();
              wiring.touch(node);
            });
    settle();
    return changes.taken();
  }

  private Optional<RunNode> run(String clause) {
    return existing(RunNode.nameOf(clause))
        .filter(slot -> slot.giver() instanceof RunNode)
        .map(slot -> (RunNode) slot.giver());
  }

  /** How a java clause stands; empty for any other. */
  public Optional<JavaRun> javaRun(String clause) {
    return run(clause)
        .map(
            node ->
                new JavaRun(
                    node.state(),
                    Optional.ofNullable((Value.Ran) node.value()),
                    Optional.ofNullable(new FigureMaker(this).said(node.problem())),
                    node.readNames()));
  }

  /** All names that a source may read, with their kinds and no values. */
  public List<CellRunner.Read> javaReads() {
    List<CellRunner.Read> reads = new java.util.ArrayList<>();
    for (Slot slot : wiring.slots()) {
      boolean isFigure = !(slot.giver() instanceof RunNode) && !(slot.giver() instanceof TableNode);
      if (slot.kind() != null && isFigure && !(slot.kind() instanceof Kind.Parts)) {
        reads.add(new CellRunner.Read(JavaNames.camel(slot.name()), slot.kind(), null));
      }
    }
    return reads;
  }

  /** What the head of a java clause promises. */
  public List<Give> javaGives(String clause) {
    return run(clause).map(RunNode::gives).orElse(List.of());
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
    return preview(new Clause.Working(clause, label(clause), text));
  }

  /** What a clause would give in the place of the one of its id, without keeping it. */
  Preview preview(Clause other) {
    GraphSource kept = source;
    String clause = other.id();
    evaluation.hold();
    Changed change = update(other);
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

  /** Puts a node in the place of another and works out what that changes. */
  List<Node> exchange(Node old, Node fresh) {
    changes.begin();
    wiring.replace(old, fresh);
    settle();
    return changes.nodes();
  }

  private void settle() {
    propagation.settle(clauses);
  }

  // ----- what nodes ask -----

  Slot slot(String name) {
    return wiring.slot(name);
  }

  /** What a node that is no part of the graph would read of it. */
  Slot[] readsOf(Node node) {
    return wiring.readsOf(node);
  }

  /** Whether a name is a column whose values are typed, not worked out. */
  public boolean isTypedColumn(String name) {
    return existing(name).filter(slot -> slot.giver() instanceof ColumnNode).isPresent();
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
    return registers.instrument(id);
  }

  /** What runs its java clauses. */
  public CellRunner cellRunner() {
    return runner;
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

  /**
   * Expanded uncertainty of a value, with the correlations and the coverage of this record [SI].
   */
  public double expandedUncertainty(Value.Scalar value) {
    double u = standardUncertainty(value);
    return settings().expanded(u, correlations().degreesOfFreedom(value.gradient(), u));
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
    return new FigureMaker(this).figures(clauses.nodes());
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
    return wiring.namesReadBy(name);
  }

  /** Names that a name rests on whose uncertainty is not carried, so that no verdict is proven. */
  public Set<String> uncarried(String name) {
    Slot slot = wiring.existing(name);
    Set<String> all = new TreeSet<>();
    if (slot != null) {
      slot.givers().forEach(giver -> all.addAll(giver.uncarried()));
    }
    return all;
  }

  /**
   * Coefficient of correlation of two single values, by the roots they share; 0 where either is
   * exact.
   */
  public double correlation(Figure x, Figure y) {
    return correlations().coefficient(x, y);
  }

  /** All that is wrong or worth a hint in a clause, in its order. */
  public List<ClauseProblem> problems(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    if (nodes == null) {
      return List.of();
    }
    return new FigureMaker(this).problems(nodes);
  }

  /** The statements of a working that can be read. */
  public List<PlacedLine> lines(String clause) {
    return clauses.get(clause) == null ? List.of() : clauses.get(clause).lines();
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
    return wiring.namesThatRead(names);
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
