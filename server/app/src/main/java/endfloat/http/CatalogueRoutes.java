package endfloat.http;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.http.view.LookupTables;
import endfloat.http.view.ReferenceView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/**
 * The catalogue of calculations and the tables behind them. {@code units=imperial} and {@code
 * terms=american} say how they are read, {@code find} what is looked for.
 */
final class CatalogueRoutes {
  private final Catalogue catalogue;
  private final ReferenceView reference;

  CatalogueRoutes(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.reference = new ReferenceView(catalogue);
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/catalogue", this::list);
    routes.get("/api/catalogue/{name}", this::one);
    routes.get("/api/tables/{name}", this::table);
  }

  private static ReferenceView.Reader reader(Context ctx) {
    return ReferenceView.Reader.of(ctx.queryParam("units"), ctx.queryParam("terms"));
  }

  private void list(Context ctx) {
    String typed = ctx.queryParam("find");
    Answers.json(ctx, reference.list(typed == null ? "" : typed, reader(ctx)));
  }

  private void one(Context ctx) {
    String name = ctx.pathParam("name");
    Calculation calculation =
        catalogue
            .find(name)
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404, "There is no calculation " + name + ".", nearest(name)));
    Answers.json(ctx, reference.of(calculation, reader(ctx)));
  }

  private void table(Context ctx) {
    String name = ctx.pathParam("name");
    Answers.json(
        ctx,
        LookupTables.of(name, reader(ctx))
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404,
                        "There is no table " + name + ".",
                        "There are: " + String.join(", ", LookupTables.TITLES.keySet()) + ".")));
  }

  private String nearest(String name) {
    String near = String.join(", ", catalogue.nearest(name));
    return near.isEmpty() ? "Look in the list of calculations." : "Nearest names: " + near + ".";
  }
}
