package endfloat.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.live.LiveDesk;
import endfloat.http.view.ComparisonView;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import endfloat.report.ComparisonPage;
import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import endfloat.review.Comparison;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;

/**
 * Two records, or two states of one, side by side. {@code left} and {@code right} name a record of
 * the shelf, {@code id@state} an earlier state of it.
 */
final class CompareRoutes {
  private final Shelf shelf;
  private final LiveDesk desk;

  CompareRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/compare", this::compare);
    routes.get("/compare/report", this::report);
    routes.get("/api/records/{id}/states", this::states);
  }

  private void compare(Context ctx) throws IOException {
    Comparison comparison = Comparison.of(side(ctx, "left"), side(ctx, "right"));
    Answers.json(ctx, ComparisonView.of(comparison));
  }

  /** Both side by side on paper. */
  private void report(Context ctx) throws IOException {
    Comparison comparison = Comparison.of(side(ctx, "left"), side(ctx, "right"));
    PaperSize paper = "letter".equals(ctx.queryParam("paper")) ? PaperSize.LETTER : PaperSize.A4;
    ctx.header("Content-Security-Policy", ReportPage.POLICY + "; frame-ancestors 'none'");
    if (ctx.queryParam("download") != null) {
      ctx.header("Content-Disposition", "attachment; filename=\"comparison.html\"");
    }
    String html = ComparisonPage.html(ComparisonView.of(comparison), paper);
    ctx.contentType("text/html; charset=utf-8").result(html);
  }

  private InvestigationRecord side(Context ctx, String name) throws IOException {
    String given = ctx.queryParam(name);
    if (given == null || given.isEmpty()) {
      throw new RequestRefusedException(
          400, "The " + name + " record is not named.", "Choose two records on the shelf.");
    }
    int at = given.indexOf('@');
    if (at >= 0) {
      return shelf.state(new RecordId(given.substring(0, at)), given.substring(at + 1));
    }
    return desk.with(new RecordId(given), sheet -> sheet.sheet().snapshot().record());
  }

  private void states(Context ctx) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    ArrayNode list = answer.putArray("states");
    shelf.states(new RecordId(ctx.pathParam("id"))).forEach(list::add);
    Answers.json(ctx, answer);
  }
}
