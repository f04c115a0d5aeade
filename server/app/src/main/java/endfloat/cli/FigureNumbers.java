package endfloat.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Figures as numbers for other programs: value and standard uncertainty in the line's unit, at full
 * precision; a record of results as one entry a field, a series as arrays.
 */
final class FigureNumbers {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private FigureNumbers() {}

  /** The entries of a figure; none where it has no value. */
  static List<ObjectNode> of(Figure figure) {
    if (figure.value().isEmpty() || figure.kind().isEmpty()) {
      return List.of();
    }
    Value value = figure.value().get();
    Kind kind = figure.kind().get();
    if (value instanceof Value.Fields) {
      return fields(figure, (Kind.Fields) kind);
    }
    if (value instanceof Value.Series series && kind instanceof Kind.Series of) {
      ArrayNode values = JSON.arrayNode();
      ArrayNode us = JSON.arrayNode();
      for (Figure.Element element : figure.elements()) {
        values.add(number(element.value(), of.element(), figure.unit()));
        us.add(uncertainty(element.standardUncertainty(), of.element(), figure.unit()));
      }
      ObjectNode entry = entry(figure.name(), values, unit(of.element(), figure.unit()), us);
      if (!series.axes().isEmpty()) {
        entry.set("labels", labels(figure.elements()));
      }
      return List.of(judged(entry, figure.verdict()));
    }
    if (value instanceof Value.PartValue || value instanceof Value.PartList) {
      // What it is made of stands in its line; it is no figure of its own.
      return List.of();
    }
    ObjectNode entry =
        entry(
            figure.name(),
            number(value, kind, figure.unit()),
            unit(kind, figure.unit()),
            uncertainty(figure.standardUncertainty(), kind, figure.unit()));
    return List.of(judged(entry, figure.verdict()));
  }

  private static List<ObjectNode> fields(Figure figure, Kind.Fields kind) {
    List<ObjectNode> entries = new ArrayList<>();
    for (Figure.Element element : figure.elements()) {
      Kind of = kind.fields().get(element.field());
      if (of == null || !isNumberOrWord(element.value())) {
        continue;
      }
      String name = figure.name() + "." + element.field();
      ObjectNode entry =
          entry(
              name,
              number(element.value(), of, element.unit()),
              unit(of, element.unit()),
              uncertainty(element.standardUncertainty(), of, element.unit()));
      entries.add(judged(entry, element.verdict()));
    }
    return entries;
  }

  private static boolean isNumberOrWord(Value value) {
    return value instanceof Value.Scalar
        || value instanceof Value.Words
        || value instanceof Value.Truth
        || value instanceof Value.Series;
  }

  private static ObjectNode entry(String name, JsonNode value, JsonNode unit, JsonNode u) {
    ObjectNode entry = JSON.objectNode().put("name", name);
    entry.set("value", value);
    entry.set("unit", unit);
    entry.set("u", u);
    return entry;
  }

  private static ObjectNode judged(ObjectNode entry, Optional<Verdict> verdict) {
    verdict.ifPresent(found -> entry.put("verdict", found.word()));
    return entry;
  }

  private static ArrayNode labels(List<Figure.Element> elements) {
    ArrayNode labels = JSON.arrayNode();
    for (Figure.Element element : elements) {
      ObjectNode at = labels.addObject();
      element.labels().forEach(at::put);
    }
    return labels;
  }

  private static JsonNode number(Value value, Kind kind, Optional<Unit> unit) {
    if (value instanceof Value.Scalar scalar) {
      return JSON.numberNode(
          unitOf(kind, unit).map(u -> u.fromSi(scalar.si())).orElse(scalar.si()));
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

  /**
   * In kelvin or its like for a temperature: the interval of the scale that the value is shown in.
   */
  private static JsonNode uncertainty(double si, Kind kind, Optional<Unit> unit) {
    if (kind instanceof Kind.Words || kind instanceof Kind.Truth) {
      return JSON.numberNode(0);
    }
    double u = unitOf(kind, unit).map(in -> in.interval().fromSi(si)).orElse(si);
    return u == 0 ? JSON.numberNode(0) : JSON.numberNode(u);
  }

  private static JsonNode unit(Kind kind, Optional<Unit> unit) {
    return unitOf(kind, unit)
        .map(found -> (JsonNode) JSON.textNode(found.symbol()))
        .orElse(JSON.nullNode());
  }

  /** The line's unit, or the coherent one where nothing says; none for texts and truths. */
  private static Optional<Unit> unitOf(Kind kind, Optional<Unit> unit) {
    if (unit.isPresent()) {
      return unit;
    }
    if (kind instanceof Kind.Quantity quantity) {
      return Optional.of(UnitTable.coherent(quantity.dimension()));
    }
    if (kind instanceof Kind.Temperature) {
      return Optional.of(UnitTable.find("degC"));
    }
    if (kind instanceof Kind.Series series) {
      return unitOf(series.element(), unit);
    }
    return Optional.empty();
  }
}
