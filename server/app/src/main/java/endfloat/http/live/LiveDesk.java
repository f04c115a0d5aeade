package endfloat.http.live;

import endfloat.record.RecordId;
import endfloat.record.RecordPlace;
import endfloat.record.Shelf;
import endfloat.sheet.OpenSheet;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The sheets that are open. A sheet is opened when it is first asked for and stays open while a
 * page shows it; the last page's leaving saves and closes it.
 */
public final class LiveDesk implements AutoCloseable {
  private static final Logger LOG = Logger.getLogger(LiveDesk.class.getName());

  private static final Duration LINGER = Duration.ofSeconds(10);

  private final Shelf shelf;
  private final ScheduledExecutorService timer;
  private final ExecutorService slow;
  private final ExecutorService charts;
  private final Map<RecordId, LiveSheet> open = new HashMap<>();

  private final Duration linger;

  private LiveDesk(
      Shelf shelf,
      Duration linger,
      ScheduledExecutorService timer,
      ExecutorService slow,
      ExecutorService charts) {
    this.shelf = shelf;
    this.linger = linger;
    this.timer = timer;
    this.slow = slow;
    this.charts = charts;
  }

  /** For the records of a shelf; none is open yet. */
  public static LiveDesk of(Shelf shelf) {
    return of(shelf, LINGER);
  }

  /**
   * @param linger for which a sheet stays open that no page shows and nothing is worked out for
   */
  static LiveDesk of(Shelf shelf, Duration linger) {
    return new LiveDesk(
        shelf,
        linger,
        Executors.newSingleThreadScheduledExecutor(work -> thread(work, "saver")),
        Executors.newFixedThreadPool(slowThreads(), work -> thread(work, "slow work")),
        Executors.newSingleThreadExecutor(work -> thread(work, "charts")));
  }

  /** One processor is left for edits. */
  private static int slowThreads() {
    return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
  }

  private static Thread thread(Runnable work, String name) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    return thread;
  }

  /** Does something over and over while the desk is open. */
  void everyMinute(Runnable work) {
    timer.scheduleWithFixedDelay(
        () -> {
          try {
            work.run();
          } catch (RuntimeException e) {
            LOG.log(Level.FINE, "once in a minute", e);
          }
        },
        1,
        1,
        TimeUnit.MINUTES);
  }

  /** Something done with an open sheet. */
  @FunctionalInterface
  public interface Use<T> {
    T of(LiveSheet sheet) throws IOException;
  }

  /** Does something with a sheet, which is opened for it where it is not. */
  public synchronized <T> T with(RecordId id, Use<T> use) throws IOException {
    LiveSheet sheet = open.get(id);
    if (sheet == null) {
      sheet = opened(id);
      open.put(id, sheet);
    }
    try {
      return use.of(sheet);
    } finally {
      closeLater(id, sheet);
    }
  }

  private LiveSheet opened(RecordId id) throws IOException {
    RecordPlace place = shelf.place(id);
    return LiveSheet.open(
        listening ->
            OpenSheet.open(shelf.files(), place, Clock.systemUTC(), listening, Optional.of(timer)),
        slow,
        charts);
  }

  LiveSheet join(RecordId id, Page page) throws IOException {
    return with(
        id,
        sheet -> {
          sheet.join(page);
          return sheet;
        });
  }

  synchronized void leave(RecordId id, LiveSheet sheet, Page page) {
    sheet.leave(page);
    closeLater(id, sheet);
  }

  private void closeLater(RecordId id, LiveSheet sheet) {
    if (!sheet.isWatched() && !timer.isShutdown()) {
      timer.schedule(() -> closeUnwatched(id, sheet), linger.toMillis(), TimeUnit.MILLISECONDS);
    }
  }

  private synchronized void closeUnwatched(RecordId id, LiveSheet sheet) {
    if (sheet.isWorking()) {
      closeLater(id, sheet);
      return;
    }
    if (sheet.isWatched() || !open.remove(id, sheet)) {
      return;
    }
    try {
      sheet.close();
    } catch (IOException e) {
      // The edits are in the log beside the record; the next opening writes the file.
      LOG.log(Level.WARNING, "the file of " + id + " could not be written", e);
    }
  }

  @Override
  public synchronized void close() {
    Map<RecordId, LiveSheet> all = Map.copyOf(open);
    open.clear();
    all.forEach(
        (id, sheet) -> {
          try {
            sheet.close();
          } catch (IOException e) {
            LOG.log(Level.WARNING, "the file of " + id + " could not be written", e);
          }
        });
    timer.shutdown();
    slow.shutdownNow();
    charts.shutdownNow();
  }
}
