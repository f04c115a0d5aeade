package endfloat.engine;

import endfloat.working.Span;

/**
 * A checked expression made ready to be evaluated again and again: names are found, operands hang
 * on it. Evaluating it gives a value or throws {@link LineFailure}.
 */
interface Term {
  Span span();

  Value evaluate(Frame frame);

  /** A value that never changes. */
  record Fixed(Span span, Value value) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      return value;
    }
  }

  /** The value of a name. */
  record Named(Span span, Slot slot) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      return frame.of(slot);
    }
  }
}
