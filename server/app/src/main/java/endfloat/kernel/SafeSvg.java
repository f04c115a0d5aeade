package endfloat.kernel;

import endfloat.working.typeset.XmlText;
import java.io.StringReader;
import java.util.Locale;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A drawing that a clause has made, with what draws and nothing else: no scripts, links, styles or
 * references. What is not listed here is left out.
 */
final class SafeSvg {
  private static final Set<String> ELEMENTS =
      Set.of(
          "svg",
          "g",
          "path",
          "line",
          "polyline",
          "polygon",
          "rect",
          "circle",
          "ellipse",
          "text",
          "tspan",
          "title",
          "desc");
  private static final Set<String> ATTRIBUTES =
      Set.of(
          ("d x y x1 y1 x2 y2 dx dy cx cy r rx ry points width height viewBox preserveAspectRatio"
                  + " fill fill-opacity fill-rule stroke stroke-width stroke-opacity"
                  + " stroke-dasharray stroke-linecap stroke-linejoin opacity transform"
                  + " text-anchor dominant-baseline font-size font-weight font-style"
                  + " font-family letter-spacing rotate textLength role aria-label")
              .split(" "));

  private SafeSvg() {}

  /** Empty where it is no SVG that can be read. */
  static String of(String svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    StringBuilder out = new StringBuilder();
    try {
      XMLStreamReader in = factory.createXMLStreamReader(new StringReader(svg));
      int skipped = 0;
      while (in.hasNext()) {
        int event = in.next();
        if (event == XMLStreamConstants.START_ELEMENT) {
          skipped += skipped > 0 || !ELEMENTS.contains(in.getLocalName()) ? 1 : 0;
          if (skipped == 0) {
            start(in, out);
          }
        } else if (event == XMLStreamConstants.END_ELEMENT) {
          if (skipped == 0) {
            out.append("</").append(in.getLocalName()).append('>');
          }
          skipped -= skipped > 0 ? 1 : 0;
        } else if (event == XMLStreamConstants.CHARACTERS && skipped == 0) {
          out.append(XmlText.escaped(in.getText()));
        }
      }
    } catch (XMLStreamException e) {
      return "";
    }
    return out.indexOf("<svg") == 0 ? out.toString() : "";
  }

  private static void start(XMLStreamReader in, StringBuilder out) {
    out.append('<').append(in.getLocalName());
    if (in.getLocalName().equals("svg")) {
      out.append(" xmlns=\"http://www.w3.org/2000/svg\"");
      complete(in, out);
    }
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String value = in.getAttributeValue(i);
      if (in.getAttributePrefix(i).isEmpty()
          && ATTRIBUTES.contains(in.getAttributeLocalName(i))
          && !isReplaced(in, i)
          && !value.toLowerCase(Locale.ROOT).contains("url")) {
        out.append(' ').append(in.getAttributeLocalName(i)).append("=\"");
        out.append(XmlText.escaped(value)).append('"');
      }
    }
    out.append('>');
  }

  /** Of a root that has one of width and height, or a box of another form, its own is not kept. */
  private static boolean isReplaced(XMLStreamReader in, int at) {
    if (!in.getLocalName().equals("svg")) {
      return false;
    }
    String view = in.getAttributeValue("", "viewBox");
    boolean both =
        in.getAttributeValue("", "width") != null && in.getAttributeValue("", "height") != null;
    return switch (in.getAttributeLocalName(at)) {
      case "width", "height" -> !both;
      case "viewBox" -> view.strip().split("[ ,]+").length != 4;
      default -> false;
    };
  }

  /** What every picture of the program says of itself: its size and, in words, what it is. */
  private static void complete(XMLStreamReader in, StringBuilder out) {
    String view = in.getAttributeValue("", "viewBox");
    String[] box = view == null ? new String[0] : view.strip().split("[ ,]+");
    boolean hasBox = box.length == 4;
    String width = in.getAttributeValue("", "width");
    String height = in.getAttributeValue("", "height");
    if (width == null || height == null) {
      width = hasBox ? box[2] : "640";
      height = hasBox ? box[3] : "360";
      out.append(" width=\"").append(XmlText.escaped(width)).append("\" height=\"");
      out.append(XmlText.escaped(height)).append('"');
    }
    if (!hasBox) {
      out.append(" viewBox=\"0 0 ").append(XmlText.escaped(width)).append(' ');
      out.append(XmlText.escaped(height)).append('"');
    }
    if (in.getAttributeValue("", "role") == null) {
      out.append(" role=\"img\"");
    }
    if (in.getAttributeValue("", "aria-label") == null) {
      out.append(" aria-label=\"Drawing made by the clause\"");
    }
  }
}
