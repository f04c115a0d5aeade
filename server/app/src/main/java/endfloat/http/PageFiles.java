package endfloat.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Style sheets, modules, fonts and the modules of others. */
final class PageFiles {
  static final String FAVICON = "/favicon.svg";

  private final WebFolder page;
  private final WebFolder modules;

  PageFiles(WebFolder page, WebFolder modules) {
    this.page = page;
    this.modules = modules;
  }

  void addTo(RoutesConfig routes) {
    for (String folder : new String[] {"css", "view", "state"}) {
      routes.get("/" + folder + "/<path>", ctx -> own(ctx, folder, "no-cache"));
    }
    routes.get("/fonts/<path>", ctx -> own(ctx, "fonts", "max-age=86400"));
    // The path of a module carries its version, so what it holds never changes.
    routes.get(
        "/_static/<path>",
        ctx -> send(ctx, modules, ctx.pathParam("path"), "max-age=31536000, immutable"));
    routes.get(FAVICON, ctx -> send(ctx, page, FAVICON.substring(1), "max-age=86400"));
  }

  private void own(Context ctx, String folder, String caching) {
    send(ctx, page, folder + "/" + ctx.pathParam("path"), caching);
  }

  private static void send(Context ctx, WebFolder folder, String path, String caching) {
    WebFile file =
        folder
            .find(path)
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404,
                        "There is no such file.",
                        "Load the page again, or begin at the shelf."));
    ctx.header("Cache-Control", caching)
        .header("ETag", file.etag())
        .header("Vary", "Accept-Encoding");
    if (file.etag().equals(ctx.header("If-None-Match"))) {
      ctx.status(304);
      return;
    }
    String accepted = ctx.header("Accept-Encoding");
    ctx.disableCompression().contentType(file.type());
    if (file.packed() != file.plain() && accepted != null && accepted.contains("gzip")) {
      ctx.header("Content-Encoding", "gzip").result(file.packed());
    } else {
      ctx.result(file.plain());
    }
  }
}
