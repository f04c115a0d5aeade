package endfloat.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** The HTML pages, with the module map and the nonce put in. */
final class Pages {
  private final WebFolder page;
  private volatile ImportMap modules;

  Pages(WebFolder page) {
    this.page = page;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/", ctx -> send(ctx, "index.html"));
    routes.get("/sheet/{id}", ctx -> send(ctx, "sheet.html"));
    routes.get("/compare", ctx -> send(ctx, "compare.html"));
    routes.get("/rerun/{id}", ctx -> send(ctx, "rerun.html"));
    routes.get("/reference", ctx -> send(ctx, "reference.html"));
    routes.get("/reference/{name}", ctx -> send(ctx, "reference.html"));
    routes.get("/reference/tables/{name}", ctx -> send(ctx, "reference.html"));
    routes.get("/how-a-figure-is-made", ctx -> send(ctx, "how-a-figure-is-made.html"));
  }

  private void send(Context ctx, String name) {
    WebFile file =
        page.find(name)
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404, "There is no such page.", "Go back to the shelf."));
    String nonce = SecurityHeaders.allowPage(ctx);
    String html =
        new String(file.plain(), StandardCharsets.UTF_8)
            .replace("<!--importmap-->", modules().element(nonce))
            .replace("{{nonce}}", nonce);
    ctx.contentType(file.type()).result(html);
  }

  private ImportMap modules() {
    if (modules == null) {
      modules = ImportMap.ofClassPath();
    }
    return modules;
  }
}
