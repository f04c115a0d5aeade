package endfloat.report.pdf;

import endfloat.report.PaperSize;
import endfloat.report.ReportPage;
import endfloat.report.SheetOnPaper;

/** The report of a record as PDF, by the markup of {@link ReportPage}, with the record inside. */
public final class PdfReport {
  private PdfReport() {}

  /**
   * @param record goes along inside, byte for byte
   * @throws Stop.StoppedException once a stop is asked
   */
  public static byte[] of(SheetOnPaper sheet, PaperSize paper, Attached record, Stop stop) {
    return PdfSheets.of(ReportPage.forSheets(sheet, paper), stop, record::to);
  }
}
