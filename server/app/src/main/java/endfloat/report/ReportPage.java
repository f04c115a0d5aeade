package endfloat.report;

import endfloat.record.TitleBlock;
import endfloat.working.typeset.XmlText;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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
    TitleBlock block = sheet.record().titleBlock();
    Markup out = new Markup();
    out.start("main", "class", "report");
    FirstSheet first = new FirstSheet(out, sheet);
    first.titleBlock();
    first.verdicts();
    first.cautions();
    new ClauseParts(out, sheet).write();
    new Appendix(out, sheet).write();
    String body = resolved(out.end().finished());
    String number = joined(", ", block.recordNumber(), rev(block.revision()), block.title());
    String engine = joined(", ", block.engineType(), block.engineSerial(), block.date());
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
        + "<meta charset=\"utf-8\"/>\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + POLICY
        + "\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
        + XmlText.escaped(joined(" ", "Report", number))
        + "</title>\n<style>\n"
        + PageLook.css(paper, number, engine)
        + "</style>\n</head>\n<body>\n"
        + body
        + "\n</body>\n</html>\n";
  }

  private static String rev(String revision) {
    return revision.isBlank() ? "" : "rev " + revision;
  }

  private static String joined(String between, String... texts) {
    return List.of(texts).stream().filter(t -> !t.isBlank()).collect(Collectors.joining(between));
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
