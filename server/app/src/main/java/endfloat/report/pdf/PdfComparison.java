package endfloat.report.pdf;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.report.ComparisonPage;
import endfloat.report.PaperSize;

/** Two records side by side as PDF, by the markup of {@link ComparisonPage}. */
public final class PdfComparison {
  private PdfComparison() {}

  /**
   * @param comparison as its page is sent it
   * @throws Stop.StoppedException once a stop is asked
   */
  public static byte[] of(JsonNode comparison, PaperSize paper, Stop stop) {
    return PdfSheets.of(ComparisonPage.forSheets(comparison, paper), stop, document -> {});
  }
}
