package endfloat.picture;

import endfloat.picture.LimitStrip.Limit;
import endfloat.picture.SvgWriter.Anchor;
import java.util.Map;

/**
 * Draws a limit strip: axis, limit strokes with their numbers, hatching where the value must not
 * be, the guard band, the whisker, and the mark.
 */
final class LimitStripDrawing {
  private static final double WIDTH = 148;
  private static final double HEIGHT = 34;
  private static final double AXIS = 11;
  private static final double BASE = 32;

  /** Longer numbers than this would run into each other when centred. */
  private static final int LONG_NUMBER = 11;

  private static final String INK = "#1a2027";

  /** From the middle of one mark to that of another, where an arrow between them can be seen. */
  private static final double ROOM_FOR_ARROW = 14;

  /** The looks of {@code css/strip.css}, in the colours of paper. */
  static final Ink PRINT =
      Ink.print(
          Map.ofEntries(
              Map.entry("strip", Map.of()),
              Map.entry("strip-axis", stroke(INK, "1")),
              Map.entry("strip-limit", stroke(INK, "1.6")),
              Map.entry("strip-beyond", stroke("#8d9197", "0.8")),
              Map.entry("strip-guard", Map.of("fill", "#8d9197", "fill-opacity", "0.28")),
              Map.entry("strip-fresh", Map.of("fill", "#1b3f94")),
              Map.entry("strip-whisker", stroke(INK, "1.4")),
              Map.entry("strip-break", stroke(INK, "1.2")),
              Map.entry("strip-within", Map.of("fill", "#175d41")),
              Map.entry(
                  "strip-not-proven",
                  Map.of("fill", "#ffffff", "stroke", "#7a4f00", "stroke-width", "2")),
              Map.entry("strip-outside", Map.of("fill", "#a2221a")),
              Map.entry(
                  "strip-before", Map.of("fill", "#ffffff", "stroke", INK, "stroke-width", "1.4")),
              Map.entry("strip-arrow", stroke(INK, "1.2")),
              Map.entry(
                  "strip-number",
                  Map.of("fill", "#434a53", "font-size", "11.5", "font-family", "sans-serif"))));

  private final LimitStrip strip;
  private final StripScale scale;
  private final SvgWriter svg;
  private Double before;
  private LimitStrip.Mark markBefore;

  LimitStripDrawing(LimitStrip strip, Ink ink) {
    this.strip = strip;
    this.scale = new StripScale(strip);
    this.svg = new SvgWriter("strip", WIDTH, HEIGHT, strip.label(), ink);
  }

  LimitStripDrawing from(double value, LimitStrip.Mark mark) {
    before = value;
    markBefore = mark;
    return this;
  }

  private static Map<String, String> stroke(String colour, String width) {
    return Map.of("fill", "none", "stroke", colour, "stroke-width", width);
  }

  String svg() {
    beyond();
    guard();
    fresh();
    svg.path("strip-axis", new SvgPath().line(StripScale.LEFT, AXIS, StripScale.RIGHT, AXIS));
    limits();
    whisker();
    breaks();
    if (before != null) {
      before();
    }
    shape(
        "strip-" + strip.verdict().word().replace(' ', '-'),
        strip.verdict(),
        scale.markAt(strip.value()));
    numbers();
    return svg.finished();
  }

  private void beyond() {
    SvgPath hatching = new SvgPath();
    if (strip.low() != null) {
      hatching.hatch(StripScale.LEFT, 7, scale.at(strip.low().at()), 15, 4);
    }
    if (strip.high() != null) {
      hatching.hatch(scale.at(strip.high().at()), 7, StripScale.RIGHT, 15, 4);
    }
    svg.path("strip-beyond", hatching);
  }

  private void guard() {
    if (strip.guard() == 0) {
      return;
    }
    if (strip.low() != null) {
      band(strip.low().at(), strip.low().at() + strip.guard());
    }
    if (strip.high() != null) {
      band(strip.high().at() - strip.guard(), strip.high().at());
    }
  }

  /** The limits of a new part: a bar along the axis, open where it has one end only. */
  private void fresh() {
    if (strip.fresh() == null) {
      return;
    }
    double from =
        Double.isNaN(strip.fresh().low()) ? StripScale.LEFT : scale.at(strip.fresh().low());
    double to =
        Double.isNaN(strip.fresh().high()) ? StripScale.RIGHT : scale.at(strip.fresh().high());
    if (to > from) {
      svg.rectangle("strip-fresh", from, AXIS + 4.5, to - from, 2.2);
    }
  }

  private void band(double from, double to) {
    double left = scale.at(from);
    double right = scale.at(to);
    if (right > left) {
      svg.rectangle("strip-guard", left, 7, right - left, 8);
    }
  }

  private void limits() {
    SvgPath strokes = new SvgPath();
    for (Limit limit : new Limit[] {strip.low(), strip.high()}) {
      if (limit != null) {
        strokes.line(scale.at(limit.at()), 3, scale.at(limit.at()), 20);
      }
    }
    svg.path("strip-limit", strokes);
  }

  private void whisker() {
    double half = strip.expandedUncertainty();
    if (half == 0) {
      return;
    }
    double from = strip.value() - half;
    double to = strip.value() + half;
    SvgPath whisker = new SvgPath().line(scale.at(from), AXIS, scale.at(to), AXIS);
    // An end that runs off the strip has no bar: it does not end there.
    for (double end : new double[] {from, to}) {
      if (!scale.isOff(end)) {
        whisker.line(scale.at(end), AXIS - 3.5, scale.at(end), AXIS + 3.5);
      }
    }
    svg.path("strip-whisker", whisker);
  }

  /** Two short strokes across the axis, between the mark and what it is too far from. */
  private void breaks() {
    if (scale.isBeyond(strip.value())) {
      double mark = scale.markAt(strip.value());
      double x = mark < WIDTH / 2 ? mark + 11 : mark - 11;
      svg.path(
          "strip-break",
          new SvgPath()
              .line(x - 3.5, AXIS + 4, x + 0.5, AXIS - 4)
              .line(x - 0.5, AXIS + 4, x + 3.5, AXIS - 4));
    }
  }

  /** Where the value was, hollow, and an arrow from there where it moved far enough for one. */
  private void before() {
    double from = scale.markAt(before);
    double to = scale.markAt(strip.value());
    shape("strip-before", markBefore, from);
    if (Math.abs(to - from) >= ROOM_FOR_ARROW) {
      double way = Math.signum(to - from);
      double head = to - 6 * way;
      svg.path(
          "strip-arrow",
          new SvgPath()
              .line(from + 6 * way, AXIS, head, AXIS)
              .line(head - 4 * way, AXIS - 3, head, AXIS)
              .line(head - 4 * way, AXIS + 3, head, AXIS));
    }
  }

  private void shape(String look, LimitStrip.Mark mark, double x) {
    switch (mark) {
      case WITHIN -> svg.circle(look, x, AXIS, 3.9);
      case NOT_PROVEN ->
          svg.path(
              look,
              new SvgPath()
                  .from(x, AXIS - 5)
                  .to(x + 5, AXIS)
                  .to(x, AXIS + 5)
                  .to(x - 5, AXIS)
                  .close());
      case OUTSIDE ->
          svg.path(
              look,
              new SvgPath()
                  .from(x, AXIS - 6.2)
                  .to(x + 5.4, AXIS + 4)
                  .to(x - 5.4, AXIS + 4)
                  .close());
    }
  }

  private void numbers() {
    boolean both = strip.low() != null && strip.high() != null;
    boolean apart =
        both && strip.low().text().length() + strip.high().text().length() > 2 * LONG_NUMBER;
    boolean one = both && strip.low().at() == strip.high().at();
    if (strip.low() != null) {
      number(strip.low(), apart ? Anchor.END : Anchor.MIDDLE, apart ? 32 : 0);
    }
    if (strip.high() != null && !one) {
      number(strip.high(), apart ? Anchor.START : Anchor.MIDDLE, apart ? -32 : 0);
    }
  }

  private void number(Limit limit, Anchor anchor, double shift) {
    svg.text("strip-number", scale.at(limit.at()) + shift, BASE, anchor, limit.text());
  }
}
