package endfloat.engine;

import endfloat.working.LineProblem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Correlations by groups of roots that hang together; a group that cannot be is refused whole. */
final class CorrelationGroups {
  private static final Comparator<Correlations.Pair> BY_ROOTS =
      Comparator.comparing(Correlations.Pair::first).thenComparing(Correlations.Pair::second);

  private final List<Correlations.Pair> accepted = new ArrayList<>();
  private final Set<CorrelateNode> changedRefusals = new HashSet<>();

  static CorrelationGroups of(Collection<CorrelateNode> lines) {
    CorrelationGroups groups = new CorrelationGroups();
    Map<CorrelateNode, Correlations.Pair> pairs = new HashMap<>();
    Map<Root, Root> leaders = new HashMap<>();
    for (CorrelateNode line : lines) {
      if (line.state() == Figure.State.FRESH) {
        Correlations.Pair pair = line.pair();
        pairs.put(line, pair);
        join(leaders, pair.first(), pair.second());
      } else if (line.refuse(null)) {
        groups.changedRefusals.add(line);
      }
    }
    Map<Root, List<CorrelateNode>> byLeader = new TreeMap<>();
    pairs.forEach(
        (line, pair) ->
            byLeader
                .computeIfAbsent(leader(leaders, pair.first()), l -> new ArrayList<>())
                .add(line));
    byLeader.values().forEach(group -> groups.judge(group, pairs));
    groups.accepted.sort(BY_ROOTS);
    return groups;
  }

  private static void join(Map<Root, Root> leaders, Root a, Root b) {
    Root first = leader(leaders, a);
    Root second = leader(leaders, b);
    if (!first.equals(second)) {
      boolean firstLeads = first.compareTo(second) < 0;
      leaders.put(firstLeads ? second : first, firstLeads ? first : second);
    }
  }

  private static Root leader(Map<Root, Root> leaders, Root root) {
    Root leader = root;
    while (leaders.get(leader) != null) {
      leader = leaders.get(leader);
    }
    return leader;
  }

  private void judge(List<CorrelateNode> group, Map<CorrelateNode, Correlations.Pair> pairs) {
    List<Correlations.Pair> all = new ArrayList<>(group.stream().map(pairs::get).toList());
    all.sort(BY_ROOTS);
    boolean twice = false;
    for (int i = 1; i < all.size(); i++) {
      twice |= BY_ROOTS.compare(all.get(i - 1), all.get(i)) == 0;
    }
    boolean possible = !twice && new Correlations(all).refusal().isEmpty();
    if (possible) {
      accepted.addAll(all);
    }
    for (CorrelateNode line : group) {
      LineProblem problem =
          possible
              ? null
              : LineProblem.error(
                  line.line().span(),
                  twice
                      ? "Two inputs are correlated twice."
                      : "These correlations cannot all hold together.",
                  twice
                      ? "Keep one of the two lines."
                      : "Where a goes with b and b with c, a cannot go against c as much as this.");
      if (line.refuse(problem)) {
        changedRefusals.add(line);
      }
    }
  }

  /** All that hold, in an order that does not hang on how they were typed. */
  Correlations correlations() {
    return accepted.isEmpty() ? Correlations.NONE : new Correlations(accepted);
  }

  /** Lines that are refused now and were not, or the other way. */
  Set<CorrelateNode> changedRefusals() {
    return changedRefusals;
  }
}
