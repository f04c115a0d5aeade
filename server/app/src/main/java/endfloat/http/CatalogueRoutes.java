package endfloat.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.http.view.LookupTables;
import endfloat.http.view.ReferenceView;
import endfloat.picture.drawing.Drawings;
import endfloat.record.CommonInstruments;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/**
 * The catalogue of calculations, the tables behind them, and the table of common instruments.
 * {@code units=imperial} and {@code terms=american} say how they are read, {@code find} what is
 * looked for.
 */
final class CatalogueRoutes {
  private final Catalogue catalogue;
  private ReferenceView reference;

  CatalogueRoutes(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Made when it is first asked for: its search costs a fifth of a start. */
  private synchronized ReferenceView reference() {
    if (reference == null) {
      reference = new ReferenceView(catalogue);
    }
    return reference;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/catalogue", this::list);
    routes.get("/api/catalogue/{name}", this::one);
    routes.get("/api/catalogue/{name}/drawing", this::drawing);
    routes.get("/api/tables/{name}", this::table);
    routes.get("/api/instruments", CatalogueRoutes::instruments);
  }

  private static ReferenceView.Reader reader(Context ctx) {
    return ReferenceView.Reader.of(ctx.queryParam("units"), ctx.queryParam("terms"));
  }

  private void list(Context ctx) {
    String typed = ctx.queryParam("find");
    Answers.json(ctx, reference().list(typed == null ? "" : typed, reader(ctx)));
  }

  private void one(Context ctx) {
    Calculation calculation = calculation(catalogue, ctx.pathParam("name"));
    Answers.json(ctx, reference().of(calculation, reader(ctx)));
  }

  /** The calculation of a name. */
  static Calculation calculation(Catalogue catalogue, String name) {
    return catalogue
        .find(name)
        .orElseThrow(
            () ->
                new RequestRefusedException(
                    404, "There is no calculation " + name + ".", nearest(catalogue, name)));
  }

  /** The same name, if there is a table of it. */
  static String tableName(String name) {
    if (LookupTables.TITLES.containsKey(name)) {
      return name;
    }
    throw new RequestRefusedException(
        404,
        "There is no table " + name + ".",
        "There are: " + String.join(", ", LookupTables.TITLES.keySet()) + ".");
  }

  private static void instruments(Context ctx) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    ArrayNode list = answer.putArray("instruments");
    for (CommonInstruments.Common one : CommonInstruments.all()) {
      list.addObject()
          .put("kind", one.kind())
          .put("limit", one.limit())
          .put("division", one.division())
          .put("source", one.source())
          .put("known", one.known());
    }
    Answers.json(ctx, answer);
  }

  private void drawing(Context ctx) {
    String name = ctx.pathParam("name");
    Drawings.Drawing drawing =
        Drawings.of(name)
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404,
                        "There is no line drawing of " + name + ".",
                        nearest(catalogue, name)));
    ctx.contentType("image/svg+xml").result(drawing.svg());
  }

  private void table(Context ctx) {
    String name = tableName(ctx.pathParam("name"));
    Answers.json(ctx, LookupTables.of(name, reader(ctx)).orElseThrow());
  }

  private static String nearest(Catalogue catalogue, String name) {
    String near = String.join(", ", catalogue.nearest(name));
    return near.isEmpty() ? "Look in the list of calculations." : "Nearest names: " + near + ".";
  }
}
