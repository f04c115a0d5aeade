package endfloat.http.live;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Draws the charts of a sheet after its edits, once for all that came meanwhile. It holds the lock
 * of the sheet, so it gives way to whoever wants it and begins again.
 */
final class ChartWork {
  private final Executor runner;
  private final Drawing drawing;
  private final AtomicBoolean asked = new AtomicBoolean();
  private final AtomicInteger inARush = new AtomicInteger();

  /** Draws under the lock of the sheet. */
  @FunctionalInterface
  interface Drawing {
    /**
     * @param between to be called over and over; what it throws must be let through
     */
    void draw(Runnable between);
  }

  /** Somebody wants the sheet. */
  private static final class GivesWay extends RuntimeException {
    private static final long serialVersionUID = 1L;

    GivesWay() {
      super("", null, false, false);
    }
  }

  ChartWork(Executor runner, Drawing drawing) {
    this.runner = runner;
    this.drawing = drawing;
  }

  /** Somebody is about to take the lock of the sheet. */
  void giveWay() {
    inARush.incrementAndGet();
  }

  /** He has it. */
  void hasGivenWay() {
    inARush.decrementAndGet();
  }

  /** Charts are behind. */
  void ask() {
    if (asked.compareAndSet(false, true)) {
      runner.execute(this::run);
    }
  }

  private void run() {
    asked.set(false);
    try {
      drawing.draw(this::between);
    } catch (GivesWay e) {
      ask();
    }
  }

  private void between() {
    if (inARush.get() > 0) {
      throw new GivesWay();
    }
  }
}
