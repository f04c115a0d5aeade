package endfloat.working;

import endfloat.catalogue.Catalogue;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Names for the lines of a test: values given by lines of the language, and readings. */
final class KnownNames implements Scope {
  static final Catalogue LIBRARY = Catalogue.library();

  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final Map<String, Unit> units = new LinkedHashMap<>();

  static KnownNames of(String lines) {
    KnownNames names = new KnownNames();
    lines.lines().forEach(names::give);
    return names;
  }

  void give(String text) {
    Working working = Parser.parse(text);
    for (Line line : working.lines()) {
      Checked checked = new KindChecker(LIBRARY).check(line, this);
      if (checked instanceof Checked.Value value) {
        put(value.line().name(), value.kind(), value.unit());
      } else if (checked instanceof Checked.Solved solved) {
        put(solved.line().name(), solved.kind(), solved.unit());
      } else if (checked instanceof Checked.Refused) {
        throw new AssertionError(text + ": " + checked.problems());
      }
    }
    if (!working.problems().isEmpty()) {
      throw new AssertionError(text + ": " + working.problems());
    }
  }

  private void put(String name, Kind kind, Optional<Unit> unit) {
    kinds.put(name, kind);
    unit.ifPresent(u -> units.put(name, u));
  }

  /**
   * @param axes such as {@code cylinder=1,2 plane=top,low}
   */
  void series(String name, String unit, String axes) {
    List<String> names = new ArrayList<>();
    List<List<String>> labels = List.of(List.of());
    for (String axis : axes.split(" ", -1)) {
      String[] parts = axis.split("=", -1);
      names.add(parts[0]);
      List<List<String>> longer = new ArrayList<>();
      for (List<String> station : labels) {
        for (String label : parts[1].split(",", -1)) {
          List<String> next = new ArrayList<>(station);
          next.add(label);
          longer.add(List.copyOf(next));
        }
      }
      labels = longer;
    }
    Unit known = UnitTable.find(unit);
    kinds.put(name, new Kind.Series(Kinds.of(known), List.copyOf(names), List.copyOf(labels)));
    units.put(name, known);
  }

  /**
   * @param columns such as {@code lash=thou batch=text failed=truth}
   */
  void table(String name, String columns) {
    Map<String, Kind> heads = new LinkedHashMap<>();
    for (String column : columns.split(" ", -1)) {
      String[] parts = column.split("=", -1);
      Kind element =
          switch (parts[1]) {
            case "text", "date" -> Kinds.WORDS;
            case "truth" -> Kinds.TRUTH;
            default -> Kinds.of(UnitTable.find(parts[1]));
          };
      heads.put(parts[0], new Kind.Series(element, List.of(name + ".row"), List.of()));
      if (!(element instanceof Kind.Words) && !(element instanceof Kind.Truth)) {
        units.put(name + "." + parts[0], UnitTable.find(parts[1]));
      }
    }
    kinds.put(name, new Kind.Fields(heads));
  }

  @Override
  public Optional<Kind> columnOf(String table, String head) {
    return kindOf(table)
        .filter(KindWords::isTable)
        .map(kind -> ((Kind.Fields) kind).fields().get(head));
  }

  @Override
  public Optional<Kind> kindOf(String name) {
    return Optional.ofNullable(kinds.get(name));
  }

  @Override
  public Collection<String> names() {
    return kinds.keySet();
  }

  @Override
  public Optional<Unit> unitOf(String name) {
    return Optional.ofNullable(units.get(name));
  }
}
