package endfloat.report;

import endfloat.working.typeset.XmlText;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/**
 * Formulas as the sheet sets them, made fit for paper: in pieces that a line may break between. A
 * formula breaks before each sign and factor that stands in no bracket; where a piece is too long
 * for a line, after the arguments and before the signs within its brackets too.
 */
final class Formulas {
  private static final String NAMESPACE = "xmlns=\"http://www.w3.org/1998/Math/MathML\" ";
  private static final String SIGNS = "+\u2212=\u00d7\u00b1";

  /** Characters that stand on a line of the column of workings. */
  private static final int LINE = 34;

  private Formulas() {}

  /** A formula in pieces; the first is labelled with the whole. */
  static String inXml(String math) {
    Element whole = parsed(math);
    List<List<Node>> pieces = pieces(inner(whole));
    StringBuilder out = new StringBuilder();
    for (List<Node> piece : pieces) {
      boolean first = out.length() == 0;
      out.append(first ? "<math " : " <math ").append(NAMESPACE).append("displaystyle=\"true\"");
      if (first) {
        attribute(out, whole, "alttext");
        attribute(out, whole, "aria-label");
      } else {
        out.append(" aria-hidden=\"true\"");
      }
      out.append("><mrow>");
      piece.forEach(node -> write(node, out, !first && node == piece.get(0)));
      out.append("</mrow></math>");
    }
    return out.toString();
  }

  private static Element parsed(String math) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      return factory
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(math)))
          .getDocumentElement();
    } catch (Exception e) {
      throw new IllegalStateException("a formula that the program typeset is not XML: " + math, e);
    }
  }

  private static void attribute(StringBuilder out, Element from, String name) {
    if (from.hasAttribute(name)) {
      out.append(' ').append(name).append("=\"");
      out.append(XmlText.escaped(from.getAttribute(name))).append('"');
    }
  }

  /** What stands in the outermost row, or in the formula itself where it has none around all. */
  private static List<Node> inner(Element row) {
    List<Node> nodes = children(row);
    return nodes.size() == 1 && isRow(nodes.get(0)) ? inner((Element) nodes.get(0)) : nodes;
  }

  private static List<Node> children(Node of) {
    List<Node> nodes = new ArrayList<>();
    for (Node at = of.getFirstChild(); at != null; at = at.getNextSibling()) {
      nodes.add(at);
    }
    return nodes;
  }

  private static List<List<Node>> pieces(List<Node> row) {
    List<List<Node>> pieces = new ArrayList<>();
    for (List<Node> piece : cut(row, true)) {
      split(piece, pieces);
    }
    return pieces;
  }

  /** Before each sign, and before each factor or after each comma. */
  private static List<List<Node>> cut(List<Node> row, boolean factors) {
    List<List<Node>> pieces = new ArrayList<>(List.of(new ArrayList<>()));
    for (Node node : row) {
      List<Node> last = pieces.get(pieces.size() - 1);
      Node behind = last.isEmpty() ? node : last.get(last.size() - 1);
      // between a number and its unit there is a blank, and no factor
      boolean factor = node.getNodeName().equals("mspace") && !behind.getNodeName().equals("mn");
      boolean before =
          isSign(node, SIGNS) || (factors && factor) || (!factors && isSign(behind, ","));
      if (before && !last.isEmpty()) {
        last = new ArrayList<>();
        pieces.add(last);
      }
      last.add(node);
    }
    return pieces;
  }

  /** Opens the brackets of a piece that is too long for a line, from the outermost on. */
  private static void split(List<Node> piece, List<List<Node>> into) {
    List<Node> flat = piece;
    while (length(flat) > LINE && flat.stream().noneMatch(Formulas::isTall)) {
      List<Node> opened = opened(flat);
      if (opened.size() == flat.size()) {
        atWords(flat, into);
        return;
      }
      flat = opened;
      List<List<Node>> parts = cut(flat, false);
      if (parts.size() > 1) {
        parts.forEach(part -> split(part, into));
        return;
      }
    }
    into.add(flat);
  }

  /** What has no bracket to open breaks before its words, as in "solved for t between". */
  private static void atWords(List<Node> piece, List<List<Node>> into) {
    List<Node> part = new ArrayList<>();
    for (Node node : piece) {
      boolean word =
          node.getNodeName().equals("mtext") && node.getTextContent().matches("\u00a0[a-z].*");
      if (word && !part.isEmpty()) {
        into.add(part);
        part = new ArrayList<>();
      }
      part.add(node);
    }
    into.add(part);
  }

  /** The longest row of a piece laid open, its brackets and what they hold side by side. */
  private static List<Node> opened(List<Node> piece) {
    Node longest = null;
    for (Node node : piece) {
      if (isRow(node) && (longest == null || length(node) > length(longest))) {
        longest = node;
      }
    }
    List<Node> opened = new ArrayList<>();
    for (Node node : piece) {
      if (node == longest) {
        opened.addAll(children(node));
      } else {
        opened.add(node);
      }
    }
    return opened;
  }

  private static boolean isRow(Node node) {
    return node.getNodeName().equals("mrow");
  }

  private static boolean isSign(Node node, String signs) {
    String text = node.getTextContent();
    return node.getNodeName().equals("mo") && text.length() == 1 && signs.contains(text);
  }

  /** A bracket around a fraction or a root must stretch, so it stays with what it holds. */
  private static boolean isTall(Node node) {
    return node.getNodeName().matches("mfrac|msqrt|mroot|mtable|munderover|munder")
        || children(node).stream().anyMatch(Formulas::isTall);
  }

  private static int length(List<Node> nodes) {
    return nodes.stream().mapToInt(Formulas::length).sum();
  }

  private static int length(Node node) {
    return node.getTextContent().length() + (node.getNodeName().equals("mo") ? 1 : 0);
  }

  private static void write(Node node, StringBuilder out, boolean atHead) {
    if (node.getNodeType() == Node.TEXT_NODE) {
      out.append(XmlText.escaped(node.getTextContent()));
      return;
    }
    out.append('<').append(node.getNodeName());
    for (int i = 0; i < node.getAttributes().getLength(); i++) {
      attribute(out, (Element) node, node.getAttributes().item(i).getNodeName());
    }
    if (atHead && isSign(node, SIGNS)) {
      // at the head of a piece a sign still stands between two terms
      out.append(" form=\"infix\"");
    }
    out.append('>');
    children(node).forEach(child -> write(child, out, false));
    out.append("</").append(node.getNodeName()).append('>');
  }
}
