package endfloat.report;

import endfloat.picture.Ink;
import endfloat.picture.SvgPath;
import endfloat.picture.SvgWriter;
import java.util.Map;

/** Room to sketch on squares of 5 mm, and lines for remarks. */
final class SketchSpace {
  private static final double MILLIMETRE = 96 / 25.4;
  private static final int ACROSS = 35;
  private static final int DOWN = 24;
  private static final int LINES = 6;
  private static final Ink PENCIL =
      Ink.print(
          Map.of(
              "squares",
              Map.of(),
              "square",
              Map.of("fill", "none", "stroke", "#c6d0e6", "stroke-width", "0.7")));

  private final Markup out;

  SketchSpace(Markup out) {
    this.out = out;
  }

  void write() {
    out.start("section", "class", "part sketch", "id", "sketch");
    out.element("h2", "", "Sketch");
    out.element("p", "lead", "Where was it read, and from which side? Mark the numbers in rings.");
    out.made(squares());
    out.end();
    out.start("section", "class", "part remarks", "id", "remarks");
    out.element("h2", "", "Remarks");
    out.start("table", "class", "ruled", "aria-label", "Lines for remarks").start("tbody");
    for (int i = 0; i < LINES; i++) {
      out.start("tr").start("td").end().end();
    }
    out.end().end().end();
  }

  private static String squares() {
    double side = 5 * MILLIMETRE;
    double width = ACROSS * side;
    double height = DOWN * side;
    SvgWriter svg =
        new SvgWriter("squares", width + 1, height + 1, "Squared paper for a sketch", PENCIL);
    SvgPath lines = new SvgPath();
    for (int i = 0; i <= ACROSS; i++) {
      lines.line(0.5 + i * side, 0.5, 0.5 + i * side, 0.5 + height);
    }
    for (int i = 0; i <= DOWN; i++) {
      lines.line(0.5, 0.5 + i * side, 0.5 + width, 0.5 + i * side);
    }
    return svg.path("square", lines).finished();
  }
}
