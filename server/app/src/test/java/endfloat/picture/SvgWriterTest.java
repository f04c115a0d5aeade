package endfloat.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.picture.SvgWriter.Anchor;
import endfloat.working.typeset.XmlText;
import java.io.StringReader;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What the writer writes is XML that says what it was given and nothing else. */
class SvgWriterTest {

  static Element parsed(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      return factory
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(svg)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new AssertionError("no XML: " + svg, e);
    }
  }

  @Property
  void anyTextStaysText(@ForAll String text) {
    Element svg =
        parsed(
            new SvgWriter("strip", 10, 10, text, Ink.PAGE)
                .text("strip-number", 1, 2, Anchor.MIDDLE, text)
                .finished());
    assertEquals(1, svg.getChildNodes().getLength());
    Element only = (Element) svg.getFirstChild();
    assertEquals("text", only.getLocalName());
    assertEquals(text.codePoints().count(), only.getTextContent().codePoints().count());
  }

  @Test
  void markupInATextIsEscaped() {
    assertEquals("&lt;b a=&quot;&#39;&amp;&quot;&gt;", XmlText.escaped("<b a=\"'&\">"));
    assertEquals("\uFFFD \uFFFD", XmlText.escaped("\u0000 \uFFFF"));
  }

  @Test
  void numbersHaveAPointInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("34.83", SvgWriter.number(34.826));
      assertEquals("1000", SvgWriter.number(1000));
      assertEquals("0", SvgWriter.number(-0.001));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> SvgWriter.number(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> SvgWriter.number(1e7));
    assertThrows(IllegalStateException.class, () -> new SvgPath().to(1, 1));
    SvgWriter open = new SvgWriter("strip", 1, 1, "", Ink.PAGE).startGroup("strip");
    assertThrows(IllegalStateException.class, open::finished);
    assertThrows(
        IllegalStateException.class, () -> new SvgWriter("new", 1, 1, "", Ink.print(Map.of())));
  }

  @Test
  void groupsHoldTheirParts() {
    String svg =
        new SvgWriter("strip", 1, 1, "", Ink.PAGE)
            .startGroup("strip-axis")
            .circle("strip-within", 1, 2, 3)
            .endGroup()
            .finished();
    assertTrue(
        svg.contains(
            "<g class=\"strip-axis\"><circle class=\"strip-within\""
                + " cx=\"1\" cy=\"2\" r=\"3\"/></g>"),
        svg);
  }

  /** Every stroke of a hatch runs at 45 degrees inside its rectangle. */
  @Property
  void hatchStaysInsideItsRectangle(
      @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 100) double left,
      @ForAll @net.jqwik.api.constraints.DoubleRange(min = 0, max = 100) double width) {
    String data = new SvgPath().hatch(left, 7, left + width, 15, 4).data();
    for (String stroke : data.split("M", -1)) {
      if (stroke.isEmpty()) {
        continue;
      }
      String[] n = stroke.split("[ L]", -1);
      double x1 = Double.parseDouble(n[0]);
      double y1 = Double.parseDouble(n[1]);
      double x2 = Double.parseDouble(n[2]);
      double y2 = Double.parseDouble(n[3]);
      assertEquals(x2 - x1, y1 - y2, 0.021);
      assertTrue(x1 >= left - 0.01 && x2 <= left + width + 0.01, stroke);
      assertTrue(y2 >= 6.98 && y1 <= 15.01, stroke);
    }
  }
}
