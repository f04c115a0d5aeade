package endfloat.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.definition.Progress;
import endfloat.engine.CellRunner.Shown;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.publish.PublishDisplayData;
import io.github.spencerpark.jupyter.messages.publish.PublishExecuteResult;
import io.github.spencerpark.jupyter.messages.publish.PublishStream;
import io.github.spencerpark.jupyter.messages.reply.ErrorReply;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is heard of one run. */
final class Heard {
  private static final int MOST_SHOWN = 100;
  private static final int MOST_CHARACTERS = 1_000_000;
  private static final MIMEType GIVEN = type("vnd.endfloat.given");
  private static final MIMEType PROGRESS = type("vnd.endfloat.progress");
  private static final MIMEType TABLE = type("vnd.endfloat.table");
  private static final String PROBLEMS = "application/vnd.endfloat.problems+json";

  private static final String NO_SVG = "The chart is no SVG that can be shown.";

  private final Progress progress;
  private final List<Shown> shown = new ArrayList<>();
  private int characters;
  private double fraction;
  private JsonNode result;
  private List<LineProblem> problems = List.of();

  Heard(Progress progress) {
    this.progress = progress;
  }

  private static MIMEType type(String name) {
    int point = name.indexOf('.');
    return new MIMEType("application", name.substring(0, point), name.substring(point + 1), "json");
  }

  void take(Message<?> message) {
    Object content = message.getContent();
    if (content instanceof PublishStream stream) {
      boolean error = stream.getStreamType() == PublishStream.StreamType.ERR;
      text(error ? "error" : "text", stream.getText());
    } else if (content instanceof PublishExecuteResult given) {
      result = JavaRuns.json(given.getData(GIVEN)).orElse(null);
    } else if (content instanceof PublishDisplayData display) {
      display(display);
    } else if (content instanceof ErrorReply error) {
      problems = problems(message, error);
    }
  }

  private void display(DisplayData data) {
    Optional<JsonNode> told = JavaRuns.json(data.getData(PROGRESS));
    Optional<JsonNode> table = JavaRuns.json(data.getData(TABLE));
    Object svg = data.getData(MIMEType.IMAGE_SVG);
    if (told.isPresent()) {
      fraction = told.get().path("fraction").asDouble();
    } else if (table.isPresent()) {
      add(ClauseJson.table(table.get()), table.get().toString().length());
    } else if (svg != null) {
      String safe = SafeSvg.of(svg.toString());
      add(
          Shown.text(safe.isEmpty() ? "error" : "svg", safe.isEmpty() ? NO_SVG : safe),
          safe.length());
    } else if (data.getData(MIMEType.TEXT_PLAIN) != null) {
      text("text", data.getData(MIMEType.TEXT_PLAIN) + "\n");
    }
  }

  /** Texts that follow one another are one. */
  private void text(String sort, String text) {
    int last = shown.size() - 1;
    if (last >= 0 && shown.get(last).sort().equals(sort) && characters < MOST_CHARACTERS) {
      shown.set(last, Shown.text(sort, shown.get(last).text() + text));
      characters += text.length();
    } else {
      add(Shown.text(sort, text), text.length());
    }
  }

  private void add(Shown one, int length) {
    if (shown.size() < MOST_SHOWN && characters + length <= MOST_CHARACTERS) {
      shown.add(one);
      characters += length;
    }
  }

  private static List<LineProblem> problems(Message<?> message, ErrorReply error) {
    List<LineProblem> problems = new ArrayList<>();
    JavaRuns.json(message.getNonNullMetadata().get(PROBLEMS))
        .ifPresent(
            list ->
                list.forEach(
                    one ->
                        problems.add(
                            LineProblem.error(
                                new Span(
                                    one.path("line").asInt(1),
                                    one.path("from").asInt(1),
                                    one.path("to").asInt(2)),
                                one.path("message").asText(),
                                one.path("wayOut").asText()))));
    if (problems.isEmpty()) {
      problems.add(LineProblem.error(new Span(1, 1, 2), error.getErrorMessage(), ""));
    }
    return problems;
  }

  /** Tells how far it is; whether it is to go on. */
  boolean goesOn() {
    return progress.reached(fraction);
  }

  Optional<JsonNode> result() {
    return Optional.ofNullable(result);
  }

  boolean leftThreads() {
    return result != null && result.path("leftThreads").asBoolean();
  }

  List<Shown> shown() {
    return shown;
  }

  List<LineProblem> problems() {
    return problems.isEmpty()
        ? JavaRuns.failure("The run gave no result.", "").problems()
        : problems;
  }
}
