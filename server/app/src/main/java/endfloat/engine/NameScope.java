package endfloat.engine;

import endfloat.record.EnteredMaterial;
import endfloat.units.Unit;
import endfloat.working.Kind;
import endfloat.working.Scope;
import java.util.Collection;
import java.util.Optional;

/** The names of a graph as the language's checker sees them. */
final class NameScope implements Scope {
  private final ValueGraph graph;

  NameScope(ValueGraph graph) {
    this.graph = graph;
  }

  @Override
  public Optional<Kind> kindOf(String name) {
    return graph.kindOf(name);
  }

  @Override
  public Optional<Kind> columnOf(String table, String head) {
    return graph.column(table + "." + head).map(Slot::kind);
  }

  @Override
  public Collection<String> names() {
    return graph.slots().stream()
        .filter(s -> !s.givers().isEmpty())
        .map(Slot::name)
        // a name with a point belongs to a field of a clause; no line can read it
        .filter(name -> name.indexOf('.') < 0)
        .sorted()
        .toList();
  }

  @Override
  public Collection<String> materials() {
    return graph.source().materials().stream().map(EnteredMaterial::name).toList();
  }

  @Override
  public Optional<Unit> unitOf(String name) {
    return graph.unitOf(name);
  }
}
