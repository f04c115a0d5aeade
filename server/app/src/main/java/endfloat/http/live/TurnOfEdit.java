package endfloat.http.live;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Runs what an edit leads to on the thread of the edit, but only after its author has been told
 * that it is kept: no other thread has to wake up, and the acknowledgement never waits for figures.
 */
final class TurnOfEdit implements Executor {
  private final ThreadLocal<List<Runnable>> later = new ThreadLocal<>();

  /** Runs {@code edit}, then {@code acknowledge} on what it gives, then what was put off. */
  <T> void run(Supplier<T> edit, Consumer<T> acknowledge) {
    List<Runnable> putOff = new ArrayList<>();
    later.set(putOff);
    try {
      acknowledge.accept(edit.get());
    } finally {
      later.remove();
      putOff.forEach(Runnable::run);
    }
  }

  @Override
  public void execute(Runnable call) {
    List<Runnable> putOff = later.get();
    if (putOff == null) {
      call.run();
    } else {
      putOff.add(call);
    }
  }
}
