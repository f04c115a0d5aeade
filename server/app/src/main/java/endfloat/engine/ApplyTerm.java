package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.working.BuiltIn;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;

/** A function of the language and its operands. */
@SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
record ApplyTerm(Span span, BuiltIn function, Term[] operands) implements Term {

  @Override
  public Value evaluate(Frame frame) {
    if (function == BuiltIn.AND || function == BuiltIn.OR) {
      return logic(frame);
    }
    if (operands.length == 2) {
      Value left = operands[0].evaluate(frame);
      Value right = operands[1].evaluate(frame);
      if (left instanceof Scalar a && right instanceof Scalar b) {
        return binary(a, b, frame);
      }
      return spread(new Value[] {left, right}, frame);
    }
    if (operands.length == 1) {
      Value only = operands[0].evaluate(frame);
      return only instanceof Series ? spread(new Value[] {only}, frame) : unary(only, frame);
    }
    Value[] values = new Value[operands.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = operands[i].evaluate(frame);
    }
    return spread(values, frame);
  }

  private Value spread(Value[] values, Frame frame) {
    if (function == BuiltIn.INTERPOLATE) {
      return Interpolation.of(span, values, operands);
    }
    if (!Elementwise.anySeries(values)) {
      return single(values, frame);
    }
    return Elementwise.map(values, Planner.spans(operands), (v, at) -> single(v, frame));
  }

  private Value single(Value[] values, Frame frame) {
    if (values.length == 1) {
      return unary(values[0], frame);
    }
    if (function == BuiltIn.HYPOT) {
      return Functions.hypot(span, values);
    }
    if (values[0] instanceof Value.Words && function == BuiltIn.SUBTRACT) {
      return Dates.between(values[1], values[0]);
    }
    if (values.length == 2) {
      return binary((Scalar) values[0], (Scalar) values[1], frame);
    }
    return Reductions.of(function, span, List.of(values));
  }

  private Value unary(Value value, Frame frame) {
    if (value instanceof Truth truth) {
      return new Truth(!truth.holds());
    }
    Scalar x = (Scalar) value;
    if (function == BuiltIn.ABS && !x.gradient().isEmpty()) {
      double u = frame.correlations().standardUncertainty(x.gradient());
      if (Math.abs(x.si()) < u) {
        frame.hint(
            new LineProblem(
                span,
                "The sign of this value lies within its uncertainty.",
                "Near zero the size of a value is not spread evenly about it.",
                LineProblem.Severity.HINT));
      }
    }
    Scalar result = Functions.of(function, span, x);
    return x.gradient().isEmpty() ? result : Bending.noted(function, span, x, result, frame);
  }

  private Value binary(Scalar a, Scalar b, Frame frame) {
    return switch (function) {
      case ADD -> Functions.add(span, a, b);
      case SUBTRACT -> Functions.subtract(span, a, b);
      case MULTIPLY -> bent(a, b, Functions.multiply(span, a, b), frame);
      case DIVIDE -> Functions.divide(span, a, b);
      case POWER -> bent(a, b, Functions.power(span, a, b), frame);
      case ATAN2 -> Functions.atan2(span, a, b);
      case HYPOT -> bent(a, b, Functions.hypot(span, new Value[] {a, b}), frame);
      case ROUND, FLOOR, CEIL -> toStep(a, b, frame);
      default -> Reductions.of(function, span, List.of(a, b));
    };
  }

  private Scalar bent(Scalar a, Scalar b, Scalar result, Frame frame) {
    boolean linear =
        a.gradient().isEmpty() && b.gradient().isEmpty()
            || function == BuiltIn.MULTIPLY && (a.gradient().isEmpty() || b.gradient().isEmpty());
    return linear ? result : Bending.noted(function, span, a, b, result, frame);
  }

  private Scalar toStep(Scalar x, Scalar step, Frame frame) {
    Scalar chosen = Functions.toStep(function, span, x, step);
    if (!x.gradient().isEmpty()) {
      double reach = 2 * frame.correlations().standardUncertainty(x.gradient());
      Scalar lower = Functions.toStep(function, span, Scalar.exact(x.si() - reach), step);
      Scalar upper = Functions.toStep(function, span, Scalar.exact(x.si() + reach), step);
      if (lower.si() != upper.si()) {
        frame.hint(
            new LineProblem(
                span,
                "Within the uncertainty of this value another step is possible.",
                "What is chosen by steps is taken as exact; look at the next one too.",
                LineProblem.Severity.HINT));
      }
    }
    return chosen;
  }

  private Value logic(Frame frame) {
    List<Value> values = new ArrayList<>(operands.length);
    for (Term operand : operands) {
      Value value = operand.evaluate(frame);
      if (value instanceof Truth truth && truth.holds() == (function == BuiltIn.OR)) {
        return truth;
      }
      values.add(value);
    }
    Value[] all = values.toArray(new Value[0]);
    if (!Elementwise.anySeries(all)) {
      return all[all.length - 1];
    }
    return Elementwise.map(all, Planner.spans(operands), (v, at) -> both(v));
  }

  private Truth both(Value[] truths) {
    boolean holds = function == BuiltIn.AND;
    for (Value truth : truths) {
      boolean one = ((Truth) truth).holds();
      holds = function == BuiltIn.AND ? holds && one : holds || one;
    }
    return new Truth(holds);
  }
}
