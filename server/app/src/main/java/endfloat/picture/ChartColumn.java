package endfloat.picture;

import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.Question;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A series of numbers that a chart draws: a column of a table, or readings with stations. */
final class ChartColumn {
  private final String said;
  private final Question asked;
  private final GraphSettings settings;
  private final Value.Series series;
  private final Unit unit;

  ChartColumn(ValueGraph graph, String field, String expression) {
    this.said = expression.strip();
    this.settings = graph.settings();
    this.asked = Question.of(graph, field, expression);
    boolean numbers =
        asked.kind() instanceof Kind.Series kind
            && (kind.element() instanceof Kind.Quantity
                || kind.element() instanceof Kind.Temperature);
    if (!numbers || !(asked.value() instanceof Value.Series read)) {
      throw Question.refused(
          field,
          "This is no series of numbers.",
          "Name a column of a table, such as wear.lash, or a reading with stations.");
    }
    this.series = read;
    this.unit = FigureUnit.of(asked, settings);
  }

  String said() {
    return said;
  }

  int size() {
    return series.size();
  }

  /** The number of a row in the unit shown; NaN where there is none. */
  double at(int row) {
    return series.elements().get(row) instanceof Value.Scalar s ? unit.fromSi(s.si()) : Double.NaN;
  }

  /** Where a row stands, as its table says it. */
  String label(int row) {
    return String.join(", ", series.labels().get(row));
  }

  List<List<String>> labels() {
    return series.labels();
  }

  /** All numbers that are there, in the unit shown. */
  double[] present() {
    double[] all = new double[size()];
    int count = 0;
    for (int row = 0; row < all.length; row++) {
      double number = at(row);
      if (!Double.isNaN(number)) {
        all[count++] = number;
      }
    }
    return Arrays.copyOf(all, count);
  }

  Unit unit() {
    return unit;
  }

  /** A number in the unit shown with that unit, for people. */
  String text(double number) {
    return Shown.of(unit.toSi(number), 0, unit, settings).text();
  }

  /** A difference of two numbers, or a spread. */
  String difference(double number) {
    return Shown.of(unit.interval().toSi(number), 0, unit.interval(), settings).text();
  }

  /** Name and unit, for an axis. */
  String caption() {
    return said + (unit.print().equals("1") ? "" : ", " + unit.print());
  }

  /** The limits that are set on it, in the unit shown, each once. */
  List<Double> limits() {
    Set<Double> limits = new LinkedHashSet<>();
    for (Judgement judgement : asked.judgements()) {
      for (double end : new double[] {judgement.low(), judgement.high()}) {
        if (!Double.isNaN(end)) {
          limits.add(unit.fromSi(end));
        }
      }
    }
    return new ArrayList<>(limits);
  }

  /** Refused where fewer values are there than the chart needs. */
  double[] atLeast(int count, String field) {
    double[] present = present();
    if (present.length < count) {
      throw Question.refused(
          field,
          "There are " + present.length + " values; the chart takes " + count + " or more.",
          "Enter more rows.");
    }
    return present;
  }
}
