package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.record.Reading;
import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Working;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Part temperatures of a reading, and its correction to 20 °C (ISO 1) where a material is given:
 * {@code L₂₀ = L / (1 + α (t - 20 °C))}. The instrument is taken to be at 20 °C. A temperature is
 * written as the language writes it: {@code 35 degC}, {@code 35 degC ± 1 K}, or the name of a
 * reading of it.
 */
final class ReadingTemperatures {
  static final double REFERENCE = 293.15;

  private final Reading reading;
  private final Map<String, Working> parsed = new HashMap<>();
  private final Map<String, Formula> formulas = new HashMap<>();
  private Formula expansion;
  private boolean isLength;

  /** Where a problem is put down. */
  interface Problems {
    void add(String at, String message, String wayOut);
  }

  ReadingTemperatures(Reading reading) {
    this.reading = reading;
    for (Reading.Entry entry : reading.entries()) {
      parse(of(entry));
    }
  }

  private void parse(String text) {
    if (!text.isEmpty()) {
      parsed.computeIfAbsent(text, t -> new Piece(0, "reading_temperature = " + t).parse());
    }
  }

  /** As written for an entry, or for the reading as a whole; may be empty. */
  String of(Reading.Entry entry) {
    return (entry.temperature().isBlank() ? reading.temperature() : entry.temperature()).strip();
  }

  Set<String> namesRead() {
    Set<String> names = new LinkedHashSet<>();
    for (Working working : parsed.values()) {
      for (Line line : working.lines()) {
        names.addAll(endfloat.working.References.of(line));
      }
    }
    return names;
  }

  void check(ValueGraph graph, Unit unit, Problems problems, List<LineProblem> hints) {
    formulas.clear();
    expansion = null;
    isLength = unit.dimension().equals(Dimension.LENGTH);
    parsed.forEach((text, working) -> check(text, working, graph, problems));
    if (!reading.material().isBlank() && isLength) {
      expansion = expansion(graph, problems);
    } else if (isLength && parsed.keySet().stream().anyMatch(t -> !isReference(t))) {
      hints.add(ReadingNode.hint("Not corrected to 20 \u00b0C, because no material is given."));
    }
  }

  private static boolean isReference(String text) {
    return text.matches("20(?:\\.0*)?\\s*(?:degC|\u00b0C)|68(?:\\.0*)?\\s*(?:degF|\u00b0F)");
  }

  private void check(String text, Working working, ValueGraph graph, Problems problems) {
    if (!working.problems().isEmpty() || working.lines().size() != 1) {
      problems.add(
          "/temperature",
          "\"" + text + "\" is not a temperature.",
          "Write it as 35 degC or 35 degC \u00b1 1 K.");
      return;
    }
    Checked checked = graph.check(working.lines().get(0));
    if (checked instanceof Checked.Value value && value.kind() instanceof Kind.Temperature) {
      Piece piece = new Piece(0, "reading_temperature = " + text);
      Planner planner = new Planner(graph::slot, piece::at, "temperature of " + reading.name());
      formulas.put(
          text,
          new Formula(
              "temperature of " + reading.name() + ", " + text,
              Root.Kind.TEMPERATURE,
              text,
              value,
              planner));
      return;
    }
    problems.add(
        "/temperature",
        checked instanceof Checked.Refused refused
            ? refused.problems().get(0).message()
            : "\"" + text + "\" is not a temperature.",
        "Write it as 35 degC or 35 degC \u00b1 1 K.");
  }

  private Formula expansion(ValueGraph graph, Problems problems) {
    Piece piece =
        new Piece(
            0,
            "reading_expansion = material(\""
                + reading.material().replace("\"", "")
                + "\").expansion");
    Working working = piece.parse();
    if (working.problems().isEmpty()
        && working.lines().size() == 1
        && graph.check(working.lines().get(0)) instanceof Checked.Value value) {
      Planner planner = new Planner(graph::slot, piece::at, "material");
      return new Formula("", Root.Kind.LIBRARY, "", value, planner);
    }
    problems.add(
        "/material",
        "The expansion of \"" + reading.material() + "\" is not known.",
        "Name a material of the library.");
    return null;
  }

  /** Whether the value differs from what was read. */
  boolean corrects(Reading.Entry entry) {
    return expansion != null && !of(entry).isEmpty() && !isReference(of(entry));
  }

  Scalar corrected(Scalar indicated, Reading.Entry entry, Frame frame) {
    Formula temperature = formulas.get(of(entry));
    if (expansion == null || temperature == null) {
      return indicated;
    }
    endfloat.working.Span span = new endfloat.working.Span(1, 1, 1);
    Scalar t = (Scalar) temperature.evaluate(frame);
    Scalar alpha = (Scalar) expansion.evaluate(frame);
    Scalar excess = Functions.subtract(span, t, Scalar.exact(REFERENCE));
    if (excess.si() == 0 && excess.gradient().isEmpty()) {
      return indicated;
    }
    Scalar growth = Functions.multiply(span, alpha, excess);
    return Functions.divide(span, indicated, Functions.add(span, Scalar.exact(1), growth));
  }
}
