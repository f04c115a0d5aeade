package endfloat.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The markup of a page made ready for sheets: formulas measured, pictures named, an outline. */
final class PdfMarkup {
  static final String XHTML = "http://www.w3.org/1999/xhtml";

  private PdfMarkup() {}

  static Document read(String xhtml) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      Document page =
          factory
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(xhtml.getBytes(StandardCharsets.UTF_8)));
      FormulaMarkup.set(page);
      elements(page, "svg").forEach(PdfMarkup::name);
      outline(page);
      KeptTogether.heads(page);
      KeptTogether.brackets(page);
      return page;
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new IllegalStateException("the page is not well-formed: " + e.getMessage(), e);
    }
  }

  static List<Element> elements(Document page, String name) {
    NodeList nodes = page.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static void name(Element svg) {
    String label = svg.getAttribute("aria-label");
    // a mark beside its word says nothing more
    svg.setAttribute("alt", label.isBlank() ? "mark" : label);
  }

  /** An outline of headings, each where its section begins. */
  private static void outline(Document page) {
    Element outline = page.createElementNS(PdfMarkup.XHTML, "bookmarks");
    Deque<Element> above = new ArrayDeque<>();
    Deque<Integer> levels = new ArrayDeque<>();
    NodeList all = page.getElementsByTagNameNS("*", "*");
    for (int i = 0; i < all.getLength(); i++) {
      Element heading = (Element) all.item(i);
      String to = anchor(heading);
      if (!heading.getLocalName().matches("h[23]") || to.isEmpty()) {
        continue;
      }
      int level = heading.getLocalName().charAt(1);
      while (!levels.isEmpty() && levels.peek() >= level) {
        levels.pop();
        above.pop();
      }
      Element mark = page.createElementNS(PdfMarkup.XHTML, "bookmark");
      mark.setAttribute("name", words(heading));
      mark.setAttribute("href", "#" + to);
      (above.isEmpty() ? outline : above.peek()).appendChild(mark);
      above.push(mark);
      levels.push(level);
    }
    if (outline.hasChildNodes()) {
      elements(page, "head").get(0).appendChild(outline);
    }
  }

  private static String anchor(Element heading) {
    return heading.hasAttribute("id")
        ? heading.getAttribute("id")
        : heading.getParentNode() instanceof Element section ? section.getAttribute("id") : "";
  }

  /** Number and title, apart. */
  private static String words(Element heading) {
    StringBuilder words = new StringBuilder();
    for (var node = heading.getFirstChild(); node != null; node = node.getNextSibling()) {
      words.append(node.getTextContent()).append(' ');
    }
    return words.toString().replaceAll("\\s+", " ").strip();
  }
}
