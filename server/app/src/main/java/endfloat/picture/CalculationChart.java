package endfloat.picture;

import endfloat.engine.CallOfLine;
import endfloat.engine.Question;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.ChartClause;
import endfloat.units.Unit;
import endfloat.units.UnitPreference;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The picture of one calculation: a line whose value is one call of it. Its numbers are those of
 * the calculation itself, asked again where more places are wanted.
 */
final class CalculationChart {
  /** Calculations that have a picture. */
  static final Set<String> PICTURED =
      Set.of(
          "stepped_shaft",
          "beam",
          "circular_plate",
          "annular_plate",
          "iso_fit",
          "iso_limits",
          "inch_fit",
          "chain_worst_case",
          "chain_rss",
          "chain_monte_carlo",
          "spur_pair",
          "helical_pair",
          "bevel_pair",
          "skew_pair",
          "bore_line");

  private final ValueGraph graph;
  private final CallOfLine call;

  CalculationChart(ChartClause clause, ValueGraph graph) {
    this.graph = graph;
    this.call =
        CallOfLine.of(graph, clause.of().strip())
            .orElseThrow(
                () ->
                    Question.refused(
                        "/of",
                        "This names no line that is one call of a calculation.",
                        "Name a line such as shaft = stepped_shaft(...)."));
    if (!PICTURED.contains(call.function())) {
      throw Question.refused(
          "/of",
          "The calculation " + call.function() + " has no picture.",
          "These have: " + String.join(", ", PICTURED.stream().sorted().toList()) + ".");
    }
  }

  ChartPicture.Drawn drawn() {
    return switch (call.function()) {
      case "stepped_shaft" -> new ShaftPicture(this).drawn();
      case "beam", "circular_plate", "annular_plate" -> new BentPicture(this).drawn();
      case "iso_fit", "iso_limits", "inch_fit" -> new FitPicture(this).drawn();
      case "bore_line" -> new BorePicture(this).drawn();
      case "spur_pair", "helical_pair", "bevel_pair", "skew_pair" ->
          new ForcesPicture(this).drawn();
      default -> new ChainPicture(this).drawn();
    };
  }

  CallOfLine call() {
    return call;
  }

  /** What an expression is worth in this record. */
  Value ask(String expression) {
    return Question.of(graph, "/of", expression).value();
  }

  /** The results of the call. */
  Value.Fields results() {
    return (Value.Fields) ask(call.toString());
  }

  /** An argument that must be given. */
  String argument(String name, int place) {
    return call.argument(name, place)
        .orElseThrow(
            () -> Question.refused("/of", "The call has no " + name + ".", "Give it by name."));
  }

  static double number(Value value) {
    return value instanceof Value.Scalar scalar ? scalar.si() : Double.NaN;
  }

  static double[] numbers(Value value) {
    if (value instanceof Value.Series series) {
      return series.elements().stream().mapToDouble(CalculationChart::number).toArray();
    }
    return value instanceof Value.Scalar scalar ? new double[] {scalar.si()} : new double[0];
  }

  /** A list of parts, one alone too. */
  static List<Value.PartValue> parts(Value value) {
    return value instanceof Value.PartList list
        ? list.parts()
        : value instanceof Value.PartValue one ? List.of(one) : new ArrayList<>();
  }

  /** The unit of the sheet for values that come in this one. */
  Unit unit(String of) {
    return UnitPreference.shown(UnitTable.find(of), graph.settings().units());
  }

  /** A number with its unit, five figures at most. */
  String text(double si, Unit unit) {
    return endfloat.engine.Shown.of(si, 0, unit, graph.settings()).text();
  }

  /** To the micrometre or its like: a double's last places are not worked out by anyone. */
  static double rounded(double si) {
    return new java.math.BigDecimal(si).round(new java.math.MathContext(5)).doubleValue();
  }
}
