package endfloat.report;

import endfloat.working.typeset.XmlText;

/** The frame of a page on paper: HTML and well-formed XML at once, styles inside, no script. */
final class Paper {
  private Paper() {}

  static String page(String title, String author, String description, String css, String body) {
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
        + "<meta charset=\"utf-8\"/>\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\""
        + ReportPage.POLICY
        + "\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
        + XmlText.escaped(title)
        + "</title>\n"
        + meta("author", author)
        + meta("description", description)
        + "<style>\n"
        + css
        + "</style>\n</head>\n<body>\n"
        + body
        + "\n</body>\n</html>\n";
  }

  private static String meta(String name, String content) {
    return content.isBlank()
        ? ""
        : "<meta name=\"" + name + "\" content=\"" + XmlText.escaped(content) + "\"/>\n";
  }
}
