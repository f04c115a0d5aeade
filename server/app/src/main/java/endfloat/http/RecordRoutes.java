package endfloat.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import endfloat.http.live.LiveDesk;
import endfloat.http.live.LiveSheet;
import endfloat.http.view.ShelfView;
import endfloat.record.RecordId;
import endfloat.record.RecordJson;
import endfloat.record.Shelf;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Optional;

/** The shelf and its records. */
final class RecordRoutes {
  private final Shelf shelf;
  private final LiveDesk desk;

  RecordRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/shelf", ctx -> Answers.json(ctx, ShelfView.of(shelf.list())));
    routes.post("/api/records", this::create);
    routes.get("/api/records/{id}", this::read);
    routes.get("/api/records/{id}/sheet", this::sheet);
  }

  private void create(Context ctx) {
    JsonNode wish = RecordJson.read(ctx.bodyAsBytes());
    String from = wish.path("from").asText("");
    Optional<RecordId> pattern =
        from.isEmpty() ? Optional.empty() : Optional.of(new RecordId(from));
    RecordId id = shelf.create(pattern, wish.path("title").asText(""));
    ctx.status(201).header("Location", "/sheet/" + id.text());
    Answers.json(ctx, JsonNodeFactory.instance.objectNode().put("id", id.text()));
  }

  private void read(Context ctx) {
    byte[] record = shelf.bytes(new RecordId(ctx.pathParam("id")));
    Answers.bytes(ctx, record);
  }

  private void sheet(Context ctx) throws IOException {
    Answers.json(ctx, desk.with(new RecordId(ctx.pathParam("id")), LiveSheet::whole));
  }
}
