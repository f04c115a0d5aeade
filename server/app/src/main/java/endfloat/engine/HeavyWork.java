package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.working.LineProblem;
import java.util.Arrays;

/**
 * A calculation too slow for an edit, with the values it works on. {@link #run} it in any thread,
 * then hand it to {@link ValueGraph#finished} in the graph's own. An edit that changes its values
 * cancels it.
 */
public final class HeavyWork {
  private final CalculateTerm term;
  private final Value[] values;
  private final String identity;
  private final Frame frame;
  private volatile boolean cancelled;
  private volatile double progress;
  private volatile Value value;
  private volatile LineFailure failure;

  HeavyWork(CalculateTerm term, Value[] values, String identity, Frame frame) {
    this.term = term;
    this.values = values.clone();
    this.identity = identity;
    this.frame = frame;
  }

  /** Name of the calculation. */
  public String calculation() {
    return term.calculation().name();
  }

  /** Fraction done, 0 to 1. */
  public double progress() {
    return progress;
  }

  public void cancel() {
    cancelled = true;
  }

  public boolean isCancelled() {
    return cancelled;
  }

  /** Works it out; returns early once it is cancelled. */
  public void run() {
    Progress told =
        fraction -> {
          progress = fraction;
          return !cancelled;
        };
    try {
      value = new CalculationRun(term, values, identity, frame, told).value();
    } catch (LineFailure e) {
      failure = e;
    }
  }

  boolean isOf(Value[] others, Correlations correlations) {
    return !cancelled && Arrays.equals(values, others) && frame.correlations() == correlations;
  }

  /** The value, or the failure thrown; while it is not done a failure that says so. */
  Value outcome() {
    if (failure != null) {
      throw failure;
    }
    if (value == null) {
      throw LineFailure.working(
          new LineProblem(
              term.span(),
              "The calculation " + calculation() + " is still being worked out.",
              "",
              LineProblem.Severity.HINT));
    }
    return value;
  }
}
