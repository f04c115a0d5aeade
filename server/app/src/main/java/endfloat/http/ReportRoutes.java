package endfloat.http;

import endfloat.http.live.LiveDesk;
import endfloat.http.view.PaperView;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;

/** The report of a record: as a page, or as a file to keep where the query asks for it. */
final class ReportRoutes {
  private final LiveDesk desk;

  ReportRoutes(LiveDesk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/record/{id}/report", this::report);
  }

  private void report(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    PaperSize paper = "letter".equals(ctx.queryParam("paper")) ? PaperSize.LETTER : PaperSize.A4;
    String html = ReportPage.html(PaperView.of(saved(id)), paper);
    // the file shows itself and does nothing, here as anywhere
    ctx.header("Content-Security-Policy", ReportPage.POLICY + "; frame-ancestors 'none'");
    if (ctx.queryParam("download") != null) {
      ctx.header("Content-Disposition", "attachment; filename=\"" + id.text() + ".html\"");
    }
    ctx.contentType("text/html; charset=utf-8").result(html);
  }

  /** The record as its file has it once all that was edited has been written. */
  private InvestigationRecord saved(RecordId id) throws IOException {
    return desk.with(
        id,
        sheet -> {
          sheet.sheet().save();
          return sheet.sheet().snapshot().record();
        });
  }
}
