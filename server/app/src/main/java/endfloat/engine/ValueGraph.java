package endfloat.engine;

import endfloat.catalogue.Catalogue;
import endfloat.record.Instrument;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.KindChecker;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The values of a record. {@link #update} takes the record as it is now and works out what that
 * changes and nothing else; what was typed in which order leaves no trace in any figure.
 *
 * <p>One thread at a time; the figures handed out are immutable and may go anywhere.
 */
public final class ValueGraph implements Frame {
  private final KindChecker checker;
  private final NameScope scope = new NameScope(this);
  private final Map<String, Slot> slots = new HashMap<>();
  private final Map<String, ClauseNodes> clauses = new LinkedHashMap<>();
  private final Map<String, Instrument> instruments = new LinkedHashMap<>();
  private GraphSource source = GraphSource.EMPTY;
  private List<Node> order = List.of();
  private final RankSet dirty = new RankSet();
  private Set<Node> dirtyNodes = new LinkedHashSet<>();
  private boolean restructured;
  private Correlations correlations = Correlations.NONE;
  private final Set<CorrelateNode> correlating = new LinkedHashSet<>();
  private List<LineProblem> noted = new ArrayList<>();
  private Set<String> changed = new LinkedHashSet<>();
  private Set<String> changedClauses = new LinkedHashSet<>();
  private List<Node> changedNodes = new ArrayList<>();
  private long update;
  private long evaluations;

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
    begin();
    settings(now.settings());
    instruments(now.instruments());
    clauses(now.clauses());
    source = now;
    settle();
    return changed();
  }

  private Changed changed() {
    for (Node node : changedNodes) {
      changedClauses.add(node.clause());
      if (node instanceof LimitNode limit) {
        changed.add(limit.limit().place().name());
      } else if (node.giving() != null) {
        changed.add(node.name());
      }
    }
    return new Changed(Set.copyOf(changed), Set.copyOf(changedClauses));
  }

  /**
   * Fresh sets: one that once held a whole record takes as long to clear as a whole record does.
   */
  private void begin() {
    update++;
    changed = new LinkedHashSet<>();
    changedClauses = new LinkedHashSet<>();
    changedNodes = new ArrayList<>();
  }

  /** Puts one clause in the place of the one of its id; the other clauses are not looked at. */
  public Changed update(Clause clause) {
    ClauseNodes nodes = clauses.get(clause.id());
    if (nodes == null) {
      return update(source.with(clause));
    }
    begin();
    nodes.stands(nodes.place(), clause.label());
    nodes.update(clause);
    source = source.with(clause);
    settle();
    return changed();
  }

  /**
   * What a text would give in the place of a clause's, without keeping it.
   *
   * @return the figures that would change, those gone left out, and the clause's problems
   */
  public Preview preview(String clause, String text) {
    GraphSource kept = source;
    String label = label(clause);
    Changed change = update(new Clause.Working(clause, label, text));
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (String name : change.names()) {
      figure(name).ifPresent(f -> figures.put(name, f));
    }
    Preview preview = new Preview(figures, problems(clause), lines(clause));
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

  private void settings(GraphSettings now) {
    if (now.equals(source.settings())) {
      return;
    }
    boolean stage = !now.stage().equals(source.settings().stage());
    source = new GraphSource(source.clauses(), source.instruments(), now);
    for (ClauseNodes clause : clauses.values()) {
      for (Node node : clause.nodes()) {
        if (stage && node instanceof ReadingNode) {
          node.uncheck();
        }
        touch(node);
      }
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
    for (ClauseNodes clause : clauses.values()) {
      for (Node node : clause.nodes()) {
        if (node instanceof ReadingNode reading
            && reading.instruments().stream().anyMatch(different::contains)) {
          reading.uncheck();
          touch(reading);
        }
      }
    }
  }

  private void clauses(List<Clause> now) {
    if (!sameOrder(now)) {
      rearrange(now);
    }
    int place = 0;
    for (ClauseNodes nodes : clauses.values()) {
      Clause clause = now.get(place);
      nodes.stands(place++, clause.label());
      nodes.update(clause);
    }
  }

  private boolean sameOrder(List<Clause> now) {
    if (now.size() != clauses.size()) {
      return false;
    }
    int place = 0;
    for (ClauseNodes nodes : clauses.values()) {
      if (!nodes.id().equals(now.get(place++).id())) {
        return false;
      }
    }
    return true;
  }

  private void rearrange(List<Clause> now) {
    Map<String, ClauseNodes> before = new LinkedHashMap<>(clauses);
    clauses.clear();
    for (Clause clause : now) {
      ClauseNodes nodes = before.remove(clause.id());
      clauses.put(clause.id(), nodes != null ? nodes : new ClauseNodes(this, clause.id()));
    }
    for (ClauseNodes gone : before.values()) {
      gone.clear();
      changedClauses.add(gone.id());
    }
    if (clauses.size() != now.size()) {
      throw new IllegalArgumentException("two clauses have the same id");
    }
  }

  /** Takes a node in; it is worked out when the update settles. */
  void add(Node node) {
    if (!node.name().isEmpty()) {
      Slot slot = slot(node.name());
      node.giving(slot);
      slot.givers().add(node);
      contested(slot);
    }
    Set<String> names = node.namesRead();
    Slot[] reads = new Slot[names.size()];
    int i = 0;
    for (String name : names) {
      reads[i] = slot(name);
      reads[i++].addReader(node);
    }
    node.reads(reads);
    if (node instanceof CorrelateNode correlate) {
      correlating.add(correlate);
    }
    restructured = true;
    touch(node);
  }

  /** Takes a node out. */
  void remove(Node node) {
    for (Slot read : node.reads()) {
      read.removeReader(node);
      dropUnused(read);
    }
    if (node.giving() != null) {
      node.giving().givers().remove(node);
      changed.add(node.name());
      contested(node.giving());
      dropUnused(node.giving());
    }
    if (node instanceof CorrelateNode correlate) {
      correlating.remove(correlate);
    }
    changedClauses.add(node.clause());
    if (node instanceof LimitNode limit) {
      changed.add(limit.limit().place().name());
    }
    dirtyNodes.remove(node);
    restructured = true;
  }

  /**
   * Puts a node in the place of one that gives the same name and reads the same: the order of the
   * graph stays as it is.
   */
  void replace(Node old, Node fresh) {
    if (!old.name().equals(fresh.name())
        || !old.namesRead().equals(fresh.namesRead())
        || old instanceof CorrelateNode
        || fresh instanceof CorrelateNode
        || (old.name().isEmpty() && old.namesRead().isEmpty())
        || restructured
        || old.rank() < 0) {
      remove(old);
      add(fresh);
      return;
    }
    fresh.rank(old.rank());
    fresh.cycle(old.cycle());
    fresh.giving(old.giving());
    fresh.inherit(old);
    if (old.giving() != null) {
      List<Node> givers = old.giving().givers();
      givers.set(givers.indexOf(old), fresh);
      changed.add(fresh.name());
    }
    for (Slot read : old.reads()) {
      read.removeReader(old);
      read.addReader(fresh);
    }
    fresh.reads(old.reads());
    if (old instanceof LimitNode limit) {
      changed.add(limit.limit().place().name());
    }
    changedClauses.add(old.clause());
    order.set(fresh.rank(), fresh);
    dirtyNodes.remove(old);
    touch(fresh);
  }

  /** Puts a node in the place of another and works out what that changes. */
  List<Node> exchange(Node old, Node fresh) {
    begin();
    replace(old, fresh);
    settle();
    return changedNodes;
  }

  /** A node whose lines have moved; its figure says another place. */
  void moved(Node node) {
    if (node.giving() != null) {
      changed.add(node.name());
    } else if (node instanceof LimitNode limit) {
      changed.add(limit.limit().place().name());
    }
  }

  private void contested(Slot slot) {
    for (Node giver : slot.givers()) {
      giver.uncheck();
      touch(giver);
    }
    for (Node reader : slot.readers()) {
      reader.uncheck();
      touch(reader);
    }
  }

  private void dropUnused(Slot slot) {
    if (slot.isUnused()) {
      slots.remove(slot.name());
    }
  }

  private void touch(Node node) {
    dirtyNodes.add(node);
  }

  private void settle() {
    if (restructured) {
      restructured = false;
      List<Node> all = new ArrayList<>();
      for (ClauseNodes clause : clauses.values()) {
        all.addAll(clause.nodes());
      }
      Map<Node, List<Slot>> before = new HashMap<>();
      all.stream().filter(n -> !n.cycle().isEmpty()).forEach(n -> before.put(n, n.cycle()));
      order = new ArrayList<>(Order.of(all));
      for (Node node : all) {
        if (!node.cycle().equals(before.getOrDefault(node, List.of()))) {
          node.uncheck();
          touch(node);
        }
      }
    }
    for (Node node : dirtyNodes) {
      dirty.add(node.rank());
    }
    dirtyNodes = new LinkedHashSet<>();
    propagate();
    while (correlate()) {
      propagate();
    }
  }

  /** Works out what is dirty, each after what it reads; those in a circle may come up again. */
  private void propagate() {
    for (int at = dirty.take(); at >= 0; at = dirty.take()) {
      Node node = order.get(at);
      Node.Change change = node.update(this);
      if (change != Node.Change.NONE) {
        spread(node, change);
      }
    }
  }

  private void spread(Node node, Node.Change change) {
    if (node.changedIn() != update) {
      node.changedIn(update);
      changedNodes.add(node);
    }
    Slot slot = node.giving();
    if (slot == null || change == Node.Change.WORDS) {
      return;
    }
    for (Node reader : slot.readers()) {
      if (change == Node.Change.KIND) {
        reader.uncheck();
      }
      dirty.add(reader.rank());
    }
  }

  /** Takes up the correlations; whether anything must be worked out again for them. */
  private boolean correlate() {
    if (correlating.isEmpty() && correlations.isEmpty()) {
      return false;
    }
    CorrelationGroups groups = CorrelationGroups.of(correlating);
    for (CorrelateNode node : groups.changedRefusals()) {
      changedClauses.add(node.clause());
    }
    Correlations now = groups.correlations();
    if (now.pairs().equals(correlations.pairs())) {
      return false;
    }
    Correlations before = correlations;
    correlations = now;
    for (Node node : order) {
      if (node.giving() == null
          ? node instanceof LimitNode
          : touches(node.value(), before) || touches(node.value(), now)) {
        dirty.add(node.rank());
        changed.add(node.name());
      }
    }
    changed.remove("");
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
    return slots.computeIfAbsent(name, Slot::new);
  }

  Optional<Slot> existing(String name) {
    return Optional.ofNullable(slots.get(name));
  }

  Collection<Slot> slots() {
    return slots.values();
  }

  Checked check(Line line) {
    return checker.check(line, scope);
  }

  boolean isDoubled(Node node) {
    return node.giving() != null && node.giving().givers().size() > 1;
  }

  /** Whether the kinds of all names that exist are known. */
  boolean kindsKnown(Slot[] reads) {
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

  void evaluating() {
    evaluations++;
    if (!noted.isEmpty()) {
      noted = new ArrayList<>();
    }
  }

  List<LineProblem> takeHints() {
    return noted.isEmpty() ? List.of() : List.copyOf(new LinkedHashSet<>(noted));
  }

  @Override
  public Value of(Slot slot) {
    return slot.value();
  }

  @Override
  public Correlations correlations() {
    return correlations;
  }

  @Override
  public GraphSettings settings() {
    return source.settings();
  }

  @Override
  public void hint(LineProblem hint) {
    noted.add(hint);
  }

  // ----- what others ask -----

  /** The record as it was last taken. */
  public GraphSource source() {
    return source;
  }

  /** How many lines and readings have been worked out since the start; for tests. */
  public long evaluations() {
    return evaluations;
  }

  public Optional<Figure> figure(String name) {
    Slot slot = slots.get(name);
    return slot == null || slot.givers().isEmpty()
        ? Optional.empty()
        : Optional.of(new FigureMaker(this).figure(slot));
  }

  /** All figures, in the order of the record. */
  public Map<String, Figure> figures() {
    FigureMaker maker = new FigureMaker(this);
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (ClauseNodes clause : clauses.values()) {
      for (Node node : clause.nodes()) {
        if (node.giving() != null) {
          figures.computeIfAbsent(node.name(), n -> maker.figure(node.giving()));
        }
      }
    }
    return figures;
  }

  /** How a value stands to what it is only compared with, such as the limits of a new part. */
  public List<Judgement> comparisons(String name) {
    Slot slot = slots.get(name);
    return slot == null || slot.givers().isEmpty()
        ? List.of()
        : new FigureMaker(this).judgements(slot, false);
  }

  /** The names that the line of a name reads; none where it is not given once. */
  public Set<String> reads(String name) {
    Slot slot = slots.get(name);
    return slot == null || slot.giver() == null ? Set.of() : slot.giver().namesRead();
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
        correlations.covariance(
            ((Value.Scalar) x.value().orElseThrow()).gradient(),
            ((Value.Scalar) y.value().orElseThrow()).gradient());
    return Math.max(-1, Math.min(1, covariance / both));
  }

  /** All that is wrong or worth a hint in a clause, in its order. */
  public List<ClauseProblem> problems(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    return nodes == null ? List.of() : new FigureMaker(this).problems(nodes.nodes());
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
    ClauseNodes nodes = clauses.get(clause);
    return nodes == null ? "" : nodes.label();
  }

  /** Place of a clause in the record, counted from 0. */
  int place(String clause) {
    ClauseNodes nodes = clauses.get(clause);
    return nodes == null ? -1 : nodes.place();
  }

  /** Where a figure comes from and what needs it; empty for a name that does not exist. */
  public Optional<Trace> trace(String name) {
    return figure(name).map(f -> new TraceMaker(this).trace(name));
  }

  /** Names of the values whose own line names one of these. */
  public Set<String> readers(Collection<String> names) {
    Set<String> readers = new LinkedHashSet<>();
    for (String name : names) {
      Slot slot = slots.get(name);
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
    return existing(name).map(Slot::kind).filter(Objects::nonNull);
  }

  /** The names around a line, for completion and hover. */
  public endfloat.working.Scope scope() {
    return scope;
  }

  List<Node> nodes() {
    return order;
  }
}
