package endfloat.engine;

import endfloat.record.Instrument;
import endfloat.units.Size;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.List;

/**
 * The standard uncertainties of an instrument, from its entry in the register.
 *
 * <p>Offset and gain are one error each, shared by all readings taken with it: they cancel in a
 * difference and do not average out. Resolution and scatter are each reading's own. Where only one
 * figure U is known, half its variance is taken as offset and half as each reading's own.
 *
 * @param offset shared [SI]
 * @param gain shared, a fraction of the indication
 * @param own each reading's own share of a single figure [SI]
 * @param resolution rectangular over the step [SI]
 * @param scatter standard deviation of one reading [SI]; NaN where it is not stated
 * @param problems figures that cannot be read
 * @param statedIn a unit in which it is stated that is not of the reading's kind; empty for none
 */
record InstrumentFigures(
    String id,
    double offset,
    String offsetWords,
    double gain,
    double own,
    double resolution,
    double scatter,
    List<String> problems,
    String statedIn) {
  private static final double ROOT_2 = 1.4142135623730951;
  private static final double ROOT_12 = 3.4641016151377544;

  /** No instrument, so nothing known of one. */
  static final InstrumentFigures NONE =
      new InstrumentFigures("", 0, "", 0, 0, 0, Double.NaN, List.of(), "");

  /**
   * @param unit of the reading; figures of a temperature are intervals
   */
  static InstrumentFigures of(Instrument instrument, Unit unit) {
    List<String> problems = new ArrayList<>();
    String[] statedIn = {""};
    Unit interval = unit.interval();
    double k = instrument.coverage() > 0 ? instrument.coverage() : 2;
    if (!(instrument.coverage() > 0)) {
      problems.add("its coverage factor is not above zero");
    }
    double offset = number("offset", instrument.offset(), interval, problems, statedIn) / k;
    double gain =
        number("gain", instrument.gain(), UnitTable.find("1"), problems, new String[1]) / k;
    double step = number("resolution", instrument.resolution(), interval, problems, statedIn);
    double scatter = number("scatter", instrument.scatter(), interval, problems, statedIn);
    double single =
        number("uncertainty", instrument.uncertainty(), interval, problems, statedIn) / k;
    boolean onlyOne = instrument.offset().isBlank() && instrument.gain().isBlank();
    double half = onlyOne ? single / ROOT_2 : 0;
    return new InstrumentFigures(
        instrument.id(),
        onlyOne ? half : offset,
        onlyOne
            ? "half the variance of U = "
                + instrument.uncertainty()
                + ", the other half taken as each reading's own"
            : "\u00b1 " + instrument.offset(),
        gain,
        half,
        step / ROOT_12,
        instrument.scatter().isBlank() ? Double.NaN : scatter,
        List.copyOf(problems),
        statedIn[0]);
  }

  /** Whether it says anything about its errors. */
  boolean isStated() {
    return offset > 0 || gain > 0 || own > 0 || resolution > 0 || scatter > 0;
  }

  private static double number(
      String what, String text, Unit unit, List<String> problems, String[] statedIn) {
    if (text.isBlank()) {
      return 0;
    }
    try {
      Size size = Size.read(text, unit);
      if (!size.unit().dimension().same(unit.dimension())) {
        statedIn[0] = size.unit().print();
        problems.add(
            "its "
                + what
                + " \""
                + text
                + "\" is "
                + size.unit().dimension().words()
                + " where "
                + unit.dimension().words()
                + " is wanted");
      } else if (size.si() < 0) {
        problems.add("its " + what + " \"" + text + "\" is negative");
      } else {
        return size.unit().isTemperaturePoint()
            ? size.unit().interval().toSi(size.unit().fromSi(size.si()))
            : size.si();
      }
    } catch (UnitException e) {
      problems.add("its " + what + " cannot be read: " + e.getMessage());
    }
    return 0;
  }
}
