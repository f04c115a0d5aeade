package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.record.Reading;
import endfloat.units.Size;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A measured quantity of the record: at each stage one value, or one a station. */
final class ReadingNode extends Node {
  private static final String NAME = "[\\p{L}_][\\p{L}\\p{N}_]*";
  static final Span WHOLE = new Span(1, 1, 1);

  private final Reading reading;
  private final Set<String> namesRead;
  private final ReadingTemperatures temperatures;
  private final Map<String, Map<List<String>, Taken>> byStage = new LinkedHashMap<>();
  private final Map<String, Value> values = new LinkedHashMap<>();
  private Map<String, Value> valuesTold = Map.of();
  private final List<EntryProblem> problems = new ArrayList<>();
  private final ReadingInstruments registered;
  private String currentStage = "";

  /**
   * @param place of the reading in its clause, counted from 0
   */
  ReadingNode(String clause, int place, Reading reading) {
    super(clause, place);
    this.reading = reading;
    this.temperatures = new ReadingTemperatures(reading);
    this.registered = ReadingInstruments.of(reading);
    this.namesRead = temperatures.namesRead();
  }

  Reading reading() {
    return reading;
  }

  @Override
  String name() {
    return reading.name().matches(NAME) ? reading.name() : "";
  }

  @Override
  Set<String> namesRead() {
    return namesRead;
  }

  /** What is wrong with single entries, or with the reading as a whole. */
  List<EntryProblem> entryProblems() {
    return problems.stream()
        .map(p -> new EntryProblem(clause(), "/readings/" + offset() + p.at(), p.problem()))
        .toList();
  }

  /** Ids of the instruments it was taken with. */
  Set<String> instruments() {
    Set<String> ids = new LinkedHashSet<>();
    for (Reading.Entry entry : reading.entries()) {
      ids.add(instrument(entry));
    }
    ids.remove("");
    return ids;
  }

  private String instrument(Reading.Entry entry) {
    return entry.instrument().isBlank() ? reading.instrument() : entry.instrument();
  }

  /** The stages at which it has been read. */
  Set<String> stages() {
    return byStage.keySet();
  }

  @Override
  void check(ValueGraph graph) {
    problems.clear();
    byStage.clear();
    registered.clear();
    currentStage = graph.settings().stage();
    if (!reading.name().isEmpty() && name().isEmpty()) {
      problem("/name", "\"" + reading.name() + "\" is no name.", "Use letters, digits and _.");
    }
    Unit unit = readingUnit();
    List<LineProblem> hints = new ArrayList<>();
    for (String id : instruments()) {
      registered.find(id, unit, graph, this::problem, hints);
    }
    for (int i = 0; i < reading.entries().size(); i++) {
      enter(reading.entries().get(i), "/entries/" + i, unit);
    }
    temperatures.check(graph, unit, this::problem, hints);
    if (reading.instrument().isBlank() && instruments().isEmpty()) {
      hints.add(hint("No instrument is named, so its uncertainty is not counted."));
    }
    Kind element =
        unit.isTemperaturePoint() ? new Kind.Temperature() : new Kind.Quantity(unit.dimension());
    found(kind(element), unit, hints);
  }

  private Kind kind(Kind element) {
    if (reading.axes().isEmpty()) {
      return element;
    }
    Map<List<String>, Taken> now = byStage.getOrDefault(currentStage, Map.of());
    return new Kind.Series(element, reading.axes(), List.copyOf(now.keySet()));
  }

  static LineProblem hint(String message) {
    return new LineProblem(WHOLE, message, "", LineProblem.Severity.HINT);
  }

  private void problem(String at, String message, String wayOut) {
    problems.add(new EntryProblem(clause(), at, LineProblem.error(WHOLE, message, wayOut)));
  }

  private Unit readingUnit() {
    try {
      return UnitTable.find(reading.unit().isBlank() ? "1" : reading.unit());
    } catch (UnitException e) {
      problem("/unit", Refusals.sentence(e.getMessage()), Refusals.sentence(e.wayOut()));
      throw new LineFailure(problems.get(problems.size() - 1).problem());
    }
  }

  private void enter(Reading.Entry entry, String at, Unit unit) {
    if (entry.struck().isPresent()) {
      return;
    }
    List<String> station = new ArrayList<>();
    for (String axis : reading.axes()) {
      String label = entry.at().getOrDefault(axis, "");
      if (label.isBlank()) {
        if (entry.taken().stream().anyMatch(t -> !t.isBlank())) {
          problem(at + "/at", "This entry does not say which " + axis + ".", "Give its station.");
        }
        return;
      }
      station.add(label);
    }
    String stage =
        !entry.stage().isBlank()
            ? entry.stage()
            : reading.stage().isBlank() ? currentStage : reading.stage();
    for (int i = 0; i < entry.taken().size(); i++) {
      String text = entry.taken().get(i);
      if (!text.isBlank()) {
        take(
            entry,
            text,
            at,
            i,
            byStage.computeIfAbsent(stage, s -> new LinkedHashMap<>()),
            station,
            unit);
      }
    }
  }

  private void take(
      Reading.Entry entry,
      String text,
      String at,
      int repeat,
      Map<List<String>, Taken> stations,
      List<String> station,
      Unit unit) {
    Taken taken = stations.computeIfAbsent(station, s -> new Taken(entry, at));
    if (!instrument(entry).equals(instrument(taken.first()))
        || !temperatures.of(entry).equals(temperatures.of(taken.first()))) {
      problem(
          at,
          "Here the same place was read with another instrument or at another temperature.",
          "Repeats are taken alike; give this one a name of its own.");
      return;
    }
    try {
      Size size = Size.read(text, unit);
      if (!size.unit().dimension().same(unit.dimension())
          || size.unit().isTemperaturePoint() != unit.isTemperaturePoint()) {
        problem(
            at + "/taken/" + repeat,
            "\"" + text + "\" is not a reading in " + unit.print() + ".",
            "Write it in a unit of the same kind.");
        return;
      }
      taken.add(size.si(), size.unit().equals(unit) ? digits(text) : "");
    } catch (UnitException e) {
      problem(
          at + "/taken/" + repeat,
          Refusals.sentence(e.getMessage()),
          Refusals.sentence(e.wayOut()));
    }
  }

  /** The number alone, where the text is a plain decimal. */
  private static String digits(String text) {
    String number = text.strip().replace('-', '\u2212');
    return number.matches("\u2212?[0-9]*\\.?[0-9]+") ? number : "";
  }

  @Override
  Value evaluate(Frame frame) {
    values.clear();
    values.putAll(values(frame));
    return read(values);
  }

  /** Leaves what has been read as it is. */
  @Override
  Value tried(Frame frame) {
    return read(values(frame));
  }

  private Map<String, Value> values(Frame frame) {
    Map<String, Value> found = new LinkedHashMap<>();
    for (Map.Entry<String, Map<List<String>, Taken>> stage : byStage.entrySet()) {
      found.put(stage.getKey(), value(stage.getKey(), stage.getValue(), frame));
    }
    return found;
  }

  private Value read(Map<String, Value> found) {
    if (!problems.isEmpty()) {
      throw new LineFailure(problems.get(0).problem());
    }
    return atStage(found, currentStage, WHOLE);
  }

  /** The readings at one stage; refused where there are none. */
  Value atStage(String stage, Span span) {
    return atStage(values, stage, span);
  }

  private Value atStage(Map<String, Value> values, String stage, Span span) {
    Value value = values.get(stage);
    if (value == null) {
      throw LineFailure.notYet(
          span,
          (name().isEmpty() ? "This reading" : "The reading " + name())
              + " has not been read at the stage \""
              + stage
              + "\".",
          values.isEmpty()
              ? "Take the reading."
              : "It has been read " + String.join(", ", values.keySet()) + ".");
    }
    return value;
  }

  /** Whether it waits for nothing but to be read at the current stage. */
  boolean isReadElsewhere() {
    return state() == Figure.State.WAITING
        && problem() != null
        && !values.isEmpty()
        && !reading.axes().contains("stage");
  }

  @Override
  boolean hasMovedElsewhere() {
    Map<String, Value> before = valuesTold;
    valuesTold = new LinkedHashMap<>(values);
    return !before.keySet().equals(valuesTold.keySet())
        || before.entrySet().stream()
            .anyMatch(b -> !same(b.getValue(), valuesTold.get(b.getKey())));
  }

  private static boolean same(Value a, Value b) {
    return a == b || (a != null && b != null && a.sameAs(b));
  }

  @Override
  void inherit(Node old) {
    super.inherit(old);
    valuesTold = ((ReadingNode) old).valuesTold;
  }

  /** Values at the current stage as far as they can be read; null for none. */
  Value readable() {
    return values.get(currentStage);
  }

  private Value value(String stage, Map<List<String>, Taken> stations, Frame frame) {
    if (reading.axes().isEmpty()) {
      Taken only = stations.values().iterator().next();
      return only.count() == 0 ? null : measured(only, List.of(), stage, frame);
    }
    List<List<String>> labels = new ArrayList<>();
    List<Value> elements = new ArrayList<>();
    for (Map.Entry<List<String>, Taken> station : stations.entrySet()) {
      if (station.getValue().count() > 0) {
        labels.add(station.getKey());
        elements.add(measured(station.getValue(), station.getKey(), stage, frame));
      }
    }
    return labels.isEmpty() ? null : new Series(reading.axes(), labels, elements);
  }

  private Scalar measured(Taken taken, List<String> station, String stage, Frame frame) {
    InstrumentFigures stated = registered.figures(instrument(taken.first()));
    String place = "reading:" + reading.name() + ":" + stage + ":" + String.join(",", station);
    ReadingGradient gradient = new ReadingGradient(place, reading.name(), stated);
    Scalar indicated = new Scalar(taken.mean(), gradient.of(taken, unit()));
    return temperatures.corrected(indicated, taken.first(), frame);
  }

  /** The digits taken at a station of the current stage, where it was one plain reading. */
  String typed(List<String> station) {
    Taken taken = byStage.getOrDefault(currentStage, Map.of()).get(station);
    return taken == null || temperatures.corrects(taken.first()) ? "" : taken.text();
  }

  @Override
  void stopped() {
    if (isUnchecked()) {
      values.clear();
    }
  }
}
