package endfloat.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Puts formulas that have been set in place of their MathML, each as wide and high as it is. */
final class FormulaMarkup {
  /** Under which an element keeps its piece for the drawer. */
  private static final String PIECE = "endfloat.piece";

  /**
   * Room on a line [em]: the column of a working is 77 mm, formulas are of 12 pt, numbers of 10.
   */
  private static final double ROOM = 16.8;

  private static final double ROOM_OF_NUMBERS = 20.6;

  private FormulaMarkup() {}

  static FormulaPiece piece(Element math) {
    return (FormulaPiece) math.getUserData(PIECE);
  }

  static void set(Document page) {
    for (Element math : PdfMarkup.elements(page, "math")) {
      // a formula that the page broke is whole again here: it is broken by its own measures
      if (math.getParentNode() != null && !math.getAttribute("aria-hidden").equals("true")) {
        set(math, withFurther(math));
      }
    }
  }

  private static List<Element> withFurther(Element math) {
    List<Element> rows = inner(math);
    Node next = math.getNextSibling();
    while (next != null) {
      Node after = next.getNextSibling();
      boolean further = next instanceof Element e && e.getAttribute("aria-hidden").equals("true");
      if (further) {
        rows.addAll(inner((Element) next));
      } else if (!next.getTextContent().isBlank()) {
        break;
      }
      next.getParentNode().removeChild(next);
      next = after;
    }
    return rows;
  }

  private static List<Element> inner(Element math) {
    List<Element> inner = FormulaSetting.children(math);
    boolean one = inner.size() == 1 && inner.get(0).getLocalName().equals("mrow");
    return new ArrayList<>(one ? FormulaSetting.children(inner.get(0)) : inner);
  }

  private static void set(Element math, List<Element> rows) {
    boolean display = math.getAttribute("displaystyle").equals("true");
    Element around = (Element) math.getParentNode();
    double room = around.getAttribute("class").equals("numbers") ? ROOM_OF_NUMBERS : ROOM;
    List<FormulaPiece> pieces = FormulaAtom.lines(FormulaSetting.of(rows, display), room);
    Document page = math.getOwnerDocument();
    String label = math.getAttribute("aria-label");
    for (int i = 0; i < pieces.size(); i++) {
      Element one = page.createElementNS(math.getNamespaceURI(), "math");
      size(one, roomy(pieces.get(i)));
      one.setAttribute("alt", i == 0 ? label : "continued");
      if (i > 0) {
        Element blank = page.createElementNS(PdfMarkup.XHTML, "span");
        blank.setAttribute("class", "break");
        blank.setTextContent(" ");
        around.insertBefore(blank, math);
      }
      around.insertBefore(one, math);
    }
    around.removeChild(math);
  }

  /** With the room above and below that a line of text has: the layout gives none of its own. */
  private static FormulaPiece roomy(FormulaPiece piece) {
    return piece.sized(Math.max(piece.height() + 0.1, 0.9), Math.max(piece.depth() + 0.1, 0.34));
  }

  private static void size(Element math, FormulaPiece piece) {
    math.setUserData(PIECE, piece, null);
    math.setAttribute(
        "style",
        String.format(
            Locale.ROOT,
            "width:%.4fem;height:%.4fem;vertical-align:%.4fem",
            piece.width(),
            piece.height() + piece.depth(),
            -piece.depth()));
  }
}
