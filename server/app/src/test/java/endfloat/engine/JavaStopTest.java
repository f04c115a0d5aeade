package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import endfloat.definition.Progress;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A run that is stopped is over at once for the sheet, however long its process takes to end. */
class JavaStopTest {
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch ends = new CountDownLatch(1);

  /** What runs hears of nothing until it has ended by itself, and gives a value then. */
  private final CellRunner deaf =
      new CellRunner() {
        @Override
        public Optional<Refusal> refusal(String source) {
          return Optional.empty();
        }

        @Override
        public Outcome run(Job job, Progress progress) {
          begun.countDown();
          try {
            assertTrue(ends.await(60, TimeUnit.SECONDS));
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
          double[] one = {1};
          return new Outcome(
              List.of(new Given(one, List.of(), List.of(), "", false, List.of())),
              List.of(),
              List.of(),
              1);
        }
      };

  @Test
  void aStopWaitsForNothingAndWhatTheRunGivesAfterwardsIsDropped() throws Exception {
    ValueGraph graph = new ValueGraph(Catalogue.library(), deaf);
    graph.leaveHeavyWork();
    graph.update(new Clause.Java("c1", "1", "out [mm]", "deaf"));
    HeavyWork work = graph.takeHeavyWork().get(0);
    CompletableFuture<Void> running = CompletableFuture.runAsync(work::run);
    assertTrue(begun.await(60, TimeUnit.SECONDS));
    assertTrue(work.stop());
    graph.finished(work);
    assertFalse(running.isDone(), "the run goes on");
    assertEquals("The run was stopped.", graph.problems("c1").get(0).problem().message());
    assertFalse(graph.isWorking());
    ends.countDown();
    running.get(60, TimeUnit.SECONDS);
    graph.finished(work);
    assertEquals("The run was stopped.", graph.problems("c1").get(0).problem().message());
    assertFalse(work.stop(), "it is over");
    graph.again("c1");
    graph.takeHeavyWork().get(0).run();
  }
}
