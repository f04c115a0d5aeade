package endfloat.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.picture.LimitStrip.Limit;
import endfloat.picture.LimitStrip.Mark;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The strip says the same to the eye and to the ear, and never puts a mark where it is not. */
class LimitStripTest {
  private static final Limit LOW = new Limit(0.10, "0.10");
  private static final Limit HIGH = new Limit(0.30, "0.30");

  private static LimitStrip lash(double value, double u, double guard, Mark mark) {
    return new LimitStrip(value, u, LOW, HIGH, guard, mark, value + " ± " + u + " mm", "mm");
  }

  private static List<Element> drawn(String svg, String className) {
    List<Element> found = new ArrayList<>();
    for (Node n = SvgWriterTest.parsed(svg).getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element e && e.getAttribute("class").equals(className)) {
        found.add(e);
      }
    }
    return found;
  }

  @Test
  void dotBetweenTheLimitsIsWithin() {
    LimitStrip strip = lash(0.2, 0.01, 0, Mark.WITHIN);
    Element dot = drawn(strip.svg(), "strip-within").get(0);
    assertEquals("circle", dot.getLocalName());
    assertEquals(74, Double.parseDouble(dot.getAttribute("cx")), 0.01, "half way");
    assertEquals("within: 0.2 ± 0.01 mm against 0.10 to 0.30 mm", strip.label());
    assertEquals(strip.label(), SvgWriterTest.parsed(strip.svg()).getAttribute("aria-label"));
  }

  @Test
  void aBarUnderTheAxisSpansWhatANewPartMayMeasure() {
    LimitStrip strip =
        new LimitStrip(
            0.25,
            0.01,
            LOW,
            HIGH,
            0,
            Mark.WITHIN,
            "0.25 mm",
            "mm",
            new LimitStrip.Fresh(0.10, 0.20));
    Element bar = drawn(strip.svg(), "strip-fresh").get(0);
    assertEquals(34.8, Double.parseDouble(bar.getAttribute("x")), 0.01, "the lower limit");
    assertEquals(39.2, Double.parseDouble(bar.getAttribute("width")), 0.01, "half the way");
    assertTrue(drawn(lash(0.25, 0.01, 0, Mark.WITHIN).svg(), "strip-fresh").isEmpty());
  }

  @Test
  void diamondOnAStrokeIsNotProven() {
    String svg = lash(0.3, 0.02, 0, Mark.NOT_PROVEN).svg();
    String diamond = drawn(svg, "strip-not-proven").get(0).getAttribute("d");
    assertTrue(diamond.startsWith("M113.2 6L"), diamond);
    assertEquals(4, diamond.chars().filter(c -> c == 'L' || c == 'Z').count());
  }

  @Test
  void triangleBeyondIsOutside() {
    String svg = lash(0.335, 0.016, 0, Mark.OUTSIDE).svg();
    String triangle = drawn(svg, "strip-outside").get(0).getAttribute("d");
    assertTrue(triangle.startsWith("M126.92 4.8L"), triangle);
    assertEquals(3, triangle.chars().filter(c -> c == 'L' || c == 'Z').count());
    assertTrue(drawn(svg, "strip-break").isEmpty());
  }

  @Test
  void farOutsideIsDrawnAtTheEndWithABreak() {
    LimitStrip strip = lash(5, 0.016, 0, Mark.OUTSIDE);
    assertEquals(1, drawn(strip.svg(), "strip-break").size());
    String triangle = drawn(strip.svg(), "strip-outside").get(0).getAttribute("d");
    assertTrue(triangle.startsWith("M141 4.8L"), triangle);
    assertTrue(strip.label().endsWith(", drawn at the end of the strip"), strip.label());
  }

  @Test
  void whiskerThatRunsOffTheStripHasNoBarThere() {
    String whole =
        drawn(lash(0.2, 0.02, 0, Mark.WITHIN).svg(), "strip-whisker").get(0).getAttribute("d");
    String off =
        drawn(lash(0.2, 0.5, 0, Mark.NOT_PROVEN).svg(), "strip-whisker").get(0).getAttribute("d");
    assertEquals(3, whole.chars().filter(c -> c == 'M').count());
    assertEquals(1, off.chars().filter(c -> c == 'M').count());
    assertTrue(drawn(lash(0.2, 0, 0, Mark.WITHIN).svg(), "strip-whisker").isEmpty(), "exact");
  }

  @Test
  void guardedRuleShowsItsBandsInsideTheLimits() {
    LimitStrip strip = lash(0.2, 0.02, 0.02, Mark.WITHIN);
    List<Element> bands = drawn(strip.svg(), "strip-guard");
    assertEquals(2, bands.size());
    assertEquals(34.8, Double.parseDouble(bands.get(0).getAttribute("x")), 0.01);
    assertEquals(7.84, Double.parseDouble(bands.get(0).getAttribute("width")), 0.01);
    assertEquals(105.36, Double.parseDouble(bands.get(1).getAttribute("x")), 0.01);
    assertTrue(strip.label().contains("limits drawn in by the uncertainty"));
    assertTrue(drawn(lash(0.2, 0.02, 0, Mark.WITHIN).svg(), "strip-guard").isEmpty());
  }

  @Test
  void oneLimitHasOneStrokeAndIsHatchedOnOneSide() {
    LimitStrip most =
        new LimitStrip(
            0.036, 0.006, null, new Limit(0.06, "0.06"), 0, Mark.WITHIN, "0.036 mm", "mm");
    assertEquals("within: 0.036 mm against at most 0.06 mm", most.label());
    assertEquals(1, drawn(most.svg(), "strip-number").size());
    double x = Double.parseDouble(drawn(most.svg(), "strip-within").get(0).getAttribute("cx"));
    assertEquals(
        6 + 0.6 * (113.2 - 6), x, 0.01, "three fifths of the way from nothing to the limit");

    LimitStrip least =
        new LimitStrip(900, 0, new Limit(200, "200"), null, 0, Mark.WITHIN, "900 h", "h");
    assertEquals("within: 900 h against at least 200 h", least.label());
    assertTrue(drawn(least.svg(), "strip-break").isEmpty());
  }

  @Test
  void printHasNoClassesButTheSameDrawing() {
    LimitStrip strip = lash(0.335, 0.016, 0.016, Mark.OUTSIDE);
    assertFalse(strip.svgForPrint().contains("class="));
    assertTrue(strip.svgForPrint().contains("stroke="));
    assertEquals(
        SvgWriterTest.parsed(strip.svg()).getChildNodes().getLength(),
        SvgWriterTest.parsed(strip.svgForPrint()).getChildNodes().getLength());
  }

  @Test
  void everyClassHasALookInPrint() {
    for (Mark mark : Mark.values()) {
      assertTrue(lash(5, 1, 0.01, mark).svgForPrint().startsWith("<svg"));
    }
  }

  @Test
  void whatIsNoStripIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> lash(Double.NaN, 0, 0, Mark.WITHIN));
    assertThrows(IllegalArgumentException.class, () -> lash(1, -1, 0, Mark.WITHIN));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LimitStrip(1, 0, null, null, 0, Mark.WITHIN, "1", ""));
    assertThrows(
        IllegalArgumentException.class,
        () -> new LimitStrip(1, 0, HIGH, LOW, 0, Mark.WITHIN, "1", ""));
  }

  @Provide
  Arbitrary<LimitStrip> strips() {
    Arbitrary<Double> any = Arbitraries.doubles().between(-1e12, 1e12);
    Arbitrary<Double> size = Arbitraries.doubles().between(0, 1e9);
    return Combinators.combine(any, size, any, size, Arbitraries.integers().between(0, 2))
        .as(
            (value, u, low, span, sides) ->
                new LimitStrip(
                    value,
                    u,
                    sides == 1 ? null : new Limit(low, "low"),
                    sides == 2 ? null : new Limit(low + span, "high"),
                    0,
                    Mark.OUTSIDE,
                    "v",
                    ""));
  }

  /** Whatever the numbers, the mark stands on the right side of each limit stroke. */
  @Property
  void markStandsOnItsOwnSideOfALimit(@ForAll("strips") LimitStrip strip) {
    SvgWriterTest.parsed(strip.svg());
    StripScale scale = new StripScale(strip);
    double mark = scale.markAt(strip.value());
    if (strip.low() != null) {
      double side = Math.signum(strip.value() - strip.low().at());
      assertTrue(side * (mark - scale.at(strip.low().at())) >= 0);
    }
    if (strip.high() != null) {
      double side = Math.signum(strip.value() - strip.high().at());
      assertTrue(side * (mark - scale.at(strip.high().at())) >= 0);
    }
  }
}
