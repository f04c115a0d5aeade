package endfloat.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.view.RefusedOrderException;
import endfloat.record.RecordException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Turns every failure into a status, what is wrong and what to do; a stack trace only into the log.
 */
final class Failures {
  private static final Logger LOG = Logger.getLogger(Failures.class.getName());

  /** An upload beyond this is cut off. */
  private static final long MOST_TAKEN_IN = 500_000_000;

  private final PageFrame frame;

  Failures(PageFrame frame) {
    this.frame = frame;
  }

  void addTo(RoutesConfig routes) {
    routes.exception(
        RequestRefusedException.class,
        (e, ctx) -> answer(ctx, e.status(), e.getMessage(), e.wayOut()));
    routes.exception(
        RefusedOrderException.class, (e, ctx) -> answer(ctx, 422, e.getMessage(), e.wayOut()));
    routes.exception(
        JacksonException.class,
        (e, ctx) ->
            answer(
                ctx,
                400,
                "The request is not JSON: " + e.getOriginalMessage() + ".",
                "Send well-formed JSON."));
    routes.exception(
        RecordException.class,
        (e, ctx) ->
            answer(ctx, statusOf(e.reason()), sentence(e.getMessage()), wayOutOf(e.reason())));
    routes.exception(
        HttpResponseException.class,
        (e, ctx) -> answer(ctx, e.getStatus(), sentenceOf(e.getStatus()), wayOutOf(e.getStatus())));
    routes.exception(
        Exception.class,
        (e, ctx) -> {
          LOG.log(Level.SEVERE, "failed: " + ctx.method() + " " + ctx.path(), e);
          answer(ctx, 500, sentenceOf(500), wayOutOf(500));
        });
  }

  /** Says so before anything of it is read, where the sender says how much is coming. */
  static void refuseTooLarge(Context ctx) {
    if (ctx.req().getContentLengthLong() > Server.UPLOAD_LIMIT) {
      throw new RequestRefusedException(413, sentenceOf(413), wayOutOf(413));
    }
  }

  /** The page gets JSON; a person who opened an address gets a page of words. */
  private void answer(Context ctx, int status, String message, String wayOut) {
    if (status == 413) {
      takeIn(ctx);
    }
    ctx.status(status);
    if (wantsPage(ctx)) {
      ctx.contentType("text/html; charset=utf-8");
      String about = status == 404 ? "Not found" : "Not done";
      boolean letIn = Guard.hasLetIn(ctx);
      ctx.result(frame.message(about, message, wayOut, letIn, SecurityHeaders.allowPage(ctx)));
    } else {
      ctx.contentType("application/json; charset=utf-8");
      ctx.result(json(message, wayOut).toString());
    }
  }

  /**
   * Reads what is still under way and forgets it: an answer given before is lost with the
   * connection that the sender finds closed.
   */
  private static void takeIn(Context ctx) {
    byte[] buffer = new byte[1 << 16];
    long taken = 0;
    try {
      InputStream body = ctx.req().getInputStream();
      int count = body.read(buffer);
      while (count >= 0 && taken < MOST_TAKEN_IN) {
        taken += count;
        count = body.read(buffer);
      }
    } catch (IOException e) {
      // The sender went away; there is nobody to answer.
      LOG.log(Level.FINE, "an upload ended early", e);
    }
  }

  static ObjectNode json(String message, String wayOut) {
    return JsonNodeFactory.instance.objectNode().put("message", message).put("wayOut", wayOut);
  }

  /** What is said in the middle of a line, as a sentence of its own. */
  private static String sentence(String message) {
    String begun = message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  private static int statusOf(RecordException.Reason reason) {
    return switch (reason) {
      case NOT_JSON -> 400;
      case NOT_A_RECORD, NEWER -> 422;
      case TOO_LARGE -> 413;
      case NOT_FOUND -> 404;
      case OFF_THE_SHELF -> 403;
      case DISK -> 500;
    };
  }

  private static String wayOutOf(RecordException.Reason reason) {
    return switch (reason) {
      case NOT_JSON, NOT_A_RECORD -> "Correct it, or take an earlier state of the record.";
      case NEWER -> "Use the newer Endfloat that wrote it.";
      case TOO_LARGE -> "Keep photographs and long tables beside the record.";
      case NOT_FOUND, OFF_THE_SHELF -> "The shelf lists the records that there are.";
      case DISK -> "See that the disk is there and not full.";
    };
  }

  private static boolean wantsPage(Context ctx) {
    String accept = ctx.header("Accept");
    return accept != null && accept.contains("text/html") && !ctx.path().startsWith("/api/");
  }

  private static String sentenceOf(int status) {
    return switch (status) {
      case 404 -> "There is nothing at this address.";
      case 405 -> "This address does not take that kind of request.";
      case 413 -> "The upload is larger than 32 MB.";
      case 500 -> "The server failed on this request; nothing was changed by it.";
      default -> "The request was refused.";
    };
  }

  private static String wayOutOf(int status) {
    return switch (status) {
      case 404 -> "See that it is written as it was given, or begin at the shelf.";
      case 413 -> "Send a smaller file.";
      case 500 -> "Try again; what endfloat printed where it was started says more.";
      default -> "Load the page again.";
    };
  }
}
