package endfloat.report;

/** A verdict as shape and word: between, on, or beyond two strokes. */
final class VerdictMark {
  private VerdictMark() {}

  /** Shape and word. */
  static void write(Markup out, String verdict) {
    if (!verdict.isEmpty()) {
      out.start("span", "class", "verdict " + verdict.replace(' ', '-'));
      shape(out, verdict);
      out.text(verdict).end();
    }
  }

  /** The shape alone, where the word stands above it. */
  static void mark(Markup out, String verdict) {
    out.start("span", "class", "verdict " + verdict.replace(' ', '-'));
    shape(out, verdict);
    out.end();
  }

  private static void shape(Markup out, String verdict) {
    // hidden from those who hear the page: the word stands beside it
    out.start(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "vg",
        "viewBox",
        "0 0 26 14",
        "width",
        "26",
        "height",
        "14",
        "aria-hidden",
        "true");
    out.empty("path", "class", "vg-bar", "d", "M4.5 1.5v11M14.5 1.5v11");
    switch (verdict) {
      case "within" -> out.empty("circle", "class", "vg-mk", "cx", "9.5", "cy", "7", "r", "3");
      case "not proven" ->
          out.empty("path", "class", "vg-open", "d", "M14.5 2.8L18.7 7L14.5 11.2L10.3 7Z");
      default -> out.empty("path", "class", "vg-mk", "d", "M20.4 2.2L24.4 10.4L16.4 10.4Z");
    }
    out.end();
  }
}
