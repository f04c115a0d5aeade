package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Catalogue;
import endfloat.engine.ValueGraph;
import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.KindChecker;
import endfloat.working.Line;
import endfloat.working.Parser;
import endfloat.working.Scope;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What may be made of a value by pressing it. Of two values only their difference and ratio, and
 * only where both are of one kind: what else their units allow is not for a program to propose.
 */
final class ValueOffers {
  /** Units with a prefix that are in common use; the table of units holds the bare ones. */
  private static final List<String> PREFIXED =
      List.of("mm", "um", "cm", "kN", "kPa", "MPa", "kW", "mrad", "ms", "mm^2", "cm^2", "mm^3");

  private final Scope scope;

  ValueOffers(ValueGraph graph) {
    this.scope = graph.scope();
  }

  /**
   * {@code {type, name, limit, units, pair: [{word, name, line}]}}.
   *
   * @param before the value that was pressed before; empty for none
   */
  ObjectNode of(String name, String before) {
    ObjectNode offer = JsonNodeFactory.instance.objectNode().put("type", "offer").put("name", name);
    Optional<Kind> kind = scope.kindOf(name);
    Optional<Dimension> dimension = kind.flatMap(ValueOffers::dimension);
    offer.put(
        "limit", dimension.isPresent() || kind.filter(ValueOffers::isTemperature).isPresent());
    ArrayNode units = offer.putArray("units");
    dimension.ifPresent(d -> unitsOf(d).forEach(units::add));
    ArrayNode pair = offer.putArray("pair");
    if (!before.isEmpty() && !before.equals(name) && !before.contains(".") && !name.contains(".")) {
      Optional<String> difference = line(before + "_less_" + name, before + " - " + name, before);
      difference.ifPresent(line -> pair(pair, "difference", line));
      if (difference.isPresent()) {
        line(before + "_over_" + name, before + " / " + name, "")
            .ifPresent(line -> pair(pair, "ratio", line));
      }
    }
    return offer;
  }

  private static void pair(ArrayNode into, String word, String line) {
    into.addObject().put("word", word).put("line", line);
  }

  /** A line of a name not taken yet; empty where the formula has no meaning. */
  private Optional<String> line(String stem, String formula, String unitLike) {
    String name = stem;
    for (int n = 2; scope.names().contains(name); n++) {
      name = stem + "_" + n;
    }
    String unit =
        scope
            .kindOf(unitLike)
            .flatMap(
                kind ->
                    isTemperature(kind)
                        ? Optional.of("K")
                        : scope.unitOf(unitLike).map(Unit::print))
            .map(u -> " [" + u + "]")
            .orElse("");
    String text = name + unit + " = " + formula;
    if (has(text)) {
      return Optional.of(text);
    }
    String bare = name + " = " + formula;
    return has(bare) ? Optional.of(bare) : Optional.empty();
  }

  private boolean has(String text) {
    List<Line> lines = Parser.parse(text).lines();
    return lines.size() == 1
        && !(new KindChecker(Catalogue.library()).check(lines.get(0), scope)
            instanceof Checked.Refused);
  }

  private static Set<String> unitsOf(Dimension dimension) {
    Set<String> found = new LinkedHashSet<>();
    Stream.concat(PREFIXED.stream(), UnitTable.entries().stream().map(UnitTable.Entry::symbol))
        .filter(symbol -> isOf(symbol, dimension))
        .forEach(found::add);
    return found;
  }

  private static boolean isOf(String symbol, Dimension dimension) {
    try {
      Unit unit = UnitTable.find(symbol);
      return unit.dimension().equals(dimension) && !unit.isTemperaturePoint();
    } catch (UnitException e) {
      return false;
    }
  }

  private static Optional<Dimension> dimension(Kind kind) {
    return kind instanceof Kind.Quantity one
        ? Optional.of(one.dimension())
        : kind instanceof Kind.Series series ? dimension(series.element()) : Optional.empty();
  }

  private static boolean isTemperature(Kind kind) {
    return kind instanceof Kind.Temperature
        || (kind instanceof Kind.Series series && isTemperature(series.element()));
  }
}
