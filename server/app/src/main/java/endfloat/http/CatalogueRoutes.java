package endfloat.http;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.http.view.CatalogueView;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The catalogue of calculations. */
final class CatalogueRoutes {
  private final Catalogue catalogue;

  CatalogueRoutes(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/catalogue", ctx -> Answers.json(ctx, CatalogueView.list(catalogue)));
    routes.get("/api/catalogue/{name}", this::one);
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
    Answers.json(ctx, CatalogueView.of(catalogue, calculation));
  }

  private String nearest(String name) {
    String near = String.join(", ", catalogue.nearest(name));
    return near.isEmpty() ? "Look in the list of calculations." : "Nearest names: " + near + ".";
  }
}
