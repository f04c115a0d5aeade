package endfloat.engine;

import endfloat.record.Instrument;
import endfloat.record.Reading;
import endfloat.record.TableColumn;
import endfloat.units.Unit;
import endfloat.working.LineProblem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The instruments that a reading or a column was taken with, as the register has them. */
final class ReadingInstruments {
  private static final String DATE = "\\d{4}-\\d{2}-\\d{2}";

  private final String called;
  private final boolean hasUnit;
  private final Map<String, InstrumentFigures> figures = new LinkedHashMap<>();

  private ReadingInstruments(String called, boolean hasUnit) {
    this.called = called;
    this.hasUnit = hasUnit;
  }

  static ReadingInstruments of(Reading reading) {
    return new ReadingInstruments(
        reading.name().isEmpty() ? "This reading" : "The reading " + reading.name(),
        !reading.unit().isBlank());
  }

  static ReadingInstruments of(TableColumn column) {
    return new ReadingInstruments("The column " + column.head(), !column.unit().isBlank());
  }

  void clear() {
    figures.clear();
  }

  /** What is stated of an instrument; of none that is known nothing. */
  InstrumentFigures figures(String id) {
    return figures.getOrDefault(id, InstrumentFigures.NONE);
  }

  /** Looks an instrument up; what is wrong with it, and what is worth a hint, is said. */
  void find(
      String id,
      Unit unit,
      ValueGraph graph,
      ReadingTemperatures.Problems problems,
      List<LineProblem> hints) {
    Instrument instrument = graph.instrument(id);
    if (instrument == null) {
      problems.add(
          "/instrument",
          "There is no instrument " + id + " in the register.",
          "Register it, or name another.");
      return;
    }
    InstrumentFigures stated = InstrumentFigures.of(instrument, unit);
    if (!stated.statedIn().isEmpty()) {
      otherKind(id, stated.statedIn(), unit, problems);
      return;
    }
    for (String wrong : stated.problems()) {
      problems.add(
          "/instrument",
          "Instrument " + id + ": " + wrong + ".",
          "Put the instrument's entry right in the register.");
    }
    if (isOverdue(instrument, graph.source().date())) {
      hints.add(
          new LineProblem(
              ReadingNode.WHOLE,
              "Instrument " + id + " was due for calibration on " + instrument.due() + ".",
              "Have it calibrated, or say why its readings may stand.",
              LineProblem.Severity.WARNING));
    }
    if (stated.problems().isEmpty() && !stated.isStated()) {
      hints.add(
          ReadingNode.hint("Instrument " + id + " has no stated uncertainty, so none is counted."));
    }
    figures.put(id, stated);
  }

  /** The commonest slip: a reading that nobody gave a unit. */
  private void otherKind(
      String id, String statedIn, Unit unit, ReadingTemperatures.Problems problems) {
    if (!hasUnit) {
      problems.add(
          "/unit",
          called + " has no unit, and its instrument " + id + " is stated in " + statedIn + ".",
          "Give it its unit, such as " + statedIn + ".");
    } else {
      problems.add(
          "/instrument",
          called
              + " is in "
              + unit.print()
              + ", and instrument "
              + id
              + " is stated in "
              + statedIn
              + ".",
          "Name the instrument it was taken with, or put the unit right.");
    }
  }

  /** By the date of the record, so that a record says the same whenever it is read. */
  private static boolean isOverdue(Instrument instrument, String date) {
    return date.matches(DATE)
        && instrument.due().matches(DATE)
        && date.compareTo(instrument.due()) > 0;
  }
}
