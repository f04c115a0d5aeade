package endfloat.sheet;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;

/** Runs what is put in, one after the other and in order, on the threads of an executor. */
final class Delivery {
  private final Executor executor;
  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private boolean running;

  Delivery(Executor executor) {
    this.executor = executor;
  }

  /** Puts in without running, so that it may be called under a lock. */
  synchronized void add(Runnable call) {
    waiting.add(call);
  }

  /** Sees to it that all put in so far is run; to be called outside any lock. */
  void start() {
    synchronized (this) {
      if (running || waiting.isEmpty()) {
        return;
      }
      running = true;
    }
    executor.execute(this::runAll);
  }

  private void runAll() {
    while (true) {
      Runnable next;
      synchronized (this) {
        next = waiting.poll();
        if (next == null) {
          running = false;
          return;
        }
      }
      try {
        next.run();
      } catch (RuntimeException e) {
        // one listener's fault is not another's
        System.getLogger(Delivery.class.getName())
            .log(System.Logger.Level.ERROR, "a listener of a sheet failed", e);
      }
    }
  }
}
