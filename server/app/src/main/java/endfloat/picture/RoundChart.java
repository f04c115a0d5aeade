package endfloat.picture;

import endfloat.engine.Figure;
import endfloat.engine.FigureUnit;
import endfloat.engine.GraphSettings;
import endfloat.engine.Question;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.picture.RoundDrawing.Station;
import endfloat.record.ChartClause;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Readings round a wheel with their first harmonic: how far the wheel is out of centre, and what
 * does not fit that.
 */
final class RoundChart {
  private static final Pattern ANGLE =
      Pattern.compile("\\s*([-+]?[0-9]+(?:\\.[0-9]+)?)\\s*(?:\u00b0|deg)\\s*");
  private static final Pattern NUMBER = Pattern.compile("\\s*[0-9]+(?:\\.[0-9]+)?\\s*");

  private final ChartClause clause;
  private final ValueGraph graph;
  private final GraphSettings settings;
  private final Value.Series series;
  private final Unit unit;
  private final String axis;
  private final List<String> labels = new ArrayList<>();
  private double[] angles;

  RoundChart(ChartClause clause, ValueGraph graph) {
    this.clause = clause;
    this.graph = graph;
    this.settings = graph.settings();
    Question asked = Question.of(graph, "/of", clause.of());
    if (!(asked.value() instanceof Value.Series read)
        || !(asked.kind() instanceof Kind.Series kind)
        || read.axes().isEmpty()) {
      throw Question.refused(
          "/of", "These are no readings with stations.", "Name a reading that has an axis.");
    }
    this.series = read;
    this.unit = FigureUnit.of(asked, settings);
    this.axis = axis();
    angles();
    if (series.size() < 4) {
      throw Question.refused(
          "/of",
          "A first harmonic and what it leaves need four stations; there are "
              + series.size()
              + ".",
          "Read more places round the turn.");
    }
  }

  private String axis() {
    String named = clause.axis().isBlank() ? series.axes().get(0) : clause.axis().strip();
    int at = series.axes().indexOf(named);
    if (at < 0) {
      throw Question.refused(
          "/axis",
          "The readings have no axis " + named + ".",
          "Theirs: " + String.join(", ", series.axes()) + ".");
    }
    Set<String> seen = new HashSet<>();
    for (List<String> station : series.labels()) {
      if (!seen.add(station.get(at))) {
        throw Question.refused(
            "/of",
            named + " " + station.get(at) + " is read at more than one place.",
            "Pick one place of the other axes.");
      }
      labels.add(station.get(at));
    }
    return named;
  }

  /** Station 1 at 0 degrees, or station 0 where there is one; labels in degrees are angles. */
  private void angles() {
    angles = new double[labels.size()];
    int count = clause.count() > 0 ? clause.count() : labels.size();
    double first = labels.contains("0") ? 0 : 1;
    boolean numbers = labels.stream().allMatch(l -> NUMBER.matcher(l).matches());
    for (int i = 0; i < angles.length; i++) {
      Matcher angle = ANGLE.matcher(labels.get(i));
      if (angle.matches()) {
        angles[i] = Double.parseDouble(angle.group(1));
      } else if (numbers) {
        double station = Double.parseDouble(labels.get(i).strip());
        if (station < first || station >= count + first) {
          throw Question.refused(
              "/count",
              axis + " " + labels.get(i) + " lies beyond the " + count + " stations of a turn.",
              "Say how many stations a whole turn has.");
        }
        angles[i] = 360 * (station - first) / count;
      } else if (count == labels.size()) {
        angles[i] = 360.0 * i / count;
      } else {
        throw Question.refused(
            "/axis",
            "Where " + axis + " " + labels.get(i) + " lies round the turn is not known.",
            "Name the stations by numbers or by degrees.");
      }
    }
  }

  ChartPicture.Drawn drawn() {
    Value.Fields fit = fit();
    double[] readings = new double[angles.length];
    List<Station> stations = new ArrayList<>();
    Map<String, Figure.Element> elements = elements();
    for (int i = 0; i < angles.length; i++) {
      Value.Scalar at = (Value.Scalar) series.elements().get(i);
      readings[i] = at.si();
      double expanded = graph.expandedUncertainty(at);
      stations.add(
          new Station(
              labels.get(i),
              angles[i],
              unit.fromSi(at.si()),
              Math.abs(unit.interval().fromSi(expanded)),
              text(at.si(), expanded, elements.get(labels.get(i))),
              Optional.ofNullable(elements.get(labels.get(i))).flatMap(Figure.Element::verdict)));
    }
    Value.Scalar eccentricity = scalar(fit, "eccentricity");
    double amplitude = eccentricity.si();
    double direction = scalar(fit, "direction").si();
    // the residuals of a least-squares fit with a constant add up to nought
    double mean = 0;
    for (int i = 0; i < readings.length; i++) {
      mean += (readings[i] - amplitude * cos(angles[i], direction)) / readings.length;
    }
    double squares = 0;
    for (int i = 0; i < readings.length; i++) {
      double left = readings[i] - mean - amplitude * cos(angles[i], direction);
      squares += left * left;
    }
    double residual = Math.sqrt(squares / (readings.length - 3));
    double expanded = graph.expandedUncertainty(eccentricity);
    String twice = Shown.expanded(2 * amplitude, 2 * expanded, unit.interval()).text();
    String total = total();
    Station tightest = stations.stream().min(Comparator.comparingDouble(Station::y)).orElseThrow();
    Station loosest = stations.stream().max(Comparator.comparingDouble(Station::y)).orElseThrow();
    String high = degrees(StrictMath.toDegrees(direction));
    String left = Shown.of(residual, 0, unit.interval(), settings).value();
    String residualText = rounded(unit.interval().fromSi(residual)) + suffix();
    String description =
        clause.of().strip()
            + " round the turn: least "
            + tightest.text()
            + " at "
            + axis
            + " "
            + tightest.label()
            + ", greatest "
            + loosest.text()
            + " at "
            + axis
            + " "
            + loosest.label()
            + "; total indicator reading "
            + total
            + " (greatest less least); first harmonic: twice the eccentricity "
            + twice
            + ", highest at "
            + high
            + "; left over "
            + (left.equals("0") ? "nothing" : residualText + " root mean square")
            + ".";
    double fitMean = unit.fromSi(mean);
    double fitAmplitude = Math.abs(unit.interval().fromSi(amplitude));
    RoundDrawing drawing =
        new RoundDrawing(
            stations,
            tightest,
            loosest,
            new RoundDrawing.Wave(fitMean, fitAmplitude, StrictMath.toDegrees(direction)),
            new RoundDrawing.Words(
                clause.of().strip() + (suffix().isEmpty() ? "" : "," + suffix()),
                axis,
                "2 \u00d7 eccentricity " + twice,
                description));
    return new ChartPicture.Drawn(
        drawing.svg(),
        description,
        List.of(axis, "angle", clause.of().strip()),
        rows(stations, total, twice, high, residualText),
        List.of(
            "Curve: first harmonic by least squares (eccentricity_from_dial); its amplitude is the"
                + " eccentricity of a round part. Total indicator reading: greatest less least, which"
                + " is what a limit of run-out means; it takes in what the curve leaves over. Left"
                + " over: root mean square with n \u2212 3 degrees of freedom.",
            "Stations are no repeats: their scatter is not an uncertainty of their mean."));
  }

  private Value.Fields fit() {
    StringBuilder call = new StringBuilder("eccentricity_from_dial(");
    call.append(clause.of().strip()).append(", [");
    for (int i = 0; i < angles.length; i++) {
      call.append(i == 0 ? "" : ", ").append(number(angles[i])).append(" deg");
    }
    return (Value.Fields) Question.of(graph, "/of", call.append("])").toString()).value();
  }

  /** Greatest less least, with its uncertainty. */
  private String total() {
    String of = clause.of().strip();
    Value.Scalar swing = Question.of(graph, "/of", "max(" + of + ") - min(" + of + ")").number();
    return Shown.expanded(swing.si(), graph.expandedUncertainty(swing), unit.interval()).text();
  }

  private static String number(double angle) {
    return java.math.BigDecimal.valueOf(angle).toPlainString();
  }

  private static double cos(double degrees, double direction) {
    return StrictMath.cos(StrictMath.toRadians(degrees) - direction);
  }

  private static Value.Scalar scalar(Value.Fields fields, String name) {
    return (Value.Scalar) fields.get(name);
  }

  /** The stations of the figure that is drawn, by label; none for a longer expression. */
  private Map<String, Figure.Element> elements() {
    Map<String, Figure.Element> elements = new HashMap<>();
    graph
        .figure(clause.of().strip())
        .map(Figure::elements)
        .orElse(List.of())
        .forEach(e -> elements.put(e.labels().getOrDefault(axis, ""), e));
    return elements;
  }

  /** As typed, where it was typed. */
  private String text(double si, double expanded, Figure.Element element) {
    return Optional.ofNullable(element)
        .flatMap(e -> Shown.of(graph.figure(clause.of().strip()).orElseThrow(), e, settings))
        .orElseGet(() -> Shown.expanded(si, expanded, unit))
        .text();
  }

  private String suffix() {
    return unit.print().equals("1") ? "" : " " + unit.print();
  }

  private static String degrees(double angle) {
    return String.format(Locale.ROOT, "%.0f\u00b0", angle);
  }

  private static String rounded(double number) {
    return new java.math.BigDecimal(number)
        .round(new java.math.MathContext(2))
        .stripTrailingZeros()
        .toPlainString();
  }

  private List<List<String>> rows(
      List<Station> stations, String total, String twice, String high, String residual) {
    List<List<String>> rows = new ArrayList<>();
    for (Station station : stations) {
      rows.add(List.of(station.label(), degrees(station.angle()), station.text()));
    }
    rows.add(List.of("total indicator reading", "greatest less least", total));
    rows.add(List.of("twice the eccentricity, first harmonic", "highest at " + high, twice));
    rows.add(List.of("left over, root mean square", "", residual));
    return rows;
  }
}
