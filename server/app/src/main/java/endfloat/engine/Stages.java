package endfloat.engine;

import endfloat.record.Reading;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Verdicts stage by stage, as found beside as left. A stage counts for a figure where every reading
 * that it rests on has been taken at it.
 */
public final class Stages {
  private Stages() {}

  /** The stages at which anything of the record has been read, in its order. */
  public static Set<String> of(ValueGraph graph) {
    Set<String> stages = new LinkedHashSet<>();
    for (Node node : graph.nodes()) {
      if (node instanceof ReadingNode reading) {
        stages.addAll(reading.stages());
      }
    }
    return stages;
  }

  /** The record as it is at another stage. */
  public static ValueGraph at(ValueGraph graph, String stage) {
    GraphSource source = graph.source();
    return ValueGraph.of(
        new GraphSource(
            source.clauses().stream()
                .map(clause -> said(clause, source.settings().stage()))
                .toList(),
            source.instruments(),
            source.materials(),
            source.settings().atStage(stage),
            source.date()));
  }

  /** What was read without a stage said was read at the present one. */
  private static Clause said(Clause clause, String present) {
    return clause instanceof Clause.Readings readings
        ? new Clause.Readings(
            readings.id(),
            readings.label(),
            readings.readings().stream().map(reading -> said(reading, present)).toList())
        : clause;
  }

  private static Reading said(Reading reading, String present) {
    return !reading.stage().isBlank()
        ? reading
        : new Reading(
            reading.name(),
            reading.what(),
            reading.unit(),
            reading.instrument(),
            reading.part(),
            present,
            reading.temperature(),
            reading.material(),
            reading.axes(),
            reading.entries(),
            reading.source());
  }

  /** The worst verdict on each figure that has one, at each stage that is fully read. */
  public static Map<String, Map<String, Verdict>> verdicts(ValueGraph graph) {
    Map<String, Map<String, Verdict>> verdicts = new LinkedHashMap<>();
    for (String stage : of(graph)) {
      at(graph, stage)
          .figures()
          .forEach(
              (name, figure) ->
                  figure
                      .verdict()
                      .filter(v -> figure.state() == Figure.State.FRESH)
                      .ifPresent(
                          v ->
                              verdicts
                                  .computeIfAbsent(name, n -> new LinkedHashMap<>())
                                  .put(stage, v)));
    }
    return verdicts;
  }

  /** The worst verdict on a figure at each stage that is fully read. */
  public static Map<String, Verdict> verdicts(ValueGraph graph, String name) {
    return verdicts(graph).getOrDefault(name, Map.of());
  }
}
