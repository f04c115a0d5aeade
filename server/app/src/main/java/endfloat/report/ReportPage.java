package endfloat.report;

import endfloat.working.typeset.XmlText;
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
    Strip strip = Strip.of(sheet.record());
    Markup out = new Markup();
    out.start("main", "class", "report");
    new FirstSheet(out, sheet).titleBlock();
    new ClauseParts(out, sheet).write();
    new Appendix(out, sheet).write();
    String body = resolved(out.end().finished());
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
        + "<meta charset=\"utf-8\"/>\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
        + XmlText.escaped("Report " + strip.named())
        + "</title>\n<style>\n"
        + PageLook.css(paper, strip)
        + "</style>\n</head>\n<body>\n"
        + body
        + "\n</body>\n</html>\n";
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
