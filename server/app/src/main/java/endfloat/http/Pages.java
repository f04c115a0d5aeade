package endfloat.http;

import endfloat.catalogue.Catalogue;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;

/** The HTML pages. What an address names must be there, or the answer is a message. */
final class Pages {
  private final PageFrame frame;
  private final Shelf shelf;
  private final Catalogue catalogue;

  Pages(PageFrame frame, Shelf shelf, Catalogue catalogue) {
    this.frame = frame;
    this.shelf = shelf;
    this.catalogue = catalogue;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/", ctx -> send(ctx, "index"));
    routes.get("/compare", ctx -> send(ctx, "compare"));
    routes.get("/sheet/{id}", ofRecord("sheet"));
    routes.get("/rerun/{id}", ofRecord("rerun"));
    routes.get("/reference", ctx -> send(ctx, "reference"));
    routes.get("/reference/{name}", this::calculation);
    routes.get("/reference/tables/{name}", this::table);
    routes.get("/how-a-figure-is-made", ctx -> send(ctx, "how-a-figure-is-made"));
  }

  private Handler ofRecord(String page) {
    return ctx -> {
      RecordId id = new RecordId(ctx.pathParam("id"));
      shelf.place(id);
      try {
        InvestigationRecord.read(shelf.bytes(id));
      } catch (RecordException e) {
        String message = "the record " + id.text() + " cannot be read: " + e.getMessage();
        throw new RecordException(e.reason(), message, e);
      }
      send(ctx, page);
    };
  }

  private void calculation(Context ctx) {
    CatalogueRoutes.calculation(catalogue, ctx.pathParam("name"));
    send(ctx, "reference");
  }

  private void table(Context ctx) {
    CatalogueRoutes.tableName(ctx.pathParam("name"));
    send(ctx, "reference");
  }

  private void send(Context ctx, String name) {
    String nonce = SecurityHeaders.allowPage(ctx);
    ctx.contentType("text/html; charset=utf-8").result(frame.page(name, nonce));
  }
}
