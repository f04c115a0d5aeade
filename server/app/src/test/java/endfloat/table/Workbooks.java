package endfloat.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks as ECMA-376 lays them out, as little of it as makes one. */
public final class Workbooks {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";

  private Workbooks() {}

  /** One sheet, Fleet, of these rows. */
  static byte[] workbook(String rows) throws IOException {
    return workbook(List.of(Map.entry("Fleet", rows)));
  }

  /**
   * @param sheets name and rows of each
   */
  public static byte[] workbook(List<Map.Entry<String, String>> sheets) throws IOException {
    StringBuilder named = new StringBuilder();
    StringBuilder related = new StringBuilder(relation(0, "styles", "styles.xml"));
    List<String[]> files = new ArrayList<>();
    for (int i = 1; i <= sheets.size(); i++) {
      String file = "worksheets/sheet" + i + ".xml";
      named.append("<sheet name='").append(sheets.get(i - 1).getKey()).append("' sheetId='");
      named.append(i).append("' r:id='rId").append(i).append("'/>");
      related.append(relation(i, "worksheet", file));
      String rows = sheets.get(i - 1).getValue();
      files.add(
          new String[] {
            "xl/" + file,
            "<worksheet xmlns='" + MAIN + "'><sheetData>" + rows + "</sheetData></worksheet>"
          });
    }
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
      put(zip, "_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
      put(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns='"
              + MAIN
              + "' xmlns:r='"
              + OFFICE
              + "'><sheets>"
              + named
              + "</sheets></workbook>");
      put(zip, "xl/_rels/workbook.xml.rels", relations(related.toString()));
      put(
          zip,
          "xl/styles.xml",
          "<styleSheet xmlns='"
              + MAIN
              + "'><numFmts count='1'><numFmt numFmtId='170' formatCode='0.00;[Red]-0.00'/></numFmts>"
              + "<cellXfs count='3'><xf numFmtId='0'/><xf numFmtId='14'/><xf numFmtId='170'/>"
              + "</cellXfs></styleSheet>");
      for (String[] file : files) {
        put(zip, file[0], file[1]);
      }
    }
    return bytes.toByteArray();
  }

  private static String relations(String all) {
    return "<Relationships xmlns='" + PACKAGE + "'>" + all + "</Relationships>";
  }

  private static String relation(int id, String type, String target) {
    return "<Relationship Id='rId"
        + id
        + "' Type='"
        + OFFICE
        + "/"
        + type
        + "' Target='"
        + target
        + "'/>";
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(("<?xml version='1.0' encoding='UTF-8'?>" + text).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /** A cell with a text. */
  public static String text(String at, String text) {
    return "<c r='" + at + "' t='inlineStr'><is><t>" + text + "</t></is></c>";
  }
}
