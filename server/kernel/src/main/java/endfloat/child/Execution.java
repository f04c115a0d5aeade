package endfloat.child;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.messages.MessageContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs what requests ask for: a clause as one class, any other code line by line. */
final class Execution {
  /** The result of a clause. */
  static final String GIVEN = "application/vnd.endfloat.given+json";

  /** Whether a clause has left threads behind, so that its process is not to be used again. */
  static final String LEFT_THREADS = "leftThreads";

  private static final int STOPS = 100;
  private static final long BETWEEN_STOPS_MILLISECONDS = 10;
  private static final Gson GSON = new GsonBuilder().serializeNulls().create();

  private final Outputs outputs;
  private final CapturedStreams streams;
  private final ClauseCompiler compiler = new ClauseCompiler();
  private volatile Thread clause;
  private volatile boolean interrupted;
  private volatile boolean inShell;
  private JavaShell shell;
  private int count;

  Execution(Outputs outputs, CapturedStreams streams) {
    this.outputs = outputs;
    this.streams = streams;
  }

  /** Why code gave nothing. */
  static final class FailedException extends Exception {
    private static final long serialVersionUID = 1L;
    private final String name;
    private final transient List<String> trace;
    private final transient List<Problem> problems;

    FailedException(String name, String message, List<String> trace, List<Problem> problems) {
      super(message);
      this.name = name;
      this.trace = trace;
      this.problems = problems;
    }

    String name() {
      return name;
    }

    List<String> trace() {
      return trace;
    }

    List<Problem> problems() {
      return problems;
    }
  }

  int count() {
    return count;
  }

  int countOn() {
    return ++count;
  }

  /** The shell, made when it is first asked for: it takes a tenth of a second. */
  synchronized JavaShell shell() {
    if (shell == null) {
      shell = new JavaShell();
    }
    return shell;
  }

  Optional<DisplayData> run(String code, Map<String, Object> metadata, MessageContext request)
      throws FailedException {
    outputs.of(request);
    streams.begin();
    interrupted = false;
    try {
      Optional<Program> program = Program.of(code, metadata);
      return program.isPresent() ? Optional.of(clause(program.get(), request)) : line(code);
    } finally {
      streams.flush();
    }
  }

  private Optional<DisplayData> line(String code) throws FailedException {
    inShell = true;
    try {
      return shell().run(code).map(DisplayData::new);
    } catch (JavaShell.ShellFailureException e) {
      throw new FailedException(e.name(), e.getMessage(), e.trace(), List.of());
    } finally {
      inShell = false;
    }
  }

  private DisplayData clause(Program program, MessageContext request) throws FailedException {
    Map<String, byte[]> classes;
    try {
      classes = compiler.compiled(ClauseText.of(program));
    } catch (ClauseCompiler.RefusedException e) {
      throw new FailedException("CompileError", e.getMessage(), List.of(), e.problems());
    }
    Map<String, Object> result = ranInItsThread(program, classes, request);
    DisplayData data = new DisplayData("done");
    data.putData(GIVEN, GSON.toJson(result));
    return data;
  }

  /** In a group of its own, so that it is known which threads a clause leaves behind. */
  private Map<String, Object> ranInItsThread(
      Program program, Map<String, byte[]> classes, MessageContext request) throws FailedException {
    ThreadGroup group = new ThreadGroup("clause");
    ClauseThread thread =
        new ClauseThread(
            group, program, classes, new PublishedOutputs(outputs, request), streams::silence);
    clause = thread;
    thread.start();
    try {
      thread.join();
    } catch (InterruptedException e) {
      throw new FailedException("Interrupted", "The run was interrupted.", List.of(), List.of());
    } finally {
      clause = null;
    }
    if (interrupted) {
      throw new FailedException("Interrupted", "The run was interrupted.", List.of(), List.of());
    }
    if (thread.thrown() != null) {
      Problem problem = Failures.problem(thread.thrown());
      throw new FailedException(
          thread.thrown().getClass().getName(), problem.message(), List.of(), List.of(problem));
    }
    Map<String, Object> result = thread.result();
    result.put(LEFT_THREADS, group.activeCount() > 0);
    return result;
  }

  /** From another thread than that which runs. A clause that will not end is ended from outside. */
  void interrupt() {
    interrupted = true;
    Thread running = clause;
    if (running != null) {
      running.interrupt();
    }
    // Again and again: between two snippets there is nothing to stop, and one may catch it.
    for (int i = 0; i < STOPS && inShell; i++) {
      shell.stop();
      pause();
    }
  }

  private static void pause() {
    try {
      Thread.sleep(BETWEEN_STOPS_MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static final class ClauseThread extends Thread {
    private final Program program;
    private final Map<String, byte[]> classes;
    private final PublishedOutputs shown;
    private final Runnable beforeTrials;
    private Map<String, Object> result;
    private Throwable thrown;

    ClauseThread(
        ThreadGroup group,
        Program program,
        Map<String, byte[]> classes,
        PublishedOutputs shown,
        Runnable beforeTrials) {
      super(group, "clause");
      this.program = program;
      this.classes = classes;
      this.shown = shown;
      this.beforeTrials = beforeTrials;
    }

    @Override
    public void run() {
      try {
        result = new ClauseRun(program, classes).run(shown, beforeTrials);
      } catch (OutOfMemoryError e) {
        // The process ends itself by the option it was started with.
        throw e;
      } catch (Throwable e) {
        thrown = e;
      }
    }

    Map<String, Object> result() {
      return result;
    }

    Throwable thrown() {
      return thrown;
    }
  }
}
