package endfloat.kernel;

import endfloat.engine.CellRunner.Help;
import endfloat.engine.CellRunner.Read;
import endfloat.engine.Give;
import endfloat.engine.JavaNames;
import endfloat.working.Kind;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.reply.CompleteReply;
import io.github.spencerpark.jupyter.messages.reply.InspectReply;
import io.github.spencerpark.jupyter.messages.request.CompleteRequest;
import io.github.spencerpark.jupyter.messages.request.InspectRequest;
import java.util.List;
import javax.lang.model.SourceVersion;

/** Asks a kernel how a source may go on: it stands in a method, behind what it reads and gives. */
final class SourceHelp {
  private static final int PATIENCE_MILLISECONDS = 5_000;
  private static final int MOST = 60;

  private SourceHelp() {}

  static Help at(
      KernelProcess kernel, String source, int offset, List<Read> reads, List<Give> gives) {
    String head = head(reads, gives);
    String code = head + source.substring(0, offset);
    List<String> texts = List.of();
    int from = offset;
    Message<?> complete =
        kernel.ask(
            MessageType.COMPLETE_REQUEST,
            new CompleteRequest(code, code.length()),
            PATIENCE_MILLISECONDS);
    if (complete != null && complete.getContent() instanceof CompleteReply reply) {
      texts = reply.getMatches().stream().limit(MOST).toList();
      from = Math.max(0, Math.min(offset, reply.getCursorStart() - head.length()));
    }
    List<String> signatures = List.of();
    Message<?> inspect =
        kernel.ask(
            MessageType.INSPECT_REQUEST,
            new InspectRequest(code, code.length(), 0),
            PATIENCE_MILLISECONDS);
    if (inspect != null && inspect.getContent() instanceof InspectReply reply) {
      Object plain = reply.getData(MIMEType.TEXT_PLAIN);
      signatures = plain == null ? List.of() : plain.toString().lines().limit(MOST).toList();
    }
    return new Help(from, texts, signatures);
  }

  private static String head(List<Read> reads, List<Give> gives) {
    StringBuilder head = new StringBuilder("void run() throws Exception { ");
    for (Give give : gives) {
      head.append(ClauseJson.type(ClauseJson.declared(give))).append(' ').append(give.java());
      head.append(" = null; ");
    }
    for (Read read : reads) {
      boolean isGiven = gives.stream().anyMatch(give -> give.java().equals(read.java()));
      if (!isGiven && !SourceVersion.isKeyword(read.java())) {
        declare(read.java(), read.kind(), read.java() + "Results", " = null; ", head);
      }
    }
    return head.toString();
  }

  /** A record of results is of a class that has its fields. */
  private static void declare(
      String java, Kind kind, String ofClass, String end, StringBuilder head) {
    String type = ofClass;
    if (kind instanceof Kind.Fields record) {
      head.append("class ").append(ofClass).append(" { ");
      record
          .fields()
          .forEach(
              (name, field) -> {
                String part = JavaNames.camel(name);
                declare(part, field, ofClass + "_" + part, "; ", head);
              });
      head.append("} ");
    } else {
      type = ClauseJson.type(ClauseJson.declared(java, kind));
    }
    head.append(type).append(' ').append(java).append(end);
  }
}
