package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Figures as numbers for files and other programs: value and standard uncertainty in one unit, at
 * full precision; a record of results as one entry a field, a series as arrays.
 */
public final class FigureNumbers {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final BiFunction<Optional<Unit>, Kind, Unit> numberUnit;

  private final boolean withDegrees;

  private FigureNumbers(BiFunction<Optional<Unit>, Kind, Unit> numberUnit, boolean withDegrees) {
    this.numberUnit = numberUnit;
    this.withDegrees = withDegrees;
  }

  /**
   * With {@code dof}, the effective degrees of freedom, where they are finite; in the unit of the
   * line; where it says none, in the coherent one, a temperature in degC.
   */
  public static FigureNumbers inUnitsOfLines() {
    return new FigureNumbers(
        (unit, kind) ->
            unit.orElseGet(
                () ->
                    kind instanceof Kind.Quantity quantity
                        ? UnitTable.coherent(quantity.dimension())
                        : UnitTable.find("degC")),
        true);
  }

  /** In the units that a sheet with these settings shows. */
  public static FigureNumbers asShown(GraphSettings settings) {
    return new FigureNumbers(
        (unit, kind) -> FigureUnit.of(unit, Optional.of(kind), settings), false);
  }

  /** The entries of a figure; none where it has no value, or is a part built for a calculation. */
  public List<ObjectNode> of(Figure figure) {
    if (figure.value().isEmpty() || figure.kind().isEmpty()) {
      return List.of();
    }
    Value value = figure.value().get();
    Kind kind = figure.kind().get();
    if (value instanceof Value.PartValue || value instanceof Value.PartList) {
      return List.of();
    }
    if (value instanceof Value.Fields && kind instanceof Kind.Fields fields) {
      return fields(figure, fields);
    }
    if (value instanceof Value.Series series && kind instanceof Kind.Series of) {
      return of.element() instanceof Kind.Fields each
          ? seriesOfRecords(figure, series, each)
          : List.of(series(figure, series, of));
    }
    ObjectNode entry =
        entry(figure.name(), value, kind, figure.unit(), figure.standardUncertainty());
    if (withDegrees && Double.isFinite(figure.degreesOfFreedom())) {
      entry.put("dof", figure.degreesOfFreedom());
    }
    return List.of(judged(entry, figure.verdict()));
  }

  private ObjectNode series(Figure figure, Value.Series series, Kind.Series kind) {
    ArrayNode values = JSON.arrayNode();
    ArrayNode us = JSON.arrayNode();
    ArrayNode labels = JSON.arrayNode();
    for (Figure.Element element : figure.elements()) {
      values.add(number(element.value(), kind.element(), figure.unit()));
      us.add(uncertainty(element.standardUncertainty(), kind.element(), figure.unit()));
      ObjectNode at = labels.addObject();
      element.labels().forEach(at::put);
    }
    ObjectNode entry = JSON.objectNode().put("name", figure.name());
    entry.set("value", values);
    entry.set("unit", unit(kind.element(), figure.unit()));
    entry.set("u", us);
    if (!series.axes().isEmpty()) {
      entry.set("labels", labels);
    }
    return judged(entry, figure.verdict());
  }

  /** One entry a field, its values over the series. */
  private List<ObjectNode> seriesOfRecords(Figure figure, Value.Series series, Kind.Fields kind) {
    List<ObjectNode> entries = new ArrayList<>();
    List<String> names = List.copyOf(kind.fields().keySet());
    for (int f = 0; f < names.size(); f++) {
      Kind field = kind.fields().get(names.get(f));
      ArrayNode values = JSON.arrayNode();
      ArrayNode us = JSON.arrayNode();
      for (int i = 0; i < series.size(); i++) {
        Value.Fields record = (Value.Fields) series.elements().get(i);
        values.add(number(record.get(names.get(f)), field, Optional.empty()));
        List<Double> within = figure.elements().get(i).uncertainties();
        int at = record.names().indexOf(names.get(f));
        us.add(uncertainty(at < 0 ? 0 : within.get(at), field, Optional.empty()));
      }
      boolean absent = true;
      for (JsonNode value : values) {
        absent &= value.isNull();
      }
      if (absent) {
        continue;
      }
      ObjectNode entry = JSON.objectNode().put("name", figure.name() + "." + names.get(f));
      entry.set("value", values);
      entry.set("unit", unit(field, Optional.empty()));
      entry.set("u", us);
      entries.add(entry);
    }
    return entries;
  }

  private ArrayNode all(List<Double> uncertainties, Kind kind, Optional<Unit> unit) {
    ArrayNode us = JSON.arrayNode();
    uncertainties.forEach(u -> us.add(uncertainty(u, kind, unit)));
    return us;
  }

  private List<ObjectNode> fields(Figure figure, Kind.Fields kind) {
    List<ObjectNode> entries = new ArrayList<>();
    Map<String, Kind> kinds = kind.fields();
    for (Figure.Element element : figure.elements()) {
      Value value = element.value();
      boolean single =
          value instanceof Value.Scalar
              || value instanceof Value.Words
              || value instanceof Value.Truth
              || value instanceof Value.Series;
      if (single && kinds.containsKey(element.field())) {
        String name = figure.name() + "." + element.field();
        ObjectNode entry =
            entry(
                name,
                value,
                kinds.get(element.field()),
                element.unit(),
                element.standardUncertainty());
        if (value instanceof Value.Series) {
          entry.set("u", all(element.uncertainties(), kinds.get(element.field()), element.unit()));
        }
        entries.add(judged(entry, element.verdict()));
      }
    }
    return entries;
  }

  private ObjectNode entry(
      String name, Value value, Kind kind, Optional<Unit> unit, double standardUncertainty) {
    ObjectNode entry = JSON.objectNode().put("name", name);
    entry.set("value", number(value, kind, unit));
    entry.set("unit", unit(kind, unit));
    entry.set("u", uncertainty(standardUncertainty, kind, unit));
    return entry;
  }

  private static ObjectNode judged(ObjectNode entry, Optional<Verdict> verdict) {
    verdict.ifPresent(found -> entry.put("verdict", found.word()));
    return entry;
  }

  private JsonNode number(Value value, Kind kind, Optional<Unit> unit) {
    if (value instanceof Value.Scalar scalar) {
      return JSON.numberNode(
          unitOf(kind, unit).map(in -> in.fromSi(scalar.si())).orElse(scalar.si()));
    }
    if (value instanceof Value.Words words) {
      return JSON.textNode(words.text());
    }
    if (value instanceof Value.Truth truth) {
      return JSON.booleanNode(truth.holds());
    }
    if (value instanceof Value.Series series) {
      Kind element = kind instanceof Kind.Series of ? of.element() : kind;
      ArrayNode values = JSON.arrayNode();
      series.elements().forEach(one -> values.add(number(one, element, unit)));
      return values;
    }
    return JSON.nullNode();
  }

  /** Of a temperature in the interval of the scale that the value is in. */
  private JsonNode uncertainty(double si, Kind kind, Optional<Unit> unit) {
    double u = unitOf(kind, unit).map(in -> in.interval().fromSi(si)).orElse(si);
    return u == 0 ? JSON.numberNode(0) : JSON.numberNode(u);
  }

  private JsonNode unit(Kind kind, Optional<Unit> unit) {
    return unitOf(kind, unit)
        .map(found -> (JsonNode) JSON.textNode(found.symbol()))
        .orElse(JSON.nullNode());
  }

  /** Of a number; texts and truths have none. */
  private Optional<Unit> unitOf(Kind kind, Optional<Unit> unit) {
    if (kind instanceof Kind.Series series) {
      return unitOf(series.element(), unit);
    }
    boolean number = kind instanceof Kind.Quantity || kind instanceof Kind.Temperature;
    return number ? Optional.of(numberUnit.apply(unit, kind)) : Optional.empty();
  }
}
