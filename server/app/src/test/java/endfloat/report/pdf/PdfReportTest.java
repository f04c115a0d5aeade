package endfloat.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.report.PaperSize;
import endfloat.report.SheetOnPaper;
import endfloat.report.ShippedRecords;
import endfloat.review.Agree;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The report of every record that ships, as PDF: whole, on its sheets, with the record inside. */
class PdfReportTest {
  /** One PDF a record serves all tests: the first takes a second or two. */
  private static final Map<Path, byte[]> MADE = new TreeMap<>();

  static List<Path> records() {
    return ShippedRecords.all();
  }

  private static byte[] pdf(Path file) {
    return MADE.computeIfAbsent(file, f -> made(f, PaperSize.A4));
  }

  private static byte[] made(Path file, PaperSize paper) {
    Attached attached = new Attached(file.getFileName().toString(), ShippedRecords.bytes(file));
    return PdfReport.of(ShippedRecords.sheet(file), paper, attached, Stop.NEVER);
  }

  /** All texts without their blanks: where a line is broken is no matter. */
  private static String words(PDDocument document) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(false);
    return stripper.getText(document).replaceAll("[\\s\u00a0]+", "");
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }

  @ParameterizedTest
  @MethodSource("records")
  void saysEveryTitleOfAClauseAndEveryFigure(Path file) throws IOException {
    SheetOnPaper sheet = ShippedRecords.sheet(file);
    try (PDDocument document = Loader.loadPDF(pdf(file))) {
      String words = words(document);
      for (Cell cell : sheet.record().cells()) {
        assertTrue(words.contains(bare(cell.title())), cell.number() + " " + cell.title());
      }
      int figures = 0;
      for (JsonNode figure : sheet.view().path("figures")) {
        String cell = figure.path("cell").asText();
        String kind = sheet.record().cell(cell).map(Cell::kind).orElse("");
        if (figure.has("value") && kind.matches("working|readings") && !figure.has("elements")) {
          String text = figure.get("value").asText();
          assertTrue(words.contains(bare(text)), figure.path("name").asText() + " " + text);
          figures++;
        }
      }
      assertTrue(figures > 0, file + " shows no figure");
    }
  }

  @ParameterizedTest
  @MethodSource("records")
  void theRecordInsideIsTheRecordAndItsFiguresAgree(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(file))) {
      var catalogue = document.getDocumentCatalog();
      PDComplexFileSpecification inside =
          catalogue.getNames().getEmbeddedFiles().getNames().values().iterator().next();
      COSArray associated = (COSArray) catalogue.getCOSObject().getDictionaryObject("AF");
      COSDictionary first = (COSDictionary) associated.getObject(0);
      assertEquals("Source", first.getNameAsString("AFRelationship"));
      assertEquals(inside.getCOSObject(), first);
      assertEquals("application/json", inside.getEmbeddedFile().getSubtype());
      byte[] json = inside.getEmbeddedFile().toByteArray();
      assertArrayEquals(ShippedRecords.bytes(file), json);
      Agree.Report agree = Agree.of(InvestigationRecord.read(json), false);
      assertTrue(agree.agrees() && agree.compared() > 0, agree.differences().toString());
    }
  }

  @ParameterizedTest
  @MethodSource("records")
  void nothingIsOutsideTheBordersOfItsSheetAndEachHasItsNumber(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(file))) {
      int sheets = document.getNumberOfPages();
      for (int number = 1; number <= sheets; number++) {
        Borders borders = new Borders(document.getPage(number - 1));
        borders.setStartPage(number);
        borders.setEndPage(number);
        String words = bare(borders.getText(document));
        assertEquals(List.of(), borders.outside, file + ", sheet " + number);
        assertTrue(words.contains("Sheet" + number + "of" + sheets), file + ", sheet " + number);
        String record = ShippedRecords.record(file).titleBlock().recordNumber();
        assertTrue(words.contains(bare(record)), file + ", sheet " + number);
      }
    }
  }

  /** On sheets of either size: what a head heads begins beneath it. */
  @ParameterizedTest
  @MethodSource("records")
  void noHeadStandsAloneAtTheFootOfASheet(Path file) throws IOException {
    List<String> heads =
        ShippedRecords.record(file).cells().stream()
            .map(cell -> bare(cell.number() + cell.title()))
            .toList();
    int sheets = 0;
    for (byte[] pdf : List.of(pdf(file), made(file, PaperSize.LETTER))) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        for (int number = 1; number <= document.getNumberOfPages(); number++) {
          stripper.setStartPage(number);
          stripper.setEndPage(number);
          List<String> lines = stripper.getText(document).lines().map(PdfReportTest::bare).toList();
          int foot = lines.size() - 1;
          while (!lines.get(foot).startsWith("Prepared:")) {
            foot--;
          }
          assertFalse(heads.contains(lines.get(foot - 1)), file + ", sheet " + number);
          sheets++;
        }
      }
    }
    assertTrue(sheets > 2, "no sheet was looked at");
  }

  /** Collects texts that come nearer to the edge of the sheet than the margins allow. */
  private static final class Borders extends PDFTextStripper {
    private final List<String> outside = new ArrayList<>();
    private final PDRectangle box;

    Borders(PDPage page) {
      this.box = page.getMediaBox();
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      float right = text.getX() + text.getWidth();
      float margin = 40;
      if (text.getX() < margin
          || right > box.getWidth() - margin
          || text.getY() < 20
          || text.getY() > box.getHeight() - 20) {
        outside.add(text.getUnicode() + " at " + text.getX() + ", " + text.getY());
      }
      super.processTextPosition(text);
    }
  }

  /** The glyph of no character stands where a face lacks one; text would be lost to the reader. */
  @ParameterizedTest
  @MethodSource("records")
  void everyCharacterIsInItsFaceAndEveryFaceIsInside(Path file) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(file))) {
      assertTrue(words(document).indexOf('\uFFFD') < 0);
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          var font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("records")
  void theOutlineLeadsToEveryClause(Path file) throws IOException {
    InvestigationRecord record = ShippedRecords.record(file);
    try (PDDocument document = Loader.loadPDF(pdf(file))) {
      List<String> marks = new ArrayList<>();
      for (PDOutlineItem one : document.getDocumentCatalog().getDocumentOutline().children()) {
        gather(one, marks);
      }
      for (Cell cell : record.cells()) {
        String mark = cell.number() + " " + cell.title();
        assertTrue(marks.contains(mark), mark + " is not among " + marks);
      }
      assertEquals(record.titleBlock().prepared(), document.getDocumentInformation().getAuthor());
      String title = document.getDocumentInformation().getTitle();
      assertTrue(title.contains(record.titleBlock().title()), title);
    }
  }

  private static void gather(PDOutlineItem item, List<String> into) {
    into.add(item.getTitle());
    item.children().forEach(child -> gather(child, into));
  }

  /** ISO 19005-3 level A and ISO 14289-1, by veraPDF, an outside opinion. */
  @Test
  void isAnArchivalAndAccessibleDocument() throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    byte[] pdf = pdf(ofSmallestSize());
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1)) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        ValidationResult result = validator.validate(parser);
        assertTrue(result.isCompliant(), flavour + ": " + result.getFailedChecks());
      }
    }
  }

  /** Its checks take time; notes, lists, links, formulas, strips and tables are in every record. */
  private static Path ofSmallestSize() {
    return records().stream()
        .min(Comparator.comparing(file -> ShippedRecords.bytes(file).length))
        .orElseThrow();
  }

  @Test
  void letterSheetsAreOfLetterSize() throws IOException {
    byte[] pdf = made(records().get(records().size() - 1), PaperSize.LETTER);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        assertEquals(612, page.getMediaBox().getWidth(), 0.5);
        assertEquals(792, page.getMediaBox().getHeight(), 0.5);
      }
    }
  }

  @Test
  void stopsOnceItIsNotWantedAnyMore() {
    Path file = records().get(0);
    AtomicInteger asked = new AtomicInteger();
    Stop afterTheLayout = () -> asked.incrementAndGet() > 3;
    Attached attached = new Attached("a.json", new byte[] {'{', '}'});
    SheetOnPaper sheet = ShippedRecords.sheet(file);
    assertThrows(
        Stop.StoppedException.class,
        () -> PdfReport.of(sheet, PaperSize.A4, attached, afterTheLayout));
  }
}
