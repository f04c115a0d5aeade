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
import endfloat.report.pdf.PdfComparison;
import endfloat.review.Comparison;
import endfloat.review.StageNotReadException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    routes.get("/compare/report.pdf", this::pdf);
    routes.get("/api/records/{id}/states", this::states);
  }

  private void compare(Context ctx) throws IOException {
    Answers.json(ctx, ComparisonView.of(compared(ctx)));
  }

  /** Both side by side on paper. */
  private void report(Context ctx) throws IOException {
    ObjectNode view = ComparisonView.of(compared(ctx));
    PaperSize paper = ReportRoutes.paper(ctx);
    boolean kept = ctx.queryParam("download") != null;
    ctx.header("Content-Security-Policy", ReportPage.POLICY + "; frame-ancestors 'none'");
    if (kept) {
      ctx.header("Content-Disposition", "attachment; filename=\"comparison.html\"");
    }
    String html =
        kept
            ? ComparisonPage.html(view, paper)
            : ComparisonPage.served(view, paper, compared(ctx::queryParam));
    ctx.contentType("text/html; charset=utf-8").result(html);
  }

  private void pdf(Context ctx) throws IOException {
    ObjectNode view = ComparisonView.of(compared(ctx));
    PaperSize paper = ReportRoutes.paper(ctx);
    PaperAnswer.pdf(ctx, "comparison.pdf", stop -> PdfComparison.of(view, paper, stop));
  }

  /** The part of the address that says what is compared. */
  private static String compared(UnaryOperator<String> asked) {
    return Stream.of("left", "left_stage", "right", "right_stage")
        .filter(name -> !orEmpty(asked.apply(name)).isEmpty())
        .map(name -> name + "=" + URLEncoder.encode(asked.apply(name), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }

  private Comparison compared(Context ctx) throws IOException {
    InvestigationRecord left = side(ctx, "left");
    InvestigationRecord right = side(ctx, "right");
    String stageLeft = orEmpty(ctx.queryParam("left_stage"));
    String stageRight = orEmpty(ctx.queryParam("right_stage"));
    try {
      return Comparison.of(left, stageLeft, right, stageRight);
    } catch (StageNotReadException e) {
      throw new RequestRefusedException(400, e.getMessage(), e.wayOut());
    }
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
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
