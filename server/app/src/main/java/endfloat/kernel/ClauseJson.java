package endfloat.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.engine.CellRunner;
import endfloat.engine.Give;
import endfloat.engine.Gradient;
import endfloat.engine.JavaNames;
import endfloat.engine.Value;
import endfloat.quantities.Kinds;
import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A clause as metadata of its request, and what it gave out of the result. */
final class ClauseJson {
  static final String KEY = "endfloat";

  private ClauseJson() {}

  /**
   * @param trialMilliseconds for which trials may go on
   */
  static Map<String, Object> metadata(CellRunner.Job job, long trialMilliseconds) {
    List<Object> trials = new ArrayList<>();
    for (CellRunner.Trial trial : job.trials()) {
      trials.add(List.of(trial.read(), trial.element(), trial.si()));
    }
    Map<String, Object> clause = new LinkedHashMap<>();
    clause.put("reads", job.reads().stream().map(ClauseJson::read).toList());
    clause.put("gives", job.gives().stream().map(ClauseJson::declared).toList());
    clause.put("trials", trials);
    clause.put("trialMilliseconds", trialMilliseconds);
    return Map.of(KEY, clause);
  }

  private static Map<String, Object> read(CellRunner.Read read) {
    Map<String, Object> json = declared(read.java(), read.kind());
    if (read.value() instanceof Value.Fields all && read.kind() instanceof Kind.Fields kinds) {
      List<Object> fields = new ArrayList<>();
      kinds
          .fields()
          .forEach(
              (name, kind) ->
                  fields.add(
                      read(new CellRunner.Read(JavaNames.camel(name), kind, all.get(name)))));
      json.put("fields", fields);
    } else if (read.value() instanceof Value.Series series) {
      List<Object> values = new ArrayList<>();
      List<Object> labels = new ArrayList<>();
      for (int i = 0; i < series.size(); i++) {
        if (series.elements().get(i) instanceof Value.Scalar scalar) {
          values.add(number(scalar));
          labels.add(series.labels().get(i));
        } else if (series.elements().get(i) instanceof Value.Words words) {
          values.add(words.text());
          labels.add(series.labels().get(i));
        }
      }
      json.put("axes", series.axes());
      json.put("labels", labels);
      json.put("values", values);
    } else if (read.value() instanceof Value.Scalar scalar) {
      json.putAll(number(scalar));
    } else if (read.value() instanceof Value.Words words) {
      json.put("text", words.text());
    } else if (read.value() instanceof Value.Truth truth) {
      json.put("truth", truth.holds());
    }
    return json;
  }

  private static Map<String, Object> number(Value.Scalar scalar) {
    Map<String, Object> gradient = new LinkedHashMap<>();
    Gradient parts = scalar.gradient();
    for (int i = 0; i < parts.size(); i++) {
      gradient.put(parts.root(i).id(), parts.part(i));
    }
    return Map.of("si", scalar.si(), "gradient", gradient);
  }

  /** Name, form and type of a value that the source reads. */
  static Map<String, Object> declared(String java, Kind kind) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("java", java);
    if (kind instanceof Kind.Fields record) {
      json.put("form", "record");
      List<Object> fields = new ArrayList<>();
      record.fields().forEach((name, of) -> fields.add(declared(JavaNames.camel(name), of)));
      json.put("fields", fields);
      return json;
    }
    Kind element = kind instanceof Kind.Series series ? series.element() : kind;
    boolean series = kind instanceof Kind.Series;
    if (element instanceof Kind.Words || element instanceof Kind.Date) {
      json.put("form", series ? "texts" : "text");
    } else if (element instanceof Kind.Truth) {
      json.put("form", "truth");
    } else {
      json.put("form", series ? "series" : "quantity");
      typed(
          json,
          element instanceof Kind.Temperature,
          element instanceof Kind.Quantity quantity ? quantity.dimension() : Dimension.TEMPERATURE);
    }
    return json;
  }

  /** How a source would declare it. */
  static String type(Map<String, Object> declared) {
    String kind = String.valueOf(declared.getOrDefault("type", ""));
    String of = "<" + (kind.isEmpty() ? "?" : kind) + ">";
    return switch (String.valueOf(declared.get("form"))) {
      case "quantity" -> "Measured" + of;
      case "series" -> "MeasuredSeries" + of;
      case "texts" -> "List<String>";
      case "truth" -> "Boolean";
      case "table" -> "tech.tablesaw.api.Table";
      default -> "String";
    };
  }

  static Map<String, Object> declared(Give give) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("java", give.java());
    json.put("form", give.form().name().toLowerCase(Locale.ROOT));
    Optional<Unit> unit = give.unit();
    typed(
        json,
        unit.isPresent() && unit.get().isTemperaturePoint(),
        unit.map(Unit::dimension).orElse(Dimension.NONE));
    json.put("columns", give.columns().stream().map(Give.Column::name).toList());
    return json;
  }

  private static void typed(Map<String, Object> json, boolean temperature, Dimension dimension) {
    String type = temperature ? "Temperature" : Kinds.of(dimension).map(Kinds::name).orElse("");
    json.put("type", type);
    json.put("unit", dimension.isNone() ? "1" : UnitTable.coherent(dimension).symbol());
  }

  static List<CellRunner.Given> given(JsonNode result) {
    List<CellRunner.Given> given = new ArrayList<>();
    for (JsonNode one : result.path("gives")) {
      List<double[]> columns = new ArrayList<>();
      one.path("columns").forEach(column -> columns.add(numbers(column)));
      List<List<String>> labels = new ArrayList<>();
      one.path("labels").forEach(label -> labels.add(texts(label)));
      given.add(
          new CellRunner.Given(
              one.has("si")
                  ? new double[] {one.get("si").doubleValue()}
                  : numbers(one.path("values")),
              texts(one.path("axes")),
              labels,
              one.has("svg") ? one.get("svg").asText() : one.path("text").asText(""),
              one.path("truth").asBoolean(),
              columns));
    }
    return given;
  }

  /** Tables and charts that are given are shown too. */
  static List<CellRunner.Shown> shown(JsonNode result) {
    List<CellRunner.Shown> shown = new ArrayList<>();
    for (JsonNode one : result.path("gives")) {
      if (one.has("svg")) {
        shown.add(CellRunner.Shown.text("svg", SafeSvg.of(one.get("svg").asText())));
      } else if (one.has("heads")) {
        shown.add(table(one));
      }
    }
    return shown;
  }

  static CellRunner.Shown table(JsonNode json) {
    List<List<String>> rows = new ArrayList<>();
    json.path("rows").forEach(row -> rows.add(texts(row)));
    return new CellRunner.Shown("table", "", texts(json.path("heads")), rows);
  }

  static List<double[]> trials(JsonNode result) {
    List<double[]> trials = new ArrayList<>();
    result.path("trials").forEach(one -> trials.add(one.isNull() ? null : numbers(one)));
    return trials;
  }

  private static double[] numbers(JsonNode list) {
    double[] numbers = new double[list.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = list.get(i).doubleValue();
    }
    return numbers;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }
}
