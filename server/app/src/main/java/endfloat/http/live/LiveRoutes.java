package endfloat.http.live;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.view.SheetQuestions;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.EditRefusedException;
import endfloat.record.RecordException;
import endfloat.record.RecordId;
import endfloat.record.RecordJson;
import io.javalin.config.RoutesConfig;
import io.javalin.websocket.WsCloseContext;
import io.javalin.websocket.WsConnectContext;
import io.javalin.websocket.WsContext;
import io.javalin.websocket.WsMessageContext;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.websocket.api.Callback;

/**
 * {@code /api/records/{id}/live}: one page of a sheet.
 *
 * <p>Beside the messages of edits and figures the server sends {@code present} (who is in which
 * clause), {@code conflict} (the file on disk was changed by something else; the page answers
 * {@code keepMine} or {@code takeTheirs}), {@code notice} and {@code error}. A page names itself by
 * {@code ?page=}, so that after a lost connection its own earlier edits are not taken for somebody
 * else's.
 */
public final class LiveRoutes {
  private static final Logger LOG = Logger.getLogger(LiveRoutes.class.getName());

  /**
   * A page that reads nothing for so many messages is cut off; it catches up by connecting anew.
   */
  private static final int MOST_WAITING = 2_000;

  private final LiveDesk desk;
  private final JavaQuestions javaQuestions = new JavaQuestions();
  private final Map<String, Connection> connections = new ConcurrentHashMap<>();

  /**
   * @param desk where the sheets are
   */
  public LiveRoutes(LiveDesk desk) {
    this.desk = desk;
    // A page that only looks says nothing; without a word the line would be taken for dead.
    desk.everyMinute(() -> connections.values().forEach(one -> one.ping().run()));
  }

  private record Connection(RecordId id, LiveSheet sheet, Page page, Runnable ping) {}

  /** Adds the route. */
  public void addTo(RoutesConfig routes) {
    routes.ws(
        "/api/records/{id}/live",
        ws -> {
          ws.onConnect(this::connect);
          ws.onMessage(this::receive);
          ws.onClose(this::disconnect);
          ws.onError(context -> {});
        });
  }

  private void connect(WsConnectContext context) {
    context.session.setMaxOutgoingFrames(MOST_WAITING);
    Page page = new Page(nameOf(context), text -> send(context, text));
    try {
      RecordId id = new RecordId(context.pathParam("id"));
      connections.put(
          context.sessionId(), new Connection(id, desk.join(id, page), page, context::sendPing));
    } catch (RecordException e) {
      page.send(error(e.getMessage(), "Go back to the shelf.").put("fatal", true));
      context.closeSession(1000, "no such record");
    } catch (IOException e) {
      LOG.log(Level.WARNING, "cannot open a record", e);
      page.send(
          error("The record cannot be read from the disk.", "See that the disk is there.")
              .put("fatal", true));
      context.closeSession(1011, "cannot be read");
    }
  }

  private static String nameOf(WsContext context) {
    String name = context.queryParam("page");
    return name != null && name.matches("[A-Za-z0-9-]{1,64}") ? name : context.sessionId();
  }

  private static void send(WsContext context, String text) {
    context.session.sendText(
        text,
        Callback.from(
            () -> {},
            failure -> {
              // Too slow or gone; the page connects anew and gets the sheet as it is then. On a
              // thread of its own, for this one may hold the lock of the sheet.
              CompletableFuture.runAsync(context.session::disconnect);
            }));
  }

  private void disconnect(WsCloseContext context) {
    Connection connection = connections.remove(context.sessionId());
    if (connection != null) {
      // A message to a page that is gone ends its connection at once, on the thread that holds the
      // lock of the sheet; leaving takes the lock of the desk, which is taken before that of a
      // sheet everywhere else.
      CompletableFuture.runAsync(
          () -> desk.leave(connection.id(), connection.sheet(), connection.page()));
    }
  }

  private void receive(WsMessageContext context) {
    Connection connection = connections.get(context.sessionId());
    if (connection == null) {
      return;
    }
    Page page = connection.page();
    try {
      JsonNode message = RecordJson.read(context.message().getBytes(StandardCharsets.UTF_8));
      handle(connection, message);
    } catch (RecordException e) {
      page.send(
          error("The message is not understood: " + e.getMessage() + ".", "Load the page again."));
    } catch (IOException e) {
      page.send(
          error("The disk refused: " + e.getMessage() + ".", "See that it is there and not full."));
    } catch (RuntimeException e) {
      LOG.log(Level.SEVERE, "a message of a page failed", e);
      page.send(
          error("The server failed on this message; nothing was changed by it.", "Try again."));
    }
  }

  private void handle(Connection connection, JsonNode message) throws IOException {
    LiveSheet sheet = connection.sheet();
    Page page = connection.page();
    switch (text(message, "type")) {
      case "edit" -> edit(sheet, page, message.path("edit"));
      case "undo" -> sheet.step(page, idOf(message), Change.undo());
      case "redo" -> sheet.step(page, idOf(message), Change.redo());
      case "here" -> sheet.here(page, text(message, "author"), text(message, "cell"));
      case "preview", "complete", "hover", "trace", "offer" -> page.send(answer(sheet, message));
      case "run" -> run(sheet, page, message);
      case "stop" -> sheet.stopJava(text(message, "cell"));
      case "javaHelp" -> javaQuestions.ask(sheet, page, message);
      case "keepMine" -> sheet.sheet().keepMine();
      case "takeTheirs" -> sheet.sheet().takeTheirs();
      default -> page.send(error("There is no message of this type.", "Load the page again."));
    }
  }

  private static void run(LiveSheet sheet, Page page, JsonNode message) {
    try {
      sheet.runJava(text(message, "cell"), text(message, "hash"));
    } catch (EditRefusedException e) {
      page.send(error(e.getMessage(), e.wayOut()));
    }
  }

  private static void edit(LiveSheet sheet, Page page, JsonNode json) {
    try {
      if (text(json, "op").equals("rename")) {
        JsonNode names = json.path("value");
        sheet.rename(page, idOf(json), text(names, "from"), text(names, "to"));
        return;
      }
      Edit edit = Edit.fromJson(json);
      sheet.edit(page, edit.madeBy(edit.author(), page.id(), ""));
    } catch (EditRefusedException e) {
      ObjectNode refused = Page.message("refused").put("edit", json.path("id").asText(""));
      page.send(refused.put("reason", e.getMessage()).put("wayOut", e.wayOut()));
    }
  }

  private static ObjectNode answer(LiveSheet sheet, JsonNode message) {
    ObjectNode answer =
        sheet.ask(
            view ->
                switch (text(message, "type")) {
                  case "preview" -> preview(view.questions(), message);
                  case "complete" ->
                      view.questions()
                          .completions(
                              text(message, "text"),
                              message.path("offset").asInt(0),
                              message.path("expression").asBoolean());
                  case "hover" ->
                      view.questions().hover(text(message, "cell"), text(message, "name"));
                  case "offer" ->
                      view.questions().offer(text(message, "name"), text(message, "before"));
                  default -> view.questions().trace(text(message, "name"));
                });
    if (message.has("seq")) {
      answer.set("seq", message.get("seq"));
    }
    return answer;
  }

  /** Of a text, or of a field of a clause. */
  private static ObjectNode preview(SheetQuestions questions, JsonNode message) {
    String cell = text(message, "cell");
    return message.has("field")
        ? questions.preview(
            cell, text(message, "at"), message.path("value"), text(message, "field"))
        : questions.preview(cell, text(message, "text"));
  }

  private static String idOf(JsonNode message) {
    String id = text(message, "id");
    return id.isEmpty() ? java.util.UUID.randomUUID().toString() : id;
  }

  private static String text(JsonNode message, String field) {
    return message.path(field).asText("");
  }

  private static ObjectNode error(String message, String wayOut) {
    return Page.message("error").put("message", message).put("wayOut", wayOut);
  }
}
