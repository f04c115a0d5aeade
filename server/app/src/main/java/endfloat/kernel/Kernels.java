package endfloat.kernel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;

/**
 * The kernels of this program: those at work, those that rest, and a warmed spare, so that neither
 * a first run nor one after a kernel has died waits for a process to start. Safe for threads.
 */
final class Kernels implements AutoCloseable {
  private static final int MOST_RESTING = 2;
  private static final Executor BACKGROUND =
      work -> {
        Thread thread = new Thread(work, "kernel start");
        thread.setDaemon(true);
        thread.start();
      };

  private final KernelLimits limits;
  private final boolean keepsSpare;
  private final Deque<KernelProcess> resting = new ArrayDeque<>();
  private final Set<KernelProcess> all = new HashSet<>();
  private Spare spare;
  private boolean closed;

  /** One that is coming; whoever needs it before it is warm takes it as it is. */
  private static final class Spare {
    private volatile boolean wanted;
    private CompletableFuture<KernelProcess> coming;
  }

  /**
   * @param keepsSpare whether a next one is started before it is needed
   */
  Kernels(KernelLimits limits, boolean keepsSpare) {
    this.limits = limits;
    this.keepsSpare = keepsSpare;
  }

  /**
   * Starts a spare in the background where there is none and nothing rests.
   *
   * @return done when a kernel is warm
   */
  synchronized CompletableFuture<?> prepare() {
    if (keepsSpare && spare == null && resting.isEmpty() && !closed) {
      startSpare();
    }
    return spare == null ? CompletableFuture.completedFuture(null) : spare.coming;
  }

  private void startSpare() {
    Spare next = new Spare();
    next.coming = CompletableFuture.supplyAsync(() -> started(next), BACKGROUND);
    spare = next;
  }

  private KernelProcess started(Spare next) {
    KernelProcess kernel = KernelProcess.start(limits);
    synchronized (this) {
      if (closed) {
        kernel.close();
        throw new KernelException("Endfloat is being closed.", null);
      }
      all.add(kernel);
    }
    // a command has one run to make, which is sooner done than warmed up for
    if (keepsSpare) {
      WarmUp.of(kernel, () -> !next.wanted);
    }
    return kernel;
  }

  /**
   * One to work with; it is to be given back.
   *
   * @throws KernelException if none can be started
   */
  KernelProcess take() {
    while (true) {
      CompletableFuture<KernelProcess> coming = null;
      KernelProcess rested = null;
      synchronized (this) {
        rested = resting.poll();
        if (rested == null) {
          if (spare == null) {
            startSpare();
          }
          spare.wanted = true;
          coming = spare.coming;
          spare = null;
        }
      }
      KernelProcess kernel = rested != null ? rested : joined(coming);
      if (kernel.isAlive()) {
        return kernel;
      }
      drop(kernel);
    }
  }

  private static KernelProcess joined(CompletableFuture<KernelProcess> coming) {
    try {
      return coming.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof KernelException told) {
        throw told;
      }
      throw e;
    }
  }

  /**
   * Gives one back.
   *
   * @param usable whether the next run may have it
   */
  void giveBack(KernelProcess kernel, boolean usable) {
    boolean kept = false;
    synchronized (this) {
      if (usable && kernel.isAlive() && !closed && resting.size() < MOST_RESTING) {
        resting.push(kernel);
        kept = true;
      }
      if (keepsSpare && spare == null && !closed) {
        startSpare();
      }
    }
    if (!kept) {
      drop(kernel);
    }
  }

  private void drop(KernelProcess kernel) {
    synchronized (this) {
      all.remove(kernel);
    }
    kernel.close();
  }

  @Override
  public void close() {
    Set<KernelProcess> ending;
    synchronized (this) {
      closed = true;
      ending = new HashSet<>(all);
      all.clear();
      resting.clear();
    }
    ending.forEach(KernelProcess::kill);
  }
}
