package endfloat.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.http.view.ComparisonView;
import endfloat.record.InvestigationRecord;
import endfloat.report.PaperSize;
import endfloat.report.ShippedRecords;
import endfloat.review.Comparison;
import endfloat.review.Rerun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The demonstration and its second engine side by side, as PDF. */
class PdfComparisonTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  @Test
  void everyDifferenceStandsThereAndWhatAHeadHeadsFollowsIt() throws IOException {
    InvestigationRecord first = ShippedRecords.record(NOTEBOOKS.resolve("w6-bevel-mesh.json"));
    byte[] csv = Files.readAllBytes(NOTEBOOKS.resolve("w6-bevel-mesh.second-engine.csv"));
    InvestigationRecord second =
        Rerun.run(first, Rerun.Readings.of(csv, "second.csv"), Map.of()).record();
    JsonNode view = ComparisonView.of(Comparison.of(first, second));
    byte[] pdf = PdfComparison.of(view, PaperSize.A4, Stop.NEVER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      String words = stripper.getText(document).replaceAll("\\s+", "");
      int rows = 0;
      for (JsonNode row : view.path("figures")) {
        if (!row.path("standing").asText().equals("none")) {
          String moved = row.path("difference").path("value").asText();
          assertTrue(words.contains(moved), row.path("label").asText() + " " + moved);
          rows++;
        }
      }
      assertTrue(rows > 30, "only " + rows);
      stripper.setSortByPosition(true);
      for (int number = 1; number <= document.getNumberOfPages(); number++) {
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        List<String> lines = stripper.getText(document).lines().map(String::strip).toList();
        int foot = lines.size() - 1;
        while (!lines
            .get(foot)
            .startsWith("A " + view.at("/left/source_hash").asText().charAt(0))) {
          foot--;
        }
        assertEquals(
            "",
            lines
                .get(foot - 1)
                .replaceFirst("^(?!\\d\\s+[A-Z]\\w+ .*(?:differ|otherwise|judged)$).*", ""));
      }
      assertEquals(
          "Judged otherwise",
          document
              .getDocumentCatalog()
              .getDocumentOutline()
              .getFirstChild()
              .getTitle()
              .replaceFirst("^1 ", ""));
    }
  }
}
