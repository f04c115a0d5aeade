package endfloat.report;

import endfloat.record.Cell;
import endfloat.record.PhotoMetadata;
import endfloat.record.Photographs;
import endfloat.record.RecordException;
import java.util.Base64;
import java.util.List;

/**
 * Photographs inside the report, without where and when they were taken and with what; the appendix
 * has the hash of the file that is kept as it came.
 */
final class PhotoPart {
  private final Markup out;
  private final SheetOnPaper sheet;

  PhotoPart(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  void write(Cell clause) {
    String name = name(clause);
    if (name.isEmpty()) {
      out.element("p", "quiet", "No photograph was put here.");
      return;
    }
    String caption = caption(clause);
    out.start("div", "class", "figure photograph");
    try {
      Photographs kept = sheet.photographs().orElseThrow(PhotoPart::notThere);
      Photographs.Photograph photo = kept.read(name);
      String data = Base64.getEncoder().encodeToString(PhotoMetadata.stripped(photo.bytes()));
      String alt = caption.isBlank() ? clause.title() : caption;
      out.empty(
          "img",
          "src",
          "data:" + photo.type() + ";base64," + data,
          "alt",
          alt.isBlank() ? "Photograph of clause " + clause.number() : alt);
    } catch (RecordException e) {
      // a report that cannot show a photograph says so; it does not stop for it
      out.element("p", "wrong", "Not shown: " + e.getMessage() + ".");
    }
    out.some("p", "under", caption);
    out.end();
  }

  private static RecordException notThere() {
    return new RecordException(
        RecordException.Reason.NOT_FOUND, "the photographs of the record are not beside it");
  }

  private static String name(Cell clause) {
    return clause.source().path("photo").asText();
  }

  private static String caption(Cell clause) {
    return clause.source().path("caption").asText();
  }

  /** Which file each is, by its hash. */
  void register() {
    List<Cell> shown =
        sheet.record().cells().stream()
            .filter(cell -> cell.kind().equals("photo") && !name(cell).isEmpty())
            .toList();
    if (shown.isEmpty()) {
      return;
    }
    out.table("register", "", "Photographs; shown without what the camera wrote beside them");
    out.start("thead").start("tr");
    for (String head : List.of("Clause", "Shows", "SHA-256 of the file as it came")) {
      out.start("th", "scope", "col").text(head).end();
    }
    out.end().end().start("tbody");
    for (Cell cell : shown) {
      out.start("tr").start("th", "scope", "row").text(cell.number()).end();
      out.element("td", "", caption(cell).isBlank() ? cell.title() : caption(cell));
      out.element("td", "hash", name(cell).replaceFirst("\\..*", "")).end();
    }
    out.end().end();
  }
}
