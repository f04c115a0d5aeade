package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.working.LineProblem;
import java.util.Arrays;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A calculation too slow for an edit, with the values it works on. {@link #run} it in any thread,
 * then hand it to {@link ValueGraph#finished} in the graph's own. An edit that changes its values
 * cancels it.
 */
public final class HeavyWork {
  private static final Logger LOG = Logger.getLogger(HeavyWork.class.getName());

  private final SlowTerm term;
  private final Value[] values;
  private final String name;
  private final String identity;
  private final Frame frame;
  private volatile boolean cancelled;
  private volatile boolean stopped;
  private volatile double progress;
  private volatile Value value;
  private volatile LineFailure failure;

  HeavyWork(String name, SlowTerm term, Value[] values, String identity, Frame frame) {
    this.name = name;
    this.term = term;
    this.values = values.clone();
    this.identity = identity;
    this.frame = frame;
  }

  /** Name of the value that asked for it. */
  public String name() {
    return name;
  }

  /** What it is, in words: {@code calculation thin_plate}. */
  public String called() {
    return term.called();
  }

  /** Whether another process does the work. */
  public boolean runsElsewhere() {
    return term.runsElsewhere();
  }

  /** Fraction done, 0 to 1. */
  public double progress() {
    return progress;
  }

  public void cancel() {
    cancelled = true;
  }

  /**
   * Ends it at the user's word: unlike a cancelled one it says so in place of its value, and at
   * once, however long the work takes to end.
   *
   * @return whether it was going on
   */
  public synchronized boolean stop() {
    if (!isOpen()) {
      return false;
    }
    stopped = true;
    failure = new LineFailure(term.span(), "The run was stopped.", "Run it again when it suits.");
    return true;
  }

  public boolean isStopped() {
    return stopped;
  }

  public boolean isCancelled() {
    return cancelled;
  }

  /** Works it out; returns early once it is cancelled. */
  public void run() {
    run(() -> {});
  }

  /**
   * Works it out; returns early once it is cancelled.
   *
   * @param furtherOn called in this thread whenever {@link #progress} has grown
   */
  public void run(Runnable furtherOn) {
    Progress told =
        fraction -> {
          progress = fraction;
          furtherOn.run();
          return !cancelled && !stopped;
        };
    try {
      settle(term.run(values, identity, frame, told), null);
    } catch (LineFailure e) {
      settle(null, e);
    } catch (RuntimeException e) {
      // a fault of the program: the sheet must not wait for it for ever
      LOG.log(Level.SEVERE, "the " + called() + " broke off", e);
      settle(
          null,
          new LineFailure(
              term.span(),
              "The " + called() + " broke off by a fault of its own.",
              "Try other values, and report this."));
    }
  }

  private synchronized void settle(Value found, LineFailure why) {
    if (!stopped) {
      value = found;
      failure = why;
    }
  }

  boolean isOpen() {
    return !cancelled && value == null && failure == null;
  }

  boolean isOf(Value[] others, Correlations correlations) {
    return !cancelled
        && Arrays.equals(values, others)
        && frame.correlations().pairs().equals(correlations.pairs());
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
              "The " + called() + " is still being worked out.",
              "",
              LineProblem.Severity.HINT));
    }
    return value;
  }
}
