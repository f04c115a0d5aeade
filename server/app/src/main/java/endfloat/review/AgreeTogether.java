package endfloat.review;

import endfloat.record.InvestigationRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;

/** Whether the saved figures of many records are those that come out now, several at a time. */
public final class AgreeTogether {
  private AgreeTogether() {}

  /**
   * What became of one record.
   *
   * @param record what was asked about
   * @param report empty where it could not be read
   * @param problem why, else empty
   */
  public record Outcome<T>(T record, Optional<Agree.Report> report, String problem) {}

  /**
   * Compares each record; one that cannot be read keeps nobody else from being compared.
   *
   * @param read called by several threads
   * @param done is told how many are done, by whichever thread did one
   * @return in the order given
   */
  public static <T> List<Outcome<T>> of(
      List<T> records, Function<T, InvestigationRecord> read, boolean exact, IntConsumer done) {
    int threads = Math.max(1, Math.min(records.size(), Runtime.getRuntime().availableProcessors()));
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    AtomicInteger count = new AtomicInteger();
    try {
      List<Future<Outcome<T>>> running = new ArrayList<>();
      for (T record : records) {
        running.add(
            pool.submit(
                () -> {
                  Outcome<T> outcome = one(record, read, exact);
                  done.accept(count.incrementAndGet());
                  return outcome;
                }));
      }
      List<Outcome<T>> outcomes = new ArrayList<>();
      for (Future<Outcome<T>> one : running) {
        outcomes.add(one.get());
      }
      return outcomes;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while records were compared", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a record could not be compared", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static <T> Outcome<T> one(
      T record, Function<T, InvestigationRecord> read, boolean exact) {
    try {
      return new Outcome<>(record, Optional.of(Agree.of(read.apply(record), exact)), "");
    } catch (RuntimeException e) {
      return new Outcome<>(record, Optional.empty(), e.getMessage());
    }
  }
}
