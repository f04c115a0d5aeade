package endfloat.http.live;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.view.JavaHelp;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/**
 * Answers how sources in Java may go on, one question after another and off the line of the page,
 * whose edits must not wait: a kernel may have to start for it. Of the questions that came
 * meanwhile only the last of a page and a purpose is looked into; nobody waits for the others any
 * more.
 */
final class JavaQuestions {
  private final Map<String, JsonNode> last = new ConcurrentHashMap<>();
  private final Executor one =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "java help");
            thread.setDaemon(true);
            return thread;
          });

  void ask(LiveSheet sheet, Page page, JsonNode question) {
    String asker = page.id() + " " + question.path("purpose").asText();
    last.put(asker, question);
    JavaHelp help = sheet.asked(view -> view.questions().javaHelp(question.path("cell").asText()));
    one.execute(
        () -> {
          boolean isLast = last.remove(asker, question);
          ObjectNode answer =
              isLast
                  ? help.at(question.path("text").asText(), question.path("offset").asInt(0))
                  : JavaHelp.none();
          if (question.has("seq")) {
            answer.set("seq", question.get("seq"));
          }
          page.send(answer);
        });
  }
}
