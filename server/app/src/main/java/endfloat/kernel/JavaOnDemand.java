package endfloat.kernel;

import endfloat.definition.Progress;
import endfloat.engine.CellRunner;
import endfloat.engine.Give;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The runner of a program, made when a java clause first asks for it: most records have none. */
public final class JavaOnDemand implements CellRunner, AutoCloseable {
  private final Path folder;
  private final KernelLimits limits;
  private final boolean keepsSpare;
  private final List<String> allowed = new ArrayList<>();
  private JavaRuns runs;

  /**
   * @param folder of this user's state on this machine
   * @param keepsSpare whether the next process is started before it is needed
   */
  public JavaOnDemand(Path folder, KernelLimits limits, boolean keepsSpare) {
    this.folder = folder;
    this.limits = limits;
    this.keepsSpare = keepsSpare;
  }

  /** Allows sources by their hash for as long as this program runs. */
  public synchronized void allow(List<String> hashes) {
    allowed.addAll(hashes);
    if (runs != null) {
      hashes.forEach(runs.approvals()::allow);
    }
  }

  private synchronized JavaRuns runs() {
    if (runs == null) {
      Approvals approvals = new Approvals(folder);
      allowed.forEach(approvals::allow);
      runs = new JavaRuns(approvals, limits, keepsSpare);
    }
    return runs;
  }

  @Override
  public Optional<Refusal> refusal(String source) {
    return runs().refusal(source);
  }

  @Override
  public Outcome run(Job job, Progress progress) {
    return runs().run(job, progress);
  }

  @Override
  public void approve(String source) {
    runs().approve(source);
  }

  @Override
  public String hash(String source) {
    return Approvals.hash(source);
  }

  @Override
  public String limits() {
    return limits.words();
  }

  @Override
  public Help help(String source, int offset, List<Read> reads, List<Give> gives) {
    return runs().help(source, offset, reads, gives);
  }

  @Override
  public synchronized void close() {
    if (runs != null) {
      runs.close();
    }
  }
}
