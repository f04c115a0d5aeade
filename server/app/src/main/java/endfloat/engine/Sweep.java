package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A result as one input or reading takes other values, each with the uncertainty that it has now:
 * what the sheet would say if it had been typed or read so. The graph stays as it is.
 */
public final class Sweep {
  /** Seed of the input's own slope, of its size: only the ratio of two parts counts. */
  private static final double SEED = 1e-6;

  private static final Root MOVED =
      new Root("unknown:swept", Root.Kind.UNKNOWN, "", "", Double.POSITIVE_INFINITY);

  private final Question asked;
  private final Slot input;
  private final Scalar now;
  private final List<Node> between;
  private final Set<Slot> moving = new HashSet<>();

  /**
   * The result at one value of the input.
   *
   * @param x value of the input [SI]
   * @param value of the result [SI]
   * @param standardUncertainty of the result [SI]
   * @param degreesOfFreedom effective, of that
   * @param slope of the result by the input
   */
  public record Point(
      double x, double value, double standardUncertainty, double degreesOfFreedom, double slope) {}

  private Sweep(Question asked, Slot input) {
    this.asked = asked;
    this.input = input;
    this.now = (Scalar) input.value();
    moving.add(input);
    Set<Slot> among = Wiring.upstream(asked.node());
    among.remove(input);
    this.between = Between.moved(moving, among);
  }

  /**
   * @param asked the result
   * @param field JSON Pointer to where the input was entered, for problems
   * @param name of the input
   * @throws QuestionRefusedException if the name is no input, or the result does not rest on it
   */
  public static Sweep of(Question asked, String field, String name) {
    if (name.isBlank()) {
      throw Question.refused(field, "No input is named.", "Name an input or a reading.");
    }
    Slot input = asked.graph().existing(name.strip()).filter(s -> s.giver() != null).orElse(null);
    if (input == null) {
      throw Question.refused(
          field, "There is no value " + name.strip() + ".", "Name an input or a reading.");
    }
    boolean given =
        input.giver() instanceof ReadingNode
            || (input.giver() instanceof DefinitionNode d
                && !d.isSolved()
                && d.definition().isInput());
    if (!given) {
      throw Question.refused(
          field,
          input.name() + " is worked out from other values.",
          "Name an input or a reading that it rests on.");
    }
    if (!input.isFresh()) {
      throw Question.refused(field, input.name() + " has no value yet.", "Give it one first.");
    }
    if (!(input.value() instanceof Scalar)) {
      throw Question.refused(
          field, input.name() + " is not a single number.", "Name one that is read once.");
    }
    asked.number();
    if (!asked.restsOn().contains(input.name())) {
      throw Question.refused(
          field,
          "The result does not rest on " + input.name() + ".",
          "Name an input or a reading that it rests on.");
    }
    return new Sweep(asked, input);
  }

  /** The name of the input. */
  public String name() {
    return input.name();
  }

  /** The value of the input now. */
  public Scalar now() {
    return now;
  }

  public Optional<Kind> inputKind() {
    return Optional.ofNullable(input.kind());
  }

  public Optional<Unit> inputUnit() {
    return Optional.ofNullable(input.unit());
  }

  /** The limits of the result that stand still while the input moves. */
  public List<Judgement> limits() {
    Set<String> moved = new LinkedHashSet<>();
    List<Judgement> still = new ArrayList<>();
    asked.place().ifPresent(place -> movedLimits(place.name(), moved));
    for (Judgement limit : asked.judgements()) {
      if (!moved.contains(limit.clause() + ":" + limit.line())) {
        still.add(limit);
      }
    }
    return still;
  }

  private void movedLimits(String name, Set<String> into) {
    Slot judged = asked.graph().slot(name);
    for (Node reader : judged.readers()) {
      if (reader instanceof LimitNode limit) {
        for (Slot read : limit.reads()) {
          if (read != judged && moving.contains(read)) {
            limit.judgements().forEach(j -> into.add(j.clause() + ":" + j.line()));
          }
        }
      }
    }
  }

  /**
   * The result at one value of the input.
   *
   * @param x [SI]
   * @throws QuestionRefusedException if there is none
   */
  public Point at(double x) {
    double seed = SEED * Math.max(Math.abs(x), Math.abs(now.si()));
    seed = seed == 0 ? SEED : seed;
    Overlay overlay = new Overlay(asked.graph().evaluation(), "to draw");
    overlay.put(
        input, new Scalar(x, Gradient.combine(1, gradient(x), 1, Gradient.of(MOVED, seed))));
    try {
      for (Node needed : between) {
        overlay.put(needed.giving(), needed.tried(overlay));
      }
    } catch (LineFailure e) {
      throw new QuestionRefusedException(asked.field(), e.problem());
    }
    Scalar result = (Scalar) asked.value(overlay);
    Gradient stays = result.gradient().without(MOVED);
    double u = overlay.correlations().standardUncertainty(stays);
    double degrees = overlay.correlations().degreesOfFreedom(stays, u);
    return new Point(x, result.si(), u, degrees, result.gradient().part(MOVED) / seed);
  }

  /** Of the input at another value: what is stated in parts of the value grows with it. */
  private Gradient gradient(double x) {
    Gradient moved = now.gradient();
    double ratio = indicated(x) / indicated(now.si());
    if (!Double.isFinite(ratio)) {
      return moved;
    }
    for (int i = 0; i < now.gradient().size(); i++) {
      Root root = now.gradient().root(i);
      if (root.kind() == Root.Kind.GAIN || isRelative(root)) {
        moved =
            Gradient.combine(
                1, moved, Math.abs(ratio) - 1, Gradient.of(root, now.gradient().part(i)));
      }
    }
    return moved;
  }

  private double indicated(double si) {
    Unit unit = input.unit();
    return unit != null && unit.isTemperaturePoint() ? unit.fromSi(si) : si;
  }

  private boolean isRelative(Root root) {
    return input.giver() instanceof DefinitionNode definition
        && definition.spreadIsRelative()
        && definition.root().filter(root::equals).isPresent();
  }
}
