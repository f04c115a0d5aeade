package endfloat.picture.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class DrawingsTest {
  /** Nothing of these lies in space: properties, a comparison of two numbers, statistics. */
  private static final Set<String> NOT_GEOMETRIC =
      Set.of(
          "material",
          "big_enough",
          "column_summary",
          "straight_line",
          "origin_line",
          "linear_correlation",
          "rank_correlation");

  /** Room a letter of the page's lettering takes at 12 px, generously. */
  private static final double LETTER = 6.6;

  private static final Catalogue LIBRARY = Catalogue.library();

  @Test
  void everyGeometricCalculationHasALineDrawing() {
    Set<String> without = new TreeSet<>();
    for (Calculation calculation : LIBRARY.all()) {
      if (Drawings.of(calculation.name()).isEmpty()) {
        without.add(calculation.name());
      }
    }
    assertEquals(new TreeSet<>(NOT_GEOMETRIC), without);
  }

  @Test
  void everyDrawingIsOfACalculationThatThereIs() {
    for (String name : Drawings.calculations()) {
      assertTrue(LIBRARY.find(name).isPresent(), name);
    }
  }

  @Test
  void everyNameDrawnIsOneOfTheCalculationsItIsFor() {
    for (String name : Drawings.calculations()) {
      Set<String> known = new HashSet<>();
      Drawings.sharing(name).forEach(shared -> known.addAll(names(shared)));
      for (String drawn : Drawings.of(name).orElseThrow().names()) {
        assertTrue(known.contains(drawn), name + " draws " + drawn + ", which is no name of it");
      }
    }
  }

  private static Set<String> names(String calculation) {
    Calculation found = LIBRARY.find(calculation).orElseThrow();
    Set<String> names = new HashSet<>();
    for (Parameter parameter : found.parameters()) {
      names.add(parameter.name());
      parameter.part().ifPresent(part -> part.components().forEach(c -> names.add(c.name())));
    }
    for (Result result : found.results()) {
      names.add(result.name());
    }
    return names;
  }

  @Test
  void drawingsAreWellFormedAndCarryNoStyle() throws Exception {
    for (String name : Drawings.calculations()) {
      Drawings.Drawing drawing = Drawings.of(name).orElseThrow();
      Document document = parsed(drawing.svg());
      assertEquals("svg", document.getDocumentElement().getTagName());
      assertEquals(drawing.caption(), document.getDocumentElement().getAttribute("aria-label"));
      assertFalse(drawing.svg().contains("style"), name);
    }
  }

  @Test
  void noTextLeavesTheDrawing() throws Exception {
    Set<String> outside = new TreeSet<>();
    for (String name : Drawings.calculations()) {
      NodeList texts = parsed(Drawings.of(name).orElseThrow().svg()).getElementsByTagName("text");
      for (int i = 0; i < texts.getLength(); i++) {
        Element text = (Element) texts.item(i);
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        double width = LETTER * text.getTextContent().length();
        double left =
            switch (text.getAttribute("text-anchor")) {
              case "start" -> x;
              case "end" -> x - width;
              default -> x - width / 2;
            };
        if (left < -2 || left + width > Sketch.WIDTH + 2 || y < 8 || y > Sketch.HEIGHT) {
          outside.add(name + ": " + text.getTextContent());
        }
      }
    }
    assertEquals(Set.of(), outside);
  }

  @Test
  void whatHasNothingToDrawHasNoDrawing() {
    assertTrue(Drawings.of("material").isEmpty());
    assertEquals(List.of(), Drawings.sharing("material"));
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    return builder.parse(new InputSource(new StringReader(svg)));
  }
}
