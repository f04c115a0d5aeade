package endfloat.report;

/** Sheets that a report is printed on. */
public enum PaperSize {
  A4("A4"),
  LETTER("letter");

  private final String css;

  PaperSize(String css) {
    this.css = css;
  }

  /** As a style sheet names it. */
  String css() {
    return css;
  }
}
