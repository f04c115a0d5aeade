package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.engine.Value.Words;
import endfloat.working.Expression.Comparator;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.List;

/** Comparisons and choices. */
final class ConditionTerms {
  /** Values nearer than this, of their size, are equal: they differ by rounding only. */
  static final double EQUAL = 1e-12;

  private ConditionTerms() {}

  /** {@code a < b <= c}. */
  @SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
  record Compare(Span span, Term[] operands, List<Comparator> operators) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Value[] values = new Value[operands.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = operands[i].evaluate(frame);
      }
      return Elementwise.anySeries(values)
          ? Elementwise.map(values, Planner.spans(operands), (v, at) -> chain(v, frame))
          : chain(values, frame);
    }

    private Truth chain(Value[] values, Frame frame) {
      boolean holds = true;
      for (int i = 0; i < operators.size(); i++) {
        holds &= holds(values[i], operators.get(i), values[i + 1], frame);
      }
      return new Truth(holds);
    }

    private boolean holds(Value left, Comparator operator, Value right, Frame frame) {
      if (left instanceof Scalar a && right instanceof Scalar b) {
        hint(a, b, frame);
        return compare(a.si(), operator, b.si());
      }
      return left instanceof Words a && right instanceof Words b
          ? Dates.compare(a, operator, b)
          : left.equals(right) == (operator == Comparator.EQUAL);
    }

    private void hint(Scalar a, Scalar b, Frame frame) {
      if (a.gradient().isEmpty() && b.gradient().isEmpty()) {
        return;
      }
      Gradient difference = Gradient.combine(1, a.gradient(), -1, b.gradient());
      double u = frame.correlations().standardUncertainty(difference);
      if (Math.abs(a.si() - b.si()) < 2 * u) {
        frame.hint(
            new LineProblem(
                span,
                "The two sides of this condition lie within their uncertainty of each other.",
                "The other answer is possible too; look at both.",
                LineProblem.Severity.HINT));
      }
    }
  }

  static boolean compare(double a, Comparator operator, double b) {
    boolean equal = Math.abs(a - b) <= EQUAL * Math.max(Math.abs(a), Math.abs(b));
    return switch (operator) {
      case LESS -> a < b && !equal;
      case AT_MOST -> a < b || equal;
      case GREATER -> a > b && !equal;
      case AT_LEAST -> a > b || equal;
      case EQUAL -> equal;
      case UNEQUAL -> !equal;
    };
  }

  /** {@code if c then a else b}; only the branch that holds is evaluated. */
  record Choose(Span span, Term condition, Term then, Term otherwise) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Value asked = condition.evaluate(frame);
      if (asked instanceof Series series) {
        return Elementwise.map(
            new Value[] {series, then.evaluate(frame), otherwise.evaluate(frame)},
            new Span[] {condition.span(), then.span(), otherwise.span()},
            (v, at) -> ((Truth) v[0]).holds() ? v[1] : v[2]);
      }
      return ((Truth) asked).holds() ? then.evaluate(frame) : otherwise.evaluate(frame);
    }
  }
}
