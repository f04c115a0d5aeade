package endfloat.http.view;

import endfloat.engine.Figure;
import endfloat.engine.ValueGraph;
import endfloat.working.Line;
import endfloat.working.References;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Lines that name a figure: their numbers put in read otherwise when it changes, even where their
 * own value stays.
 */
final class Readers {
  private Readers() {}

  static Set<String> of(Set<String> names, Map<String, Figure> figures, ValueGraph graph) {
    Set<String> readers = new LinkedHashSet<>();
    Set<String> clauses = new HashSet<>();
    figures.values().forEach(figure -> clauses.add(figure.clause()));
    for (String clause : clauses) {
      for (ValueGraph.PlacedLine placed : graph.lines(clause)) {
        if (placed.line() instanceof Line.Definition definition
            && definition.value().isPresent()
            && References.of(definition.value().get()).stream().anyMatch(names::contains)) {
          readers.add(definition.name());
        }
      }
    }
    return readers;
  }
}
