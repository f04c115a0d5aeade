package endfloat.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.http.view.PaperView;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import endfloat.report.PaperSize;
import endfloat.report.SheetOnPaper;
import endfloat.report.ShippedRecords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The blank form as PDF: made of every record, every box once, on whichever sheet it falls. */
class PdfFormTest {
  static List<Path> records() {
    return ShippedRecords.all();
  }

  private static String words(SheetOnPaper sheet, PaperSize paper) throws IOException {
    byte[] pdf = PdfForm.of(sheet, paper, false, Stop.NEVER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @ParameterizedTest
  @MethodSource("records")
  void saysWhatIsToBeReadOfEveryRecordThatShips(Path file) throws IOException {
    String words = words(ShippedRecords.sheet(file), PaperSize.A4).replace(" ", "");
    for (Cell cell : ShippedRecords.record(file).cells()) {
      for (Reading reading : cell.readings()) {
        assertTrue(words.contains(reading.what().replace(" ", "")), reading.what());
      }
    }
  }

  /** Bands of boxes that begin exactly with a sheet were set on the sheet before, and failed. */
  @ParameterizedTest
  @CsvSource({"7, LETTER", "13, A4", "20, A4", "25, LETTER", "40, A4"})
  void everyStationHasItsBoxOnceWhereverASheetEnds(int stations, PaperSize paper)
      throws IOException {
    String entries =
        IntStream.rangeClosed(1, stations)
            .mapToObj(i -> "{\"at\":{\"tooth\":\"" + i + "\"},\"taken\":[]}")
            .collect(Collectors.joining(","));
    String readings =
        IntStream.rangeClosed(1, 3)
            .mapToObj(
                i ->
                    "{\"name\":\"x"
                        + i
                        + "\",\"unit\":\"mm\",\"axes\":[\"tooth\"],\"entries\":["
                        + entries
                        + "]}")
            .collect(Collectors.joining(","));
    String json =
        "{\"format\":\"endfloat-record\",\"version\":1,\"title_block\":{\"title\":\"T\"},\"cells\":"
            + "[{\"id\":\"c1\",\"kind\":\"readings\",\"readings\":["
            + readings
            + "]}]}";
    InvestigationRecord record = InvestigationRecord.read(json.getBytes(StandardCharsets.UTF_8));
    Matcher tooth = Pattern.compile("tooth (\\d+)").matcher(words(PaperView.of(record), paper));
    List<String> heads = tooth.results().map(found -> found.group(1)).sorted().toList();
    List<String> asked =
        IntStream.range(0, 3 * stations).mapToObj(i -> "" + (i / 3 + 1)).sorted().toList();
    assertEquals(asked, heads);
  }
}
