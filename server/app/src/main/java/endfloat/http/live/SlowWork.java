package endfloat.http.live;

import endfloat.engine.HeavyWork;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Runs the heavy calculations of a sheet off its lock, and says how far they are. */
final class SlowWork {
  private static final long TELL_EVERY_NANOS = TimeUnit.MILLISECONDS.toNanos(200);

  /** One that waits for another process takes no thread of those that reckon. */
  private static final Executor ELSEWHERE =
      work -> {
        Thread thread = new Thread(work, "java clause");
        thread.setDaemon(true);
        thread.start();
      };

  private final Executor runner;
  private final Map<String, HeavyWork> running = new ConcurrentHashMap<>();
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
    for (HeavyWork work : works) {
      running.put(work.name(), work);
      (work.runsElsewhere() ? ELSEWHERE : runner).execute(() -> run(work));
    }
  }

  /** Ends the work of a name at the user's word; it is over at once for all who wait for it. */
  void stop(String name) {
    HeavyWork work = running.get(name);
    if (work != null && work.stop()) {
      done.accept(work);
    }
  }

  private void run(HeavyWork work) {
    if (work.isCancelled()) {
      running.remove(work.name(), work);
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
    running.remove(work.name(), work);
    if (!work.isCancelled() && !work.isStopped()) {
      done.accept(work);
    }
  }
}
