package endfloat.child;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.execution.LocalExecutionControlProvider;

/** Java line by line, for other clients of the protocol, and completion and help for all. */
final class JavaShell {
  private static final List<String> IMPORTS =
      List.of(
          "import java.util.*;",
          "import java.util.stream.*;",
          "import endfloat.quantities.*;",
          "import endfloat.formulas.*;",
          "import tech.tablesaw.api.*;",
          "import javax.measure.quantity.*;");

  private final JShell shell;
  private volatile boolean stopped;

  JavaShell() {
    // Local: the code runs in this process, which exists for nothing else.
    shell =
        JShell.builder()
            .executionEngine(new LocalExecutionControlProvider(), Map.of())
            .out(System.out)
            .err(System.err)
            .build();
    for (String entry :
        System.getProperty("java.class.path").split(java.io.File.pathSeparator, -1)) {
      shell.addToClasspath(entry);
    }
    IMPORTS.forEach(shell::eval);
  }

  /** The value of the last snippet as Java prints it; empty for none. */
  Optional<String> run(String code) throws ShellFailureException {
    stopped = false;
    String rest = code;
    String value = null;
    while (!rest.isBlank()) {
      CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!info.completeness().isComplete()) {
        throw new ShellFailureException("Incomplete", "The code ends too early.", List.of());
      }
      if (stopped) {
        throw new ShellFailureException("Interrupted", "The code was interrupted.", List.of());
      }
      for (SnippetEvent event : shell.eval(info.source())) {
        if (event.causeSnippet() == null) {
          value = taken(event);
        }
      }
      if (stopped) {
        throw new ShellFailureException("Interrupted", "The code was interrupted.", List.of());
      }
      rest = info.remaining();
    }
    return Optional.ofNullable(value).filter(v -> !v.isEmpty());
  }

  private String taken(SnippetEvent event) throws ShellFailureException {
    if (event.status() == Snippet.Status.REJECTED) {
      List<String> found = new ArrayList<>();
      shell
          .diagnostics(event.snippet())
          .map((Diag d) -> d.getMessage(java.util.Locale.ROOT))
          .forEach(found::add);
      throw new ShellFailureException("CompileError", String.join("\n", found), List.of());
    }
    JShellException thrown = event.exception();
    if (thrown instanceof EvalException e) {
      throw new ShellFailureException(
          e.getExceptionClassName(),
          e.getMessage() == null ? "" : e.getMessage(),
          java.util.Arrays.stream(e.getStackTrace()).map(Object::toString).toList());
    }
    if (thrown instanceof UnresolvedReferenceException) {
      throw new ShellFailureException("Unresolved", "Not all of it is defined.", List.of());
    }
    return event.value();
  }

  void stop() {
    stopped = true;
    shell.stop();
  }

  String completeness(String code) {
    Completeness found = shell.sourceCodeAnalysis().analyzeCompletion(code).completeness();
    return switch (found) {
      case COMPLETE, COMPLETE_WITH_SEMI, EMPTY, CONSIDERED_INCOMPLETE -> "complete";
      case DEFINITELY_INCOMPLETE -> "incomplete";
      case UNKNOWN -> "invalid";
    };
  }

  /** Ways to go on from a place. */
  record Completions(int from, List<String> texts) {}

  Completions complete(String code, int at) {
    int[] anchor = {at};
    List<String> texts =
        shell.sourceCodeAnalysis().completionSuggestions(code, at, anchor).stream()
            .map(SourceCodeAnalysis.Suggestion::continuation)
            .distinct()
            .toList();
    return new Completions(anchor[0], texts);
  }

  List<String> help(String code, int at) {
    return shell.sourceCodeAnalysis().documentation(code, at, false).stream()
        .map(SourceCodeAnalysis.Documentation::signature)
        .toList();
  }

  /** Why code gave nothing. */
  static final class ShellFailureException extends Exception {
    private static final long serialVersionUID = 1L;
    private final String name;
    private final transient List<String> trace;

    ShellFailureException(String name, String message, List<String> trace) {
      super(message);
      this.name = name;
      this.trace = trace;
    }

    String name() {
      return name;
    }

    List<String> trace() {
      return trace;
    }
  }
}
