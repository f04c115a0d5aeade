package endfloat.engine;

import endfloat.engine.Value.Fields;
import endfloat.engine.Value.Scalar;
import endfloat.units.Unit;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code solve a = b for x between low and high}. The unknown is a name of its own, or an input of
 * the record: then every value between the input and the equation is worked out anew for each
 * trial, and the record keeps its own. The uncertainty of the answer follows from the implicit
 * function: {@code dx = -F_x⁻¹ dF}.
 */
final class Solver {
  /** Seed of an unknown's own root, of its bracket: small, so that differences stay inside it. */
  private static final double SEED = 1e-4;

  private final DefinitionNode node;
  private final Span span;
  private final List<Sides> equations = new ArrayList<>();
  private final List<Sought> unknowns = new ArrayList<>();

  /** Two sides that must be equal, and what they are. */
  record Sides(Term left, Term right, Kind kind) {}

  /** An unknown and its bracket. */
  record Sought(String name, Slot slot, Kind kind, Term low, Term high, Root root) {}

  Solver(DefinitionNode node, Checked.Solved solved, Planner planner) {
    this.node = node;
    this.span = node.definition().solve().orElseThrow().span();
    for (Checked.Equation equation : solved.equations()) {
      equations.add(
          new Sides(
              planner.plan(equation.left()),
              planner.plan(equation.right()),
              equation.left().kind()));
    }
    for (Checked.Unknown unknown : solved.unknowns()) {
      unknowns.add(
          new Sought(
              unknown.name(),
              planner.slot(unknown.name()),
              unknown.kind(),
              planner.plan(unknown.low()),
              planner.plan(unknown.high()),
              new Root(
                  "unknown:" + unknown.name(),
                  Root.Kind.UNKNOWN,
                  unknown.name(),
                  "",
                  Double.POSITIVE_INFINITY)));
    }
  }

  Span span() {
    return span;
  }

  /** The unit to speak of the unknown in; null where none is known. */
  Unit unknownUnit() {
    Unit own = unknowns.get(0).slot().unit();
    return own != null ? own : node.unit();
  }

  Value solve(Frame frame) {
    double[] low = new double[unknowns.size()];
    double[] high = new double[unknowns.size()];
    for (int i = 0; i < low.length; i++) {
      low[i] = number(unknowns.get(i).low(), frame);
      high[i] = number(unknowns.get(i).high(), frame);
      if (!(low[i] < high[i])) {
        throw new LineFailure(
            unknowns.get(i).high().span(),
            "The bracket of " + unknowns.get(i).name() + " is empty.",
            "Write its lower end first.");
      }
    }
    Trial trial = new Trial(frame, low, high);
    double[] roots =
        unknowns.size() == 1
            ? new double[] {new BracketSearch(this, trial, low[0], high[0], frame).root()}
            : new SystemSearch(this, trial, low, high).roots();
    return answer(trial, roots);
  }

  private static double number(Term term, Frame frame) {
    return ((Scalar) term.evaluate(frame)).si();
  }

  List<Sought> unknowns() {
    return unknowns;
  }

  List<Sides> equations() {
    return equations;
  }

  private Value answer(Trial trial, double[] roots) {
    int n = roots.length;
    Scalar[] differences = trial.differences(roots, true);
    double[][] jacobian = trial.jacobian(differences);
    List<Value> values = new ArrayList<>(n);
    double[][] inverse = LinearSystem.inverse(jacobian);
    for (int i = 0; i < n; i++) {
      Gradient gradient = Gradient.NONE;
      for (int j = 0; j < n; j++) {
        Gradient rest = trial.rest(differences[j]);
        if (!rest.isEmpty() && inverse == null) {
          throw new LineFailure(
              span,
              "At the answer the two sides only touch, so its uncertainty cannot be stated.",
              "Look at the sides on a chart before trusting this answer.");
        }
        gradient = rest.isEmpty() ? gradient : Gradient.combine(1, gradient, -inverse[i][j], rest);
      }
      values.add(Functions.scalar(span, roots[i], gradient));
    }
    return n == 1
        ? values.get(0)
        : new Fields(unknowns.stream().map(Sought::name).toList(), values);
  }

  /** The difference of the two sides for given unknowns. */
  final class Trial {
    private final Overlay overlay;
    private final List<Node> between;
    private final double[] seeds;

    private Trial(Frame frame, double[] low, double[] high) {
      overlay = new Overlay(frame, "to solve through");
      between = Between.of(node);
      seeds = new double[low.length];
      for (int i = 0; i < seeds.length; i++) {
        seeds[i] = SEED * (high[i] - low[i]);
      }
    }

    /** Left less right of each equation, with the slopes by the unknowns where asked for. */
    Scalar[] differences(double[] x, boolean slopes) {
      for (int i = 0; i < x.length; i++) {
        Sought sought = unknowns.get(i);
        Gradient seed = slopes ? Gradient.of(sought.root(), seeds[i]) : Gradient.NONE;
        overlay.put(sought.slot(), new Scalar(x[i], seed));
      }
      for (Node needed : between) {
        overlay.put(needed.giving(), tried(needed));
      }
      Scalar[] differences = new Scalar[equations.size()];
      for (int i = 0; i < differences.length; i++) {
        Sides sides = equations.get(i);
        differences[i] = Functions.subtract(span, side(sides.left()), side(sides.right()));
      }
      return differences;
    }

    /** A failure in another line is told of in this one, whose error it becomes. */
    private Value tried(Node needed) {
      try {
        return needed.tried(overlay);
      } catch (LineFailure e) {
        throw new LineFailure(
            span,
            "On the way, " + needed.name() + " has no value: " + e.problem().message(),
            "Bring the ends closer to the answer, or see to the line of " + needed.name() + ".");
      }
    }

    private Scalar side(Term side) {
      if (side.evaluate(overlay) instanceof Scalar scalar) {
        return scalar;
      }
      throw new LineFailure(
          side.span(), "An equation to solve takes one value a side.", "Pick or reduce first.");
    }

    double[][] jacobian(Scalar[] differences) {
      double[][] jacobian = new double[differences.length][unknowns.size()];
      for (int i = 0; i < differences.length; i++) {
        for (int j = 0; j < seeds.length; j++) {
          jacobian[i][j] = differences[i].gradient().part(unknowns.get(j).root()) / seeds[j];
        }
      }
      return jacobian;
    }

    /** The gradient by everything but the unknowns. */
    Gradient rest(Scalar difference) {
      Gradient rest = difference.gradient();
      for (Sought sought : unknowns) {
        rest = rest.without(sought.root());
      }
      return rest;
    }
  }
}
