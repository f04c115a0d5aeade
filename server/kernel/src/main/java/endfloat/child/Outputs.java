package endfloat.child;

import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageContext;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.publish.PublishDisplayData;
import io.github.spencerpark.jupyter.messages.publish.PublishError;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteInput;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteResult;
import io.github.spencerpark.jupyter.messages.publish.PublishStatus;
import io.github.spencerpark.jupyter.messages.publish.PublishStream;
import java.util.List;

/** What everyone who listens is told: states, streams, results, errors, each under its request. */
final class Outputs {
  private final SignedSocket socket;
  private volatile MessageContext request;

  Outputs(SignedSocket socket) {
    this.socket = socket;
  }

  /** Streams written from now on belong to this request. */
  void of(MessageContext context) {
    request = context;
  }

  void status(MessageContext context, PublishStatus status) {
    publish(context, MessageType.PUBLISH_STATUS, status);
  }

  void input(MessageContext context, String code, int count) {
    publish(context, MessageType.PUBLISH_EXECUTE_INPUT, new PublishExecuteInput(code, count));
  }

  void stream(PublishStream.StreamType type, String text) {
    publish(request, MessageType.PUBLISH_STREAM, new PublishStream(type, text));
  }

  void result(MessageContext context, int count, DisplayData data) {
    publish(context, MessageType.PUBLISH_EXECUTION_RESULT, new PublishExecuteResult(count, data));
  }

  void display(MessageContext context, DisplayData data) {
    publish(context, MessageType.PUBLISH_DISPLAY_DATA, new PublishDisplayData(data));
  }

  void error(MessageContext context, String name, String message, List<String> trace) {
    publish(context, MessageType.PUBLISH_ERROR, new PublishError(name, message, trace));
  }

  private <T> void publish(MessageContext context, MessageType<T> type, T content) {
    Message<T> message = new Message<>(context, type, content);
    // Listeners ask for topics, not for the identity of who asked.
    socket.send(
        new Message<>(
            List.of(topic(type)),
            message.getHeader(),
            message.getParentHeader(),
            null,
            content,
            null));
  }

  private static byte[] topic(MessageType<?> type) {
    return ("kernel." + type.getName()).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
  }
}
