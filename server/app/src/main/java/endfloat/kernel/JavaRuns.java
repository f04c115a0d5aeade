package endfloat.kernel;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.definition.Progress;
import endfloat.engine.CellRunner;
import endfloat.engine.Give;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Runs the java clauses of records: approved ones only, each in a process of its own kind. */
public final class JavaRuns implements CellRunner, AutoCloseable {
  static final ObjectMapper JSON = new ObjectMapper();

  private static final long NANOS_A_MILLISECOND = TimeUnit.MILLISECONDS.toNanos(1);

  /** Part of the time limit that may go into running a source again for its slopes. */
  private static final int TRIALS = 2;

  /** A process that dies at rest may not have ended yet when it is taken for a run. */
  private static final int MOST_KERNELS = 3;

  private static final int EXIT_OUT_OF_MEMORY = 3;

  private final Approvals approvals;
  private final KernelLimits limits;
  private final Kernels kernels;

  /**
   * @param keepsSpare whether the next process is started before it is needed
   */
  public JavaRuns(Approvals approvals, KernelLimits limits, boolean keepsSpare) {
    this.approvals = approvals;
    this.limits = limits;
    this.kernels = new Kernels(limits, keepsSpare);
  }

  public Approvals approvals() {
    return approvals;
  }

  @Override
  public void approve(String source) {
    approvals.approve(source);
  }

  @Override
  public String hash(String source) {
    return Approvals.hash(source);
  }

  @Override
  public String limits() {
    return limits.words();
  }

  /** A source that is looked at may soon be run. */
  @Override
  public Optional<Refusal> refusal(String source) {
    kernels.prepare();
    return approvals.isApproved(source)
        ? Optional.empty()
        : Optional.of(
            new Refusal(
                "This Java has not been approved on this machine, so it is not run",
                "Read it, then press Run"));
  }

  @Override
  public Outcome run(Job job, Progress progress) {
    if (!approvals.isApproved(job.source())) {
      throw failure("This Java has not been approved on this machine.", "");
    }
    for (int i = 1; i < MOST_KERNELS; i++) {
      Optional<Outcome> outcome = tried(job, progress, false);
      if (outcome.isPresent()) {
        return outcome.get();
      }
    }
    return tried(job, progress, true).orElseThrow();
  }

  /**
   * A run in one process; empty where that was dying already and has not taken the source up.
   *
   * @param last whether that is told as the end of the run
   */
  private Optional<Outcome> tried(Job job, Progress progress, boolean last) {
    KernelProcess kernel;
    try {
      kernel = kernels.take();
    } catch (KernelException e) {
      throw failure(e.getMessage(), "See that a JDK, version 17 or later, runs Endfloat.");
    }
    boolean usable = false;
    try {
      long begun = System.nanoTime();
      Heard heard = new Heard(progress);
      long forTrials = TimeUnit.SECONDS.toMillis(limits.seconds()) / TRIALS;
      KernelProcess.End end =
          kernel.execute(
              job.source(),
              ClauseJson.metadata(job, forTrials),
              limits.seconds(),
              heard::take,
              heard::goesOn);
      if (end == KernelProcess.End.NOT_BEGUN && !last) {
        return Optional.empty();
      }
      if (end != KernelProcess.End.REPLIED) {
        throw ended(end, kernel);
      }
      usable = !heard.leftThreads();
      double took = (System.nanoTime() - begun) / (double) NANOS_A_MILLISECOND;
      return Optional.of(outcome(heard, took));
    } finally {
      kernels.giveBack(kernel, usable);
    }
  }

  private static Outcome outcome(Heard heard, double milliseconds) {
    if (heard.result().isEmpty()) {
      throw new CellFailureException(heard.problems());
    }
    JsonNode result = heard.result().get();
    List<Shown> shown = new ArrayList<>(heard.shown());
    shown.addAll(ClauseJson.shown(result));
    return new Outcome(
        ClauseJson.given(result), ClauseJson.trials(result), List.copyOf(shown), milliseconds);
  }

  private CellFailureException ended(KernelProcess.End end, KernelProcess kernel) {
    return switch (end) {
      case STOPPED -> failure("The run was stopped.", "Run it again when it suits.");
      case TOO_LONG ->
          failure(
              "The run took longer than the " + limits.seconds() + " s that it may take.",
              "Take less work, or start Endfloat with a longer --java-time.");
      case HUNG ->
          failure(
              "The process of the run no longer answered, and was ended.",
              "Nothing of the record is lost. Run it again.");
      default -> died(kernel.exit());
    };
  }

  private CellFailureException died(int exit) {
    return exit == EXIT_OUT_OF_MEMORY
        ? failure(
            "The run needed more memory than the "
                + limits.megabytes()
                + " MB that it may take, or ended itself with the code 3.",
            "Hold less at a time, or start Endfloat with more --java-memory.")
        : failure(
            "The process of the run has ended" + (exit < 0 ? "." : " with the code " + exit + "."),
            "Nothing of the record is lost. Leave out what ends it, and run it again.");
  }

  /** Completion and signatures by a kernel that rests; nothing of the source is run. */
  @Override
  public Help help(String source, int offset, List<Read> reads, List<Give> gives) {
    KernelProcess kernel;
    try {
      kernel = kernels.take();
    } catch (KernelException e) {
      return new Help(offset, List.of(), List.of());
    }
    SourceHelp help = new SourceHelp(kernel);
    try {
      return help.at(source, offset, reads, gives);
    } finally {
      kernels.giveBack(kernel, help.isAnswered());
    }
  }

  static CellFailureException failure(String message, String wayOut) {
    return new CellFailureException(List.of(LineProblem.error(new Span(1, 1, 1), message, wayOut)));
  }

  /**
   * Has a process ready, where one is wanted before it is needed.
   *
   * @return done when it is warm
   */
  public CompletableFuture<?> prepare() {
    return kernels.prepare();
  }

  Kernels kernels() {
    return kernels;
  }

  static Optional<JsonNode> json(Object text) {
    try {
      return text == null ? Optional.empty() : Optional.of(JSON.readTree(text.toString()));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    kernels.close();
  }
}
