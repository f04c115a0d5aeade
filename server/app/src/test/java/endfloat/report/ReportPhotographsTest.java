package endfloat.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.view.PaperView;
import endfloat.record.CameraPhoto;
import endfloat.record.DiskFiles;
import endfloat.record.InvestigationRecord;
import endfloat.record.PhotoMetadata;
import endfloat.record.Photographs;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Photographs in a report: inside it, captioned, told by hash, and silent on where they were taken.
 */
class ReportPhotographsTest {
  private static final Pattern IMAGE =
      Pattern.compile("<img src=\"data:image/jpeg;base64,([^\"]*)\" alt=\"([^\"]*)\"");

  @TempDir private Path folder;

  private Photographs kept() {
    return Photographs.beside(new DiskFiles(), folder.resolve("w6.json"));
  }

  private static InvestigationRecord record(String photo, String caption) {
    Path file = ShippedRecords.all().get(0);
    ObjectNode tree = ShippedRecords.record(file).tree().deepCopy();
    ObjectNode clause = tree.withArray("cells").addObject();
    clause.put("id", "c99").put("kind", "photo").put("title", "The chips");
    clause.put("photo", photo).put("caption", caption);
    return InvestigationRecord.of(tree);
  }

  private String report(InvestigationRecord record) {
    return ReportPage.html(PaperView.of(record, kept()), PaperSize.A4);
  }

  @Test
  void aPhotographIsInsideWithItsCaptionAndWithoutItsPlace() throws Exception {
    byte[] camera = CameraPhoto.jpeg();
    String name = kept().keep(camera);
    String html = report(record(name, "Heel of tooth 3, scale 5 mm"));
    Matcher image = IMAGE.matcher(html);
    assertTrue(image.find());
    byte[] shown = Base64.getDecoder().decode(image.group(1));
    assertArrayEquals(PhotoMetadata.stripped(camera), shown);
    assertFalse(
        new String(shown, StandardCharsets.ISO_8859_1).contains("GPS"), "where it was taken");
    assertEquals("Heel of tooth 3, scale 5 mm", image.group(2));
    assertTrue(html.contains("<td class=\"hash\">" + name.substring(0, 64) + "</td>"));
    assertArrayEquals(camera, Files.readAllBytes(folder.resolve("w6.files").resolve(name)));
  }

  @Test
  void onePhotographThatIsMissingOrAlteredDoesNotCostTheReport() throws Exception {
    String name = kept().keep(CameraPhoto.jpeg());
    Path file = folder.resolve("w6.files").resolve(name);
    Files.write(file, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0});
    String altered = report(record(name, ""));
    assertTrue(altered.contains("Not shown: the photograph " + name + " was altered"), "altered");
    Files.delete(file);
    assertTrue(report(record(name, "")).contains("Not shown: there is no photograph of that name"));
    assertTrue(report(record("", "")).contains("No photograph was put here."));
  }
}
