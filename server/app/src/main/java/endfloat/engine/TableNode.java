package endfloat.engine;

import endfloat.engine.Value.Fields;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A table under its own name: its columns together. It is nobody's figure. */
final class TableNode extends Node {
  private final TablePart.Whole part;
  private final Set<String> namesRead = new LinkedHashSet<>();

  TableNode(String clause, TablePart.Whole part) {
    super(clause, 0);
    this.part = part;
    part.heads().forEach(head -> namesRead.add(part.name() + "." + head));
  }

  @Override
  String name() {
    return part.name();
  }

  @Override
  Set<String> namesRead() {
    return namesRead;
  }

  @Override
  void check(ValueGraph graph) {
    Map<String, Kind> kinds = new LinkedHashMap<>();
    for (String head : part.heads()) {
      graph.kindOf(part.name() + "." + head).ifPresent(kind -> kinds.put(head, kind));
    }
    found(new Kind.Fields(kinds), null, List.of());
  }

  @Override
  Value evaluate(Frame frame) {
    List<String> names = new ArrayList<>();
    List<Value> values = new ArrayList<>();
    for (Slot column : reads()) {
      names.add(column.name().substring(part.name().length() + 1));
      values.add(column.value());
    }
    return new Fields(names, values);
  }
}
