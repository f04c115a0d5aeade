package endfloat.kernel;

import endfloat.clause.Body;
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
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/**
 * Asks a kernel how a source may go on: it stands in a method of a class, whose fields are what it
 * reads and gives, as when it is compiled.
 */
final class SourceHelp {
  /** The first question of a kernel makes its shell, which takes a second of a quiet machine. */
  private static final int PATIENCE_MILLISECONDS = 30_000;

  private static final int MOST = 60;
  private static final Pattern PACKAGES = Pattern.compile("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])");
  private static final Pattern BOUNDS = Pattern.compile(" extends [A-Z]\\w*(?:<\\w*>)?");
  private static final Pattern WORD = Pattern.compile("(?<![\\w.])[A-Za-z]\\w*+(?!\\()");

  private final KernelProcess kernel;
  private boolean isAnswered = true;

  SourceHelp(KernelProcess kernel) {
    this.kernel = kernel;
  }

  Help at(String source, int offset, List<Read> reads, List<Give> gives) {
    String head = head(reads, gives);
    String before = source.substring(0, offset);
    String code = head + before;
    Set<String> texts = new LinkedHashSet<>();
    int from = offset;
    CompleteRequest complete = new CompleteRequest(code, code.length());
    if (asked(MessageType.COMPLETE_REQUEST, complete) instanceof CompleteReply reply) {
      from = Math.max(0, Math.min(offset, reply.getCursorStart() - head.length()));
      texts.addAll(reply.getMatches());
    }
    own(before, from, texts);
    List<String> signatures = List.of();
    InspectRequest inspect = new InspectRequest(code, code.length(), 0);
    if (asked(MessageType.INSPECT_REQUEST, inspect) instanceof InspectReply reply) {
      Object plain = reply.getData(MIMEType.TEXT_PLAIN);
      signatures = plain == null ? List.of() : plain.toString().lines().limit(MOST).toList();
    }
    return new Help(
        from,
        texts.stream().limit(MOST).toList(),
        signatures.stream().map(SourceHelp::plain).distinct().toList());
  }

  /** Whether the kernel has answered all that it was asked, so that it is free. */
  boolean isAnswered() {
    return isAnswered;
  }

  private <T> Object asked(MessageType<T> type, T content) {
    Message<?> reply = isAnswered ? kernel.ask(type, content, PATIENCE_MILLISECONDS) : null;
    isAnswered &= reply != null;
    return reply == null ? null : reply.getContent();
  }

  /** What the kernel's shell does not know: methods of every clause, and the source's own words. */
  private static void own(String before, int from, Set<String> texts) {
    String begun = before.substring(from);
    if (begun.isEmpty() || before.substring(0, from).stripTrailing().endsWith(".")) {
      return;
    }
    for (Method method : Body.class.getDeclaredMethods()) {
      if (Modifier.isProtected(method.getModifiers()) && method.getName().startsWith(begun)) {
        texts.add(method.getName() + "(");
      }
    }
    Matcher word = WORD.matcher(before.substring(0, from));
    while (word.find()) {
      if (word.group().startsWith(begun) && word.group().length() > begun.length()) {
        texts.add(word.group());
      }
    }
  }

  /** A signature by the short names of its classes. */
  private static String plain(String signature) {
    String shorter = BOUNDS.matcher(PACKAGES.matcher(signature).replaceAll("")).replaceAll("");
    return shorter.replaceFirst("^(?:Clause\\.)?(\\w+):(?=\\w)", "$1: ");
  }

  private static String head(List<Read> reads, List<Give> gives) {
    StringBuilder head = new StringBuilder("class Clause extends endfloat.clause.Body { ");
    for (Give give : gives) {
      head.append(ClauseJson.type(ClauseJson.declared(give))).append(' ').append(give.java());
      head.append("; ");
    }
    for (Read read : reads) {
      boolean isGiven = gives.stream().anyMatch(give -> give.java().equals(read.java()));
      if (!isGiven && !SourceVersion.isKeyword(read.java())) {
        declare(read.java(), read.kind(), read.java() + "Results", head);
      }
    }
    return head.append("public void run() throws Exception { ").toString();
  }

  /** A record of results is of a class that has its fields. */
  private static void declare(String java, Kind kind, String ofClass, StringBuilder head) {
    String type = ofClass;
    if (kind instanceof Kind.Fields record) {
      head.append("class ").append(ofClass).append(" { ");
      record
          .fields()
          .forEach(
              (name, field) -> {
                String part = JavaNames.camel(name);
                declare(part, field, ofClass + "_" + part, head);
              });
      head.append("} ");
    } else {
      type = ClauseJson.type(ClauseJson.declared(java, kind));
    }
    head.append(type).append(' ').append(java).append("; ");
  }
}
