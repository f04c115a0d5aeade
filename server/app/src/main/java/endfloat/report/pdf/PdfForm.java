package endfloat.report.pdf;

import endfloat.report.FormPage;
import endfloat.report.PaperSize;
import endfloat.report.SheetOnPaper;

/** A blank form as PDF, by the markup of {@link FormPage}. */
public final class PdfForm {
  private PdfForm() {}

  /**
   * @param limits whether they stand on it
   * @throws Stop.StoppedException once a stop is asked
   */
  public static byte[] of(SheetOnPaper sheet, PaperSize paper, boolean limits, Stop stop) {
    return PdfSheets.of(FormPage.forSheets(sheet, paper, limits), stop, document -> {});
  }
}
