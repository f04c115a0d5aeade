package endfloat.table;

import static endfloat.table.Workbooks.text;
import static endfloat.table.Workbooks.workbook;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is read of a workbook, its sheets and the formats of its cells. */
class WorkbookReaderTest {
  /**
   * 46083 days after the epoch of workbooks is 2026-03-02; a double keeps 0.3 with all its noise.
   */
  @Test
  void aSheetIsATable() throws IOException {
    byte[] file =
        workbook(
            "<row r='1'>"
                + text("A1", "lash [mm]")
                + text("B1", "batch")
                + text("C1", "fitted")
                + text("D1", "failed")
                + "</row><row r='2'><c r='A2'><v>0.30000000000000004</v></c>"
                + text("B2", "B1")
                + "<c r='C2' s='1'><v>46083</v></c><c r='D2' t='b'><v>1</v></c></row>"
                + "<row r='3'><c r='A3'><v>12</v></c><c r='D3' t='b'><v>0</v></c></row>");
    assertTrue(WorkbookReader.isWorkbook(file));
    ReadTable table = WorkbookReader.read(file, TableAsked.PLAIN);
    assertEquals(List.of(), table.problems());
    assertEquals(
        List.of(FieldKind.NUMBER, FieldKind.TEXT, FieldKind.DATE, FieldKind.TRUTH),
        table.columns().stream().map(ReadTable.ReadColumn::kind).toList());
    assertEquals(List.of("0.30000000000000004", "12"), table.columns().get(0).texts());
    assertEquals(List.of("B1", ""), table.columns().get(1).texts());
    assertEquals(List.of("2026-03-02", ""), table.columns().get(2).texts());
    assertEquals(List.of("yes", "no"), table.columns().get(3).texts());
  }

  private static final String WEAR =
      "<row r='1'>" + text("A1", "lash [mm]") + "</row><row r='2'><c r='A2'><v>0.2</v></c></row>";

  private static final String HOURS =
      "<row r='1'>" + text("A1", "hours [h]") + "</row><row r='2'><c r='A2'><v>412</v></c></row>";

  @Test
  void ofSeveralSheetsWithSomethingInThemNoneIsGuessed() throws IOException {
    byte[] file =
        workbook(
            List.of(
                Map.entry("Wear", WEAR),
                Map.entry("Empty", "<row r='3'>" + text("B3", " ") + "</row>"),
                Map.entry("Hours", HOURS)));
    assertEquals(List.of("Wear", "Hours"), WorkbookReader.sheets(file));
    ReadTable none = WorkbookReader.read(file, TableAsked.PLAIN);
    assertEquals(List.of(), none.columns());
    assertEquals(
        List.of("several sheets have something in them, say which one: Wear, Hours"), said(none));
    ReadTable hours = WorkbookReader.read(file, TableAsked.PLAIN.ofSheet("Hours"));
    assertEquals(List.of("412"), hours.columns().get(0).texts());
    assertEquals(
        List.of("there is no sheet Fleet with anything in it: Wear, Hours"),
        said(WorkbookReader.read(file, TableAsked.PLAIN.ofSheet("Fleet"))));
  }

  @Test
  void theOnlySheetWithSomethingInItNeedsNoName() throws IOException {
    byte[] file = workbook(List.of(Map.entry("Cover", ""), Map.entry("Hours", HOURS)));
    assertEquals(
        List.of("412"), WorkbookReader.read(file, TableAsked.PLAIN).columns().get(0).texts());
  }

  /** 18.30 of ECMA-376: a format may say a colour, and [Red] has a d in it. */
  @Test
  void aNumberIsNoDateForTheColourOfItsFormat() throws IOException {
    byte[] file =
        workbook(
            "<row r='1'>"
                + text("A1", "loss")
                + "</row><row r='2'><c r='A2' s='2'><v>-12.5</v></c></row>");
    assertEquals(
        List.of("-12.5"), WorkbookReader.read(file, TableAsked.PLAIN).columns().get(0).texts());
  }

  private static List<String> said(ReadTable table) {
    return table.problems().stream().map(Offence::text).toList();
  }

  @Test
  void whatIsNoWorkbookIsRefused() {
    byte[] broken = "PK\u0003\u0004 and nothing else".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        List.of("the workbook cannot be read; save the sheet as CSV in UTF-8"),
        WorkbookReader.read(broken, TableAsked.PLAIN).problems().stream()
            .map(Offence::text)
            .toList());
  }
}
