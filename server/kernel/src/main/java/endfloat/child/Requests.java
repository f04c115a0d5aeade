package endfloat.child;

import com.google.gson.Gson;
import io.github.spencerpark.jupyter.kernel.LanguageInfo;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishStatus;
import io.github.spencerpark.jupyter.messages.reply.CommInfoReply;
import io.github.spencerpark.jupyter.messages.reply.CompleteReply;
import io.github.spencerpark.jupyter.messages.reply.ErrorReply;
import io.github.spencerpark.jupyter.messages.reply.ExecuteReply;
import io.github.spencerpark.jupyter.messages.reply.HistoryReply;
import io.github.spencerpark.jupyter.messages.reply.InspectReply;
import io.github.spencerpark.jupyter.messages.reply.InterruptReply;
import io.github.spencerpark.jupyter.messages.reply.IsCompleteReply;
import io.github.spencerpark.jupyter.messages.reply.KernelInfoReply;
import io.github.spencerpark.jupyter.messages.reply.ShutdownReply;
import io.github.spencerpark.jupyter.messages.request.CompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ExecuteRequest;
import io.github.spencerpark.jupyter.messages.request.InspectRequest;
import io.github.spencerpark.jupyter.messages.request.IsCompleteRequest;
import io.github.spencerpark.jupyter.messages.request.ShutdownRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers the requests of one socket, each between busy and idle. */
final class Requests {
  /** Where the problems of a clause stand in the metadata of its error. */
  static final String PROBLEMS = "application/vnd.endfloat.problems+json";

  private static final String PROTOCOL = "5.3";
  private static final long REPLY_LEAVES_MILLISECONDS = 100;
  private static final Gson GSON = new Gson();

  private final SignedSocket socket;
  private final Outputs outputs;
  private final Execution execution;
  private boolean aborts;

  Requests(SignedSocket socket, Outputs outputs, Execution execution) {
    this.socket = socket;
    this.outputs = outputs;
    this.execution = execution;
  }

  void take(Message<?> request) {
    outputs.status(request, PublishStatus.BUSY);
    try {
      answer(request);
    } finally {
      outputs.status(request, PublishStatus.IDLE);
    }
    if (aborts) {
      aborts = false;
      abortWaiting();
    }
  }

  private void answer(Message<?> request) {
    Object content = request.getContent();
    MessageType<?> type = request.getHeader().getType();
    if (content instanceof ExecuteRequest execute) {
      execute(request, execute);
    } else if (content instanceof CompleteRequest complete) {
      complete(request, complete);
    } else if (content instanceof InspectRequest inspect) {
      inspect(request, inspect);
    } else if (content instanceof IsCompleteRequest whole) {
      reply(request, MessageType.IS_COMPLETE_REPLY, completeness(whole.getCode()));
    } else if (content instanceof ShutdownRequest shutdown) {
      shutdown(request, shutdown);
    } else if (type.equals(MessageType.KERNEL_INFO_REQUEST)) {
      reply(request, MessageType.KERNEL_INFO_REPLY, info());
    } else if (type.equals(MessageType.INTERRUPT_REQUEST)) {
      execution.interrupt();
      reply(request, MessageType.INTERRUPT_REPLY, new InterruptReply());
    } else if (type.equals(MessageType.HISTORY_REQUEST)) {
      reply(request, MessageType.HISTORY_REPLY, new HistoryReply(List.of()));
    } else if (type.equals(MessageType.COMM_INFO_REQUEST)) {
      reply(request, MessageType.COMM_INFO_REPLY, new CommInfoReply(Map.of()));
    }
  }

  private void execute(Message<?> request, ExecuteRequest execute) {
    boolean counts = !execute.isSilent() && execute.shouldStoreHistory();
    int count = counts ? execution.countOn() : execution.count();
    if (!execute.isSilent()) {
      outputs.input(request, execute.getCode(), count);
    }
    try {
      Optional<DisplayData> result =
          execution.run(execute.getCode(), request.getMetadata(), request);
      if (result.isPresent() && !execute.isSilent()) {
        outputs.result(request, count, result.get());
      }
      reply(request, MessageType.EXECUTE_REPLY, new ExecuteReply(count, Map.of()));
    } catch (Execution.FailedException e) {
      outputs.error(request, e.name(), e.getMessage(), e.trace());
      ErrorReply reply = new ErrorReply(e.name(), e.getMessage(), e.trace());
      reply.setExecutionCount(count);
      Map<String, Object> problems = Map.of(PROBLEMS, GSON.toJson(e.problems()));
      socket.send(
          new Message<>(request, MessageType.EXECUTE_REPLY.error(), reply, List.of(), problems));
      aborts = execute.shouldStopOnError();
    }
  }

  /** What was sent on the strength of a request that failed is not run; the rest is answered. */
  private void abortWaiting() {
    while (socket.hasMore()) {
      try {
        Message<?> waiting = socket.receive();
        if (waiting.getContent() instanceof ExecuteRequest) {
          aborted(waiting);
        } else {
          take(waiting);
        }
      } catch (Wire.RefusedMessageException e) {
        Child.log(e.getMessage());
      }
    }
  }

  @SuppressWarnings("unchecked")
  private void aborted(Message<?> request) {
    outputs.status(request, PublishStatus.BUSY);
    MessageType<?> type = MessageType.EXECUTE_REPLY;
    reply(request, (MessageType<Object>) type, Map.of("status", "aborted"));
    outputs.status(request, PublishStatus.IDLE);
  }

  private void complete(Message<?> request, CompleteRequest complete) {
    JavaShell.Completions found =
        execution.shell().complete(complete.getCode(), complete.getCursorPos());
    reply(
        request,
        MessageType.COMPLETE_REPLY,
        new CompleteReply(found.texts(), found.from(), complete.getCursorPos(), Map.of()));
  }

  private void inspect(Message<?> request, InspectRequest inspect) {
    List<String> found = execution.shell().help(inspect.getCode(), inspect.getCursorPos());
    reply(
        request,
        MessageType.INSPECT_REPLY,
        new InspectReply(
            !found.isEmpty(),
            found.isEmpty() ? new DisplayData() : new DisplayData(String.join("\n", found))));
  }

  private IsCompleteReply completeness(String code) {
    return switch (execution.shell().completeness(code)) {
      case "complete" -> IsCompleteReply.VALID_CODE;
      case "incomplete" -> IsCompleteReply.getIncompleteReplyWithIndent("  ");
      default -> IsCompleteReply.INVALID_CODE;
    };
  }

  private void shutdown(Message<?> request, ShutdownRequest shutdown) {
    reply(
        request,
        MessageType.SHUTDOWN_REPLY,
        shutdown.isRestart() ? ShutdownReply.SHUTDOWN_AND_RESTART : ShutdownReply.SHUTDOWN);
    Thread end = new Thread(Requests::end, "end");
    end.setDaemon(true);
    end.start();
  }

  private static void end() {
    try {
      Thread.sleep(REPLY_LEAVES_MILLISECONDS);
    } catch (InterruptedException e) {
      // ends all the same
    }
    Runtime.getRuntime().halt(0);
  }

  private <T> void reply(Message<?> request, MessageType<T> type, T content) {
    socket.send(new Message<>(request, type, content));
  }

  private static KernelInfoReply info() {
    String version = Runtime.version().toString();
    return new KernelInfoReply(
        PROTOCOL,
        "endfloat",
        endfloat.catalogue.LibraryVersion.text(),
        new LanguageInfo.Builder("Java")
            .version(version)
            .mimetype("text/x-java-source")
            .fileExtension(".java")
            .build(),
        "Java " + version + " with the calculations of Endfloat",
        List.of());
  }
}
