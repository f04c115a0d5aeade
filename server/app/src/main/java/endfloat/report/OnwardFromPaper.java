package endfloat.report;

import endfloat.record.RecordId;

/** Where a served page of paper leads: back to its sheet, to a PDF of it, to a file to keep. */
final class OnwardFromPaper {
  private final Markup out = new Markup();
  private final String page;
  private final String asked;
  private final boolean letter;
  private final boolean limits;

  private OnwardFromPaper(RecordId id, String page, PaperSize paper, boolean limits) {
    this("/record/" + id.text() + "/" + page, "", paper, limits, "/sheet/" + id.text(), "Sheet");
  }

  private OnwardFromPaper(
      String page, String asked, PaperSize paper, boolean limits, String back, String words) {
    this.page = page;
    this.asked = asked;
    this.letter = paper == PaperSize.LETTER;
    this.limits = limits;
    out.start("nav", "class", "onward", "aria-label", "Ways onward");
    link(back, words);
    link(address(".pdf", letter, limits), letter ? "PDF, Letter" : "PDF, A4");
    link(address("", !letter, limits), letter ? "For A4 paper" : "For Letter paper");
  }

  static String ofReport(RecordId id, PaperSize paper) {
    OnwardFromPaper ways = new OnwardFromPaper(id, "report", paper, false);
    ways.link(ways.address("", ways.letter, false, "download"), "Keep as a file");
    return ways.out.end().finished();
  }

  /**
   * @param query says what is compared
   */
  static String ofComparison(String query, PaperSize paper) {
    String back = "/compare?" + query;
    OnwardFromPaper ways =
        new OnwardFromPaper("/compare/report", "&" + query, paper, false, back, "Comparison");
    ways.link(ways.address("", ways.letter, false, "download"), "Keep as a file");
    return ways.out.end().finished();
  }

  static String ofForm(RecordId id, PaperSize paper, boolean limits) {
    OnwardFromPaper ways = new OnwardFromPaper(id, "form", paper, limits);
    ways.link(ways.address("", ways.letter, !limits), limits ? "Without limits" : "With limits");
    ways.link("/api/records/" + id.text() + "/readings.csv", "As CSV");
    return ways.out.end().finished();
  }

  private String address(String ending, boolean onLetter, boolean withLimits, String... more) {
    StringBuilder query = new StringBuilder(asked);
    if (onLetter) {
      query.append("&paper=letter");
    }
    if (withLimits) {
      query.append("&limits=1");
    }
    for (String one : more) {
      query.append('&').append(one);
    }
    return page + ending + (query.length() == 0 ? "" : "?" + query.substring(1));
  }

  private void link(String to, String words) {
    out.start("a", "href", to).text(words).end().text(" ");
  }
}
