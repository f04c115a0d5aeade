package endfloat.engine;

import endfloat.working.LineProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What lines see of a graph while they are worked out, and what they leave behind. */
final class Evaluation implements Frame {
  private Correlations correlations = Correlations.NONE;
  private GraphSettings settings = GraphSettings.STANDARD;
  private Materials materials = Materials.NONE;
  private List<LineProblem> noted = new ArrayList<>();
  private long count;
  private boolean offPath;
  private final Map<String, Map<String, HeavyWork>> heavy = new HashMap<>();
  private Map<String, HeavyWork> asked = Map.of();
  private String owner = "";
  private List<HeavyWork> wanted = new ArrayList<>();
  private Map<String, Map<String, HeavyWork>> held;

  void settings(GraphSettings now) {
    settings = now;
  }

  void materials(Materials now) {
    materials = now;
  }

  void correlations(Correlations now) {
    correlations = now;
  }

  /** From now on heavy calculations are left for {@link #takeWanted}. */
  void leaveHeavyWork() {
    offPath = true;
  }

  boolean leavesHeavyWork() {
    return offPath;
  }

  /** Heavy work that lines have asked for since the last time. */
  List<HeavyWork> takeWanted() {
    List<HeavyWork> taken = wanted.stream().filter(w -> !w.isCancelled()).toList();
    wanted = new ArrayList<>();
    return taken;
  }

  /**
   * One more line is worked out.
   *
   * @param name that it gives; empty for none
   */
  void begin(String name) {
    count++;
    owner = name;
    asked = Map.of();
    if (!noted.isEmpty()) {
      noted = new ArrayList<>();
    }
  }

  long count() {
    return count;
  }

  /** The line is worked out; heavy work that it no longer asks for is cancelled. */
  List<LineProblem> end() {
    if (!heavy.isEmpty() || !asked.isEmpty()) {
      Map<String, HeavyWork> before =
          asked.isEmpty() ? heavy.remove(owner) : heavy.put(owner, asked);
      if (before != null && held == null) {
        before.values().stream().filter(w -> !asked.containsValue(w)).forEach(HeavyWork::cancel);
      }
    }
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
  public Materials materials() {
    return materials;
  }

  @Override
  public GraphSettings settings() {
    return settings;
  }

  @Override
  public void hint(LineProblem hint) {
    noted.add(hint);
  }

  @Override
  public Value heavy(SlowTerm term, Value[] values, String identity) {
    if (!offPath) {
      return Frame.super.heavy(term, values, identity);
    }
    HeavyWork known = heavy.getOrDefault(owner, Map.of()).get(identity);
    if (known == null || !known.isOf(values, correlations)) {
      known =
          new HeavyWork(
              owner, term, values, identity, new Snapshot(correlations, materials, settings));
      if (held == null) {
        wanted.add(known);
      }
    }
    if (asked.isEmpty()) {
      asked = new HashMap<>();
    }
    asked.put(identity, known);
    return known.outcome();
  }

  /** For as long as a preview takes: work goes on as it is, and none is asked for. */
  void hold() {
    held = new HashMap<>(heavy);
  }

  /** The end of a preview, before the kept lines are worked out again. */
  void release() {
    heavy.clear();
    heavy.putAll(held);
    held = null;
  }

  /** Whether work is going on that a figure waits for. */
  boolean hasOpenWork() {
    return openWork().findAny().isPresent();
  }

  /** The same of another process. */
  boolean hasOpenWorkElsewhere() {
    return openWork().anyMatch(HeavyWork::runsElsewhere);
  }

  private Stream<HeavyWork> openWork() {
    return heavy.values().stream()
        .flatMap(ofName -> ofName.values().stream())
        .filter(HeavyWork::isOpen);
  }

  /** Cancels all work. */
  void cancelWork() {
    heavy.values().forEach(ofName -> ofName.values().forEach(HeavyWork::cancel));
    heavy.clear();
    wanted.clear();
  }

  /** Cancels the work of names that are gone. */
  void dropWorkOf(Predicate<String> isGiven) {
    if (heavy.isEmpty() || held != null) {
      return;
    }
    for (String name : List.copyOf(heavy.keySet())) {
      if (!name.isEmpty() && !isGiven.test(name)) {
        heavy.remove(name).values().forEach(HeavyWork::cancel);
      }
    }
  }

  /** The graph as it was when heavy work was asked for; safe in any thread. */
  record Snapshot(Correlations correlations, Materials materials, GraphSettings settings)
      implements Frame {
    @Override
    public Value of(Slot slot) {
      throw new IllegalStateException("heavy work has its values already");
    }

    @Override
    public void hint(LineProblem hint) {
      // heavy work reports its value alone
    }
  }
}
