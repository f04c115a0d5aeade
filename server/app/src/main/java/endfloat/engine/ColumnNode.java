package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.engine.Value.Words;
import endfloat.units.Size;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.IsoDate;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A column of a table as typed: a series over its rows. A field with nothing in it is a value that
 * is missing; one that cannot be read leaves the whole column unread.
 */
final class ColumnNode extends Node {
  static final Span WHOLE = new Span(1, 1, 1);
  private static final int MOST_PROBLEMS = 100;

  private final TablePart.Typed part;
  private final List<EntryProblem> problems = new ArrayList<>();
  private final ReadingInstruments registered;
  private List<Value> elements = List.of();

  ColumnNode(String clause, TablePart.Typed part) {
    super(clause, part.at());
    this.part = part;
    this.registered = ReadingInstruments.of(part.column());
  }

  @Override
  String name() {
    return part.name();
  }

  @Override
  boolean isColumn() {
    return true;
  }

  @Override
  Set<String> namesRead() {
    return Set.of();
  }

  /** What is wrong with single fields. */
  List<EntryProblem> entryProblems() {
    return problems;
  }

  /** JSON Pointer to the column. */
  String at() {
    return "/columns/" + part.at();
  }

  /** Whether what is wrong is said of the key column. */
  boolean saysItElsewhere() {
    return part.rows().wrong().isPresent() && !part.column().key();
  }

  /** Digits as typed in a row; empty for a field that is no plain decimal in the column's unit. */
  String typed(int row) {
    String text = part.texts().text(row);
    return text.matches("[-\u2212]?[0-9]+(?:\\.[0-9]+)?") ? text.replace('-', '\u2212') : "";
  }

  /** What it is, in words. */
  String what() {
    String note = part.column().note().strip();
    return note.isEmpty() ? "column of a table, as typed" : note;
  }

  /** The text of a row as it was typed. */
  String text(int row) {
    return part.texts().text(row);
  }

  @Override
  void check(ValueGraph graph) {
    problems.clear();
    elements = List.of();
    Unit unit = part.column().isNumber() ? columnUnit() : null;
    if (part.rows().wrong().isPresent()) {
      RowAxis.Wrong wrong = part.rows().wrong().get();
      if (part.column().key()) {
        problems.add(
            new EntryProblem(
                clause(), "/rows/" + wrong.row() + "/" + part.texts().place(), wrong.problem()));
      }
      throw new LineFailure(wrong.problem());
    }
    List<LineProblem> hints = new ArrayList<>();
    if (unit != null && !instruments().isEmpty()) {
      registered.clear();
      registered.find(part.column().instrument().strip(), unit, graph, this::problem, hints);
    }
    Kind element = read(unit);
    if (!problems.isEmpty()) {
      throw new LineFailure(problems.get(0).problem());
    }
    Kind kind = new Kind.Series(element, List.of(part.rows().axis()), List.of());
    hints.addAll(missing());
    found(kind, unit, hints);
  }

  /** Ids of the instruments with which its numbers were taken: one, or none. */
  Set<String> instruments() {
    String id = part.column().instrument().strip();
    return id.isEmpty() || !part.column().isNumber() ? Set.of() : Set.of(id);
  }

  private void problem(String at, String message, String wayOut) {
    problems.add(
        new EntryProblem(
            clause(), "/columns/" + part.at() + at, LineProblem.error(WHOLE, message, wayOut)));
  }

  private List<LineProblem> missing() {
    long missing = elements.stream().filter(Absent.class::isInstance).count();
    return missing == 0
        ? List.of()
        : List.of(
            new LineProblem(
                WHOLE,
                missing + " of " + elements.size() + " rows have no " + part.column().head() + ".",
                "",
                LineProblem.Severity.HINT));
  }

  private Unit columnUnit() {
    String text = part.column().unit();
    try {
      return UnitTable.find(text.isBlank() ? "1" : text.strip());
    } catch (UnitException e) {
      LineProblem problem =
          LineProblem.error(
              WHOLE, Refusals.sentence(e.getMessage()), Refusals.sentence(e.wayOut()));
      problems.add(new EntryProblem(clause(), "/columns/" + part.at() + "/unit", problem));
      throw new LineFailure(problem);
    }
  }

  private Kind read(Unit unit) {
    switch (part.column().kind()) {
      case "text" -> {
        elements = texts();
        return new Kind.Words();
      }
      case "date" -> {
        elements = dates();
        return new Kind.Date();
      }
      case "truth" -> {
        elements = truths();
        return new Kind.Truth();
      }
      default -> {
        elements = numbers(unit);
        return unit.isTemperaturePoint()
            ? new Kind.Temperature()
            : new Kind.Quantity(unit.dimension());
      }
    }
  }

  private List<Value> texts() {
    List<Value> values = new ArrayList<>(part.texts().size());
    for (int row = 0; row < part.texts().size(); row++) {
      String text = part.texts().text(row);
      values.add(text.isEmpty() ? Absent.ABSENT : new Words(text));
    }
    return values;
  }

  private List<Value> dates() {
    List<Value> values = new ArrayList<>(part.texts().size());
    for (int row = 0; row < part.texts().size(); row++) {
      String text = part.texts().text(row);
      if (!text.isEmpty()) {
        if (IsoDate.of(text).isEmpty()) {
          problem(row, "\"" + text + "\" is no date.", "Write it as 2026-03-02.");
        }
      }
      values.add(text.isEmpty() ? Absent.ABSENT : new Words(text));
    }
    return values;
  }

  private List<Value> truths() {
    Truth yes = new Truth(true);
    Truth no = new Truth(false);
    List<Value> values = new ArrayList<>(part.texts().size());
    for (int row = 0; row < part.texts().size(); row++) {
      String text = part.texts().text(row);
      switch (text.toLowerCase(Locale.ROOT)) {
        case "" -> values.add(Absent.ABSENT);
        case "yes", "true" -> values.add(yes);
        case "no", "false" -> values.add(no);
        default -> {
          problem(row, "\"" + text + "\" is neither yes nor no.", "Write yes or no.");
          values.add(Absent.ABSENT);
        }
      }
    }
    return values;
  }

  private List<Value> numbers(Unit unit) {
    double[] si = new double[part.texts().size()];
    for (int row = 0; row < si.length; row++) {
      String text = part.texts().text(row);
      si[row] = text.isEmpty() ? Double.NaN : number(row, text, unit);
    }
    double u = uncertainty(unit);
    if (u > 0) {
      return ColumnValues.uncertain(name(), part, si, u);
    }
    InstrumentFigures stated =
        registered.figures(instruments().isEmpty() ? "" : instruments().iterator().next());
    return stated.isStated()
        ? ColumnValues.measured(name(), part, si, stated, unit)
        : ColumnValues.exact(si);
  }

  private double number(int row, String text, Unit unit) {
    try {
      Size size = Size.read(text, unit);
      if (size.unit().dimension().same(unit.dimension())
          && size.unit().isTemperaturePoint() == unit.isTemperaturePoint()) {
        return size.si();
      }
      problem(
          row,
          "\"" + text + "\" is not a value in " + unit.print() + ".",
          "Write it in a unit of the same kind.");
    } catch (UnitException e) {
      problem(row, Refusals.sentence(e.getMessage()), Refusals.sentence(e.wayOut()));
    }
    return Double.NaN;
  }

  private double uncertainty(Unit unit) {
    String text = part.column().u();
    if (text.isBlank()) {
      return 0;
    }
    try {
      Size size = Size.read(text, unit.interval());
      if (size.si() >= 0 && size.unit().dimension().same(unit.dimension())) {
        return size.si();
      }
    } catch (UnitException e) {
      // said below
    }
    LineProblem problem =
        LineProblem.error(
            WHOLE,
            "\"" + text + "\" is no uncertainty of a value in " + unit.print() + ".",
            "Write a size and its unit, such as 0.5 " + unit.interval().print() + ".");
    problems.add(new EntryProblem(clause(), "/columns/" + part.at() + "/u", problem));
    return 0;
  }

  private void problem(int row, String message, String wayOut) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(
          new EntryProblem(
              clause(),
              "/rows/" + row + "/" + part.texts().place(),
              LineProblem.error(WHOLE, "Row " + (row + 1) + ": " + message, wayOut)));
    }
  }

  @Override
  Value evaluate(Frame frame) {
    if (elements.isEmpty()) {
      throw LineFailure.notYet(
          WHOLE, "The table has no rows yet.", "Type or paste some, or read a file.");
    }
    return new Series(List.of(part.rows().axis()), part.rows().labels(), elements);
  }
}
