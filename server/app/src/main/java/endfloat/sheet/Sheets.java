package endfloat.sheet;

import endfloat.record.RecordException;
import endfloat.record.RecordException.Reason;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import java.io.IOException;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;

/** The open sheets of a shelf: each record has one, whoever asks. */
public final class Sheets implements AutoCloseable {
  private final Shelf shelf;
  private final Map<RecordId, OpenSheet> open = new HashMap<>();
  private final ScheduledExecutorService timer;
  private final ExecutorService listening;

  public Sheets(Shelf shelf) {
    this.shelf = shelf;
    ThreadFactory daemons =
        work -> {
          Thread thread = new Thread(work, "sheets");
          thread.setDaemon(true);
          return thread;
        };
    this.timer = Executors.newScheduledThreadPool(1, daemons);
    this.listening = Executors.newCachedThreadPool(daemons);
  }

  public Shelf shelf() {
    return shelf;
  }

  /**
   * The sheet of a record, opened where it is not open yet.
   *
   * @throws RecordException if there is no such record or it cannot be read
   */
  public synchronized OpenSheet open(RecordId id) {
    OpenSheet sheet = open.get(id);
    if (sheet == null) {
      try {
        sheet =
            OpenSheet.open(
                shelf.files(), shelf.place(id), Clock.systemUTC(), listening, Optional.of(timer));
      } catch (IOException e) {
        throw new RecordException(
            Reason.DISK, "the record " + id.text() + " cannot be opened: " + e.getMessage(), e);
      }
      open.put(id, sheet);
    }
    return sheet;
  }

  /** Saves and closes every sheet. */
  @Override
  public synchronized void close() throws IOException {
    IOException first = null;
    for (OpenSheet sheet : open.values()) {
      try {
        sheet.close();
      } catch (IOException e) {
        first = first == null ? e : first;
      }
    }
    open.clear();
    timer.shutdownNow();
    listening.shutdown();
    if (first != null) {
      throw first;
    }
  }
}
