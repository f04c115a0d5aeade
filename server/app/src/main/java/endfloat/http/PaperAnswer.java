package endfloat.http;

import endfloat.report.pdf.Stop;
import io.javalin.http.Context;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.http.HttpFields;

/**
 * Answers with a PDF that takes a while to make, and stops making it when nobody waits any more.
 */
final class PaperAnswer {
  private static final int PROCESSING = 102;
  private static final int GONE = 503;
  private static final long FIRST_SIGN_MILLISECONDS = 500;

  /** A client of the JDK takes eight; each is awaited twice as long as the one before. */
  private static final int MOST_SIGNS = 7;

  private PaperAnswer() {}

  /**
   * @param name of the file, where the reader keeps it
   * @param making is asked to stop when the reader has gone
   */
  static void pdf(Context ctx, String name, Function<Stop, byte[]> making) {
    AtomicBoolean left = new AtomicBoolean();
    CompletableFuture<byte[]> made = new CompletableFuture<>();
    Thread worker = new Thread(() -> make(made, making, left::get), "paper");
    worker.setDaemon(true);
    worker.start();
    byte[] pdf;
    try {
      pdf = waitFor(made, ctx, left);
    } catch (Stop.StoppedException e) {
      ctx.status(GONE);
      return;
    }
    String how = ctx.queryParam("download") != null ? "attachment" : "inline";
    ctx.header("Content-Disposition", how + "; filename=\"" + name + "\"");
    ctx.contentType("application/pdf").result(pdf);
  }

  private static void make(
      CompletableFuture<byte[]> made, Function<Stop, byte[]> making, Stop stop) {
    try {
      made.complete(making.apply(stop));
    } catch (RuntimeException | Error e) {
      made.completeExceptionally(e);
    }
  }

  private static byte[] waitFor(CompletableFuture<byte[]> made, Context ctx, AtomicBoolean left) {
    long wait = FIRST_SIGN_MILLISECONDS;
    for (int signs = 0; true; signs++) {
      try {
        return made.get(wait, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        if (signs < MOST_SIGNS && hasLeft(ctx)) {
          left.set(true);
        }
        wait *= 2;
      } catch (InterruptedException e) {
        left.set(true);
        Thread.currentThread().interrupt();
        throw new Stop.StoppedException();
      } catch (ExecutionException e) {
        throw e.getCause() instanceof RuntimeException cause
            ? cause
            : new IllegalStateException(e.getCause());
      }
    }
  }

  /** A sign of life (RFC 2518, 10.1) that cannot be sent any more has no reader. */
  private static boolean hasLeft(Context ctx) {
    if (!ctx.protocol().equals("HTTP/1.1")) {
      return false;
    }
    try {
      ServletContextRequest.getServletContextRequest(ctx.req())
          .getServletContextResponse()
          .writeInterim(PROCESSING, HttpFields.EMPTY)
          .get(FIRST_SIGN_MILLISECONDS, TimeUnit.MILLISECONDS);
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    } catch (ExecutionException | TimeoutException e) {
      return true;
    }
  }
}
