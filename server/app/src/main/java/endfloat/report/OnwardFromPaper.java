package endfloat.report;

import endfloat.record.RecordId;

/** Where a served page of paper leads: back to its sheet, to a PDF of it, to a file to keep. */
final class OnwardFromPaper {
  private OnwardFromPaper() {}

  /**
   * @param page the last part of its address: report or form
   */
  static String of(RecordId id, String page, PaperSize paper) {
    Markup out = new Markup();
    String here = "/record/" + id.text() + "/" + page;
    boolean letter = paper == PaperSize.LETTER;
    String query = letter ? "?paper=letter" : "";
    out.start("nav", "class", "onward", "aria-label", "Ways onward");
    link(out, "/sheet/" + id.text(), "Sheet");
    link(out, here + ".pdf" + query, letter ? "PDF, Letter" : "PDF, A4");
    link(out, letter ? here : here + "?paper=letter", letter ? "For A4 paper" : "For Letter paper");
    link(out, here + "?download" + (letter ? "&paper=letter" : ""), "Keep as a file");
    return out.end().finished();
  }

  private static void link(Markup out, String to, String words) {
    out.start("a", "href", to).text(words).end().text(" ");
  }
}
