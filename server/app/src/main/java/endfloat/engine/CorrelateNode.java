package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.working.Checked;
import endfloat.working.Line;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.Optional;

/** {@code correlate a, b: 0.8}. */
final class CorrelateNode extends LineNode {
  private Term coefficient;
  private Slot first;
  private Slot second;
  private LineProblem refusal;

  CorrelateNode(String clause, Piece piece, Line.Correlate line) {
    super(clause, piece, line);
  }

  private Line.Correlate correlate() {
    return (Line.Correlate) line();
  }

  @Override
  String name() {
    return "";
  }

  @Override
  String owner() {
    return "correlate " + correlate().first() + ", " + correlate().second();
  }

  @Override
  void check(ValueGraph graph) {
    first = graph.slot(correlate().first());
    second = graph.slot(correlate().second());
    super.check(graph);
  }

  @Override
  void made(Checked checked, Planner planner) {
    coefficient = planner.plan(((Checked.Correlated) checked).coefficient());
    found(null, null, checked.problems());
  }

  @Override
  Value evaluate(Frame frame) {
    Scalar r = Scalar.exact(((Scalar) coefficient.evaluate(frame)).si());
    if (Math.abs(r.si()) > 1) {
      throw new LineFailure(
          coefficient.span(),
          "A coefficient of correlation lies between \u22121 and 1.",
          "It is 0 where two values have nothing to do with each other.");
    }
    root(first, correlate().firstSpan());
    root(second, correlate().secondSpan());
    if (first == second) {
      throw new LineFailure(
          correlate().secondSpan(),
          "A value is always correlated with itself.",
          "Name two inputs.");
    }
    return r;
  }

  private static Root root(Slot slot, Span span) {
    Optional<Root> root =
        slot.giver() instanceof DefinitionNode definition ? definition.root() : Optional.empty();
    return root.orElseThrow(
        () ->
            new LineFailure(
                span,
                "The name " + slot.name() + " is no input with an uncertainty of its own.",
                "Correlate the inputs it comes from; readings with one instrument share its error"
                    + " already."));
  }

  /** What it says; only while it is fresh. */
  Correlations.Pair pair() {
    Root a = root(first, correlate().firstSpan());
    Root b = root(second, correlate().secondSpan());
    double r = ((Scalar) value()).si();
    return a.compareTo(b) <= 0 ? new Correlations.Pair(a, b, r) : new Correlations.Pair(b, a, r);
  }

  /** Says that it cannot be true together with others; null where it can. */
  boolean refuse(LineProblem problem) {
    boolean changed = !java.util.Objects.equals(refusal, problem);
    refusal = problem;
    return changed;
  }

  LineProblem refusal() {
    return refusal;
  }
}
