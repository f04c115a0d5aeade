package endfloat.report;

import endfloat.record.RecordId;
import endfloat.record.TitleBlock;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A record as a report: one file of HTML that is well-formed XML too, with faces and pictures
 * inside, without script, that opens by itself in any browser and prints on A4 or Letter.
 */
public final class ReportPage {
  private static final Pattern LINK = Pattern.compile(" href=\"#([^\"]*)\"");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");

  /** What the file may do wherever it is opened: show itself. */
  public static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:";

  private ReportPage() {}

  /** The report of a sheet. */
  public static String html(SheetOnPaper sheet, PaperSize paper) {
    return page(sheet, PageLook.css(paper, Strip.of(sheet.record())), "");
  }

  /**
   * The same with ways onward above it, for a reader whom Endfloat serves.
   *
   * @param id of the record
   */
  public static String served(SheetOnPaper sheet, PaperSize paper, RecordId id) {
    String ways = OnwardFromPaper.ofReport(id, paper);
    return page(sheet, PageLook.css(paper, Strip.of(sheet.record())), ways);
  }

  /** The same markup for the layout that makes a PDF of it, which brings its own faces. */
  public static String forSheets(SheetOnPaper sheet, PaperSize paper) {
    return page(sheet, PageLook.forSheets(paper, Strip.of(sheet.record())), "");
  }

  private static String page(SheetOnPaper sheet, String css, String before) {
    Markup out = new Markup();
    out.made(before);
    out.start("main", "class", "report");
    new FirstSheet(out, sheet).titleBlock();
    new ClauseParts(out, sheet).write();
    new Appendix(out, sheet).write();
    String body = resolved(out.end().finished());
    TitleBlock block = sheet.record().titleBlock();
    Strip strip = Strip.of(sheet.record());
    String about = block.subtitle().isBlank() ? strip.engine() : block.subtitle();
    return Paper.page("Report " + strip.named(), block.prepared(), about, css, body);
  }

  /** A link that leads nowhere on paper stands as plain text. */
  private static String resolved(String body) {
    Set<String> ids = new HashSet<>();
    Matcher id = ID.matcher(body);
    while (id.find()) {
      ids.add(id.group(1));
    }
    return LINK.matcher(body)
        .replaceAll(
            link -> ids.contains(link.group(1)) ? Matcher.quoteReplacement(link.group()) : "");
  }
}
