package endfloat.report.pdf;

import java.util.Collections;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Puts together what the layout would part: it breaks a line wherever an element begins, and keeps
 * a head only with what follows in the same element.
 */
final class KeptTogether {
  /** Longer words may be broken, brackets or not. */
  private static final int MOST_HELD = 24;

  private KeptTogether() {}

  /**
   * The head of a section that has nothing else goes into its first clause, so that head, head of
   * the clause and first lines are of one element; what leads to a section leads to its head,
   * wherever that comes to stand.
   */
  static void heads(Document page) {
    List<Element> sections = PdfMarkup.elements(page, "section");
    Collections.reverse(sections);
    for (Element section : sections) {
      Element head = firstElement(section);
      if (head == null || !head.getLocalName().matches("h[23]")) {
        continue;
      }
      String id = section.getAttribute("id");
      if (!id.isEmpty()) {
        section.removeAttribute("id");
        head.setAttribute("id", id);
      }
      Element next = nextElement(section);
      boolean alone = nextElement(head) == null;
      if (alone && next != null && next.getLocalName().equals("section")) {
        next.insertBefore(head, next.getFirstChild());
        section.getParentNode().removeChild(section);
      }
    }
  }

  /** A short link is not broken; a bracket or a stop goes to the line of the link it stands at. */
  static void brackets(Document page) {
    List<Element> links = PdfMarkup.elements(page, "a");
    for (Element link : links) {
      Node parent = link.getParentNode();
      String before = link.getPreviousSibling() instanceof Text text ? text.getData() : "";
      String after = link.getNextSibling() instanceof Text text ? text.getData() : "";
      String opening = before.substring(lastBlank(before) + 1);
      String closing = after.substring(0, firstBlank(after));
      int length = opening.length() + link.getTextContent().length() + closing.length();
      if (length > MOST_HELD) {
        continue;
      }
      if (!opening.isEmpty()) {
        ((Text) link.getPreviousSibling())
            .setData(before.substring(0, before.length() - opening.length()));
      }
      if (!closing.isEmpty()) {
        ((Text) link.getNextSibling()).setData(after.substring(closing.length()));
      }
      Element held = page.createElementNS(PdfMarkup.XHTML, "span");
      held.setAttribute("class", "held");
      parent.insertBefore(held, link);
      held.appendChild(page.createTextNode(opening));
      held.appendChild(link);
      held.appendChild(page.createTextNode(closing));
    }
  }

  private static int lastBlank(String text) {
    return Math.max(text.lastIndexOf(' '), text.lastIndexOf('\n'));
  }

  private static int firstBlank(String text) {
    int at = 0;
    while (at < text.length() && !Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static Element firstElement(Element of) {
    Node at = of.getFirstChild();
    return at instanceof Element element ? element : at == null ? null : nextElement(at);
  }

  private static Element nextElement(Node of) {
    Node at = of.getNextSibling();
    while (at != null && !(at instanceof Element)) {
      at = at.getNextSibling();
    }
    return (Element) at;
  }
}
