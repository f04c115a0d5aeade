package endfloat.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;

/** A workbook as ECMA-376 lays it out, as little of it as makes one. */
class WorkbookReaderTest {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";

  private static byte[] workbook(String rows) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(
          zip,
          "[Content_Types].xml",
          "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'>"
              + "<Default Extension='xml' ContentType='application/xml'/>"
              + "<Default Extension='rels'"
              + " ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
              + "<Override PartName='/xl/workbook.xml' ContentType="
              + "'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'/>"
              + "<Override PartName='/xl/styles.xml' ContentType="
              + "'application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml'/>"
              + "</Types>");
      put(zip, "_rels/.rels", related("officeDocument", "xl/workbook.xml"));
      put(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns='"
              + MAIN
              + "' xmlns:r='"
              + OFFICE
              + "'><sheets><sheet name='Fleet' sheetId='1' r:id='rId1'/></sheets></workbook>");
      put(
          zip,
          "xl/_rels/workbook.xml.rels",
          "<Relationships xmlns='"
              + PACKAGE
              + "'><Relationship Id='rId1' Type='"
              + OFFICE
              + "/worksheet' Target='worksheets/sheet1.xml'/><Relationship Id='rId2' Type='"
              + OFFICE
              + "/styles' Target='styles.xml'/></Relationships>");
      put(
          zip,
          "xl/styles.xml",
          "<styleSheet xmlns='"
              + MAIN
              + "'><cellXfs count='2'><xf numFmtId='0'/><xf numFmtId='14'/></cellXfs></styleSheet>");
      put(
          zip,
          "xl/worksheets/sheet1.xml",
          "<worksheet xmlns='" + MAIN + "'><sheetData>" + rows + "</sheetData></worksheet>");
    }
    return bytes.toByteArray();
  }

  private static String related(String type, String target) {
    return "<Relationships xmlns='"
        + PACKAGE
        + "'><Relationship Id='rId1' Type='"
        + OFFICE
        + "/"
        + type
        + "' Target='"
        + target
        + "'/></Relationships>";
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(("<?xml version='1.0' encoding='UTF-8'?>" + text).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static String text(String at, String text) {
    return "<c r='" + at + "' t='inlineStr'><is><t>" + text + "</t></is></c>";
  }

  /**
   * 46083 days after the epoch of workbooks is 2026-03-02; a double keeps 0.3 with all its noise.
   */
  @Test
  void theFirstSheetIsATable() throws IOException {
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
