package endfloat.http;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;

/** JSON out. */
final class Answers {
  private static final String JSON = "application/json; charset=utf-8";

  private Answers() {}

  static void json(Context ctx, ObjectNode answer) {
    ctx.contentType(JSON).result(answer.toString());
  }

  /** Bytes that are JSON already, with their tag: what the reader has is not sent again. */
  static void bytes(Context ctx, byte[] json) {
    String etag = WebFile.etag(json);
    ctx.header("ETag", etag).header("Cache-Control", "no-cache");
    if (etag.equals(ctx.header("If-None-Match"))) {
      ctx.status(304);
      return;
    }
    ctx.contentType(JSON).result(json);
  }
}
