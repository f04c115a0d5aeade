package endfloat.http;

import endfloat.http.live.LiveDesk;
import endfloat.http.view.PaperView;
import endfloat.record.InvestigationRecord;
import endfloat.record.Photographs;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import endfloat.report.FormPage;
import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import endfloat.report.SheetOnPaper;
import endfloat.report.pdf.Attached;
import endfloat.report.pdf.PdfForm;
import endfloat.report.pdf.PdfReport;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;

/** A record on paper: its report and its blank form, as pages, as files to keep, as PDF. */
final class ReportRoutes {
  private final Shelf shelf;
  private final LiveDesk desk;

  ReportRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/record/{id}/report", this::report);
    routes.get("/record/{id}/report.pdf", this::pdf);
    routes.get("/record/{id}/form", this::form);
    routes.get("/record/{id}/form.pdf", this::formPdf);
  }

  private void report(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    SheetOnPaper sheet = PaperView.of(saved(id), photographs(id));
    boolean kept = ctx.queryParam("download") != null;
    String html =
        kept ? ReportPage.html(sheet, paper(ctx)) : ReportPage.served(sheet, paper(ctx), id);
    // the file shows itself and does nothing, here as anywhere
    ctx.header("Content-Security-Policy", ReportPage.POLICY + "; frame-ancestors 'none'");
    if (kept) {
      ctx.header("Content-Disposition", "attachment; filename=\"" + id.text() + ".html\"");
    }
    ctx.contentType("text/html; charset=utf-8").result(html);
  }

  private void pdf(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    InvestigationRecord record = saved(id);
    Attached file = new Attached(id.text() + ".json", shelf.bytes(id));
    // the sheet is let go of: edits go on while the PDF is made
    SheetOnPaper sheet = PaperView.of(record, photographs(id));
    PaperSize paper = paper(ctx);
    PaperAnswer.pdf(ctx, id.text() + ".pdf", stop -> PdfReport.of(sheet, paper, file, stop));
  }

  private Photographs photographs(RecordId id) {
    return Photographs.of(shelf.files(), shelf.place(id));
  }

  private void form(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    SheetOnPaper sheet = PaperView.of(saved(id));
    ctx.header("Content-Security-Policy", ReportPage.POLICY + "; frame-ancestors 'none'");
    ctx.contentType("text/html; charset=utf-8");
    ctx.result(FormPage.served(sheet, paper(ctx), limits(ctx), id));
  }

  private void formPdf(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    SheetOnPaper sheet = PaperView.of(saved(id));
    PaperSize paper = paper(ctx);
    boolean limits = limits(ctx);
    PaperAnswer.pdf(ctx, id.text() + ".form.pdf", stop -> PdfForm.of(sheet, paper, limits, stop));
  }

  private static boolean limits(Context ctx) {
    return "1".equals(ctx.queryParam("limits"));
  }

  static PaperSize paper(Context ctx) {
    return "letter".equals(ctx.queryParam("paper")) ? PaperSize.LETTER : PaperSize.A4;
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
