package endfloat.http.live;

import endfloat.engine.HeavyWork;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Runs the heavy calculations of a sheet off its lock, and says how far they are. */
final class SlowWork {
  private static final long TELL_EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

  private final Executor runner;
  private final Consumer<HeavyWork> furtherOn;
  private final Consumer<HeavyWork> done;

  /**
   * @param furtherOn told of progress five times a second at most
   * @param done told when the work is over, unless it was cancelled
   */
  SlowWork(Executor runner, Consumer<HeavyWork> furtherOn, Consumer<HeavyWork> done) {
    this.runner = runner;
    this.furtherOn = furtherOn;
    this.done = done;
  }

  void begin(List<HeavyWork> works) {
    works.forEach(work -> runner.execute(() -> run(work)));
  }

  private void run(HeavyWork work) {
    if (work.isCancelled()) {
      return;
    }
    long[] told = {System.nanoTime()};
    work.run(
        () -> {
          long now = System.nanoTime();
          if (now - told[0] >= TELL_EVERY_NANOS && !work.isCancelled()) {
            told[0] = now;
            furtherOn.accept(work);
          }
        });
    if (!work.isCancelled()) {
      done.accept(work);
    }
  }
}
