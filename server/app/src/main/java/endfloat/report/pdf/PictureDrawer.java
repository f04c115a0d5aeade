package endfloat.report.pdf;

import com.openhtmltopdf.css.parser.FSColor;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the pictures that the program writes: paths of straight strokes, circles, rectangles and
 * texts, each looking as its class says or else its own attributes.
 */
final class PictureDrawer extends Drawer {
  private static final String NOT_DRAWN =
      "This drawing has strokes that the PDF does not know; the HTML report shows it.";

  private final PictureLooks looks;

  PictureDrawer(PictureLooks looks) {
    this.looks = looks;
  }

  @Override
  SVGImage image(Element svg, Box box, CssContext context, double width, double height) {
    String[] view = svg.getAttribute("viewBox").split(" ");
    double across = Double.parseDouble(view[2]);
    double down = Double.parseDouble(view[3]);
    double dots = context.getDotsPerPixel();
    double most = box.getContainingBlock() == null ? 0 : box.getContainingBlock().getContentWidth();
    double natural = width > 0 ? width : Double.parseDouble(svg.getAttribute("width")) * dots;
    double wide = most > 0 ? Math.min(natural, most) : natural;
    double unit = wide / across;
    FSColor current = box.getStyle().getColor();
    boolean drawable = canDraw(svg, current);
    return new Image((int) Math.ceil(wide), (int) Math.ceil(down * unit)) {
      @Override
      public void drawSVG(OutputDevice device, RenderingContext on, double x, double y) {
        Pen pen = new Pen(on, x, y, unit);
        if (drawable) {
          children(svg, pen, looks.of(svg, Map.of()), current);
        } else {
          pen.text(Face.LETTERING, NOT_DRAWN, 0, 14 / unit, 13 / unit, 1, current);
        }
      }
    };
  }

  /** Whether it is all of kinds known here; a drawing that a user's own Java made may not be. */
  boolean canDraw(Element svg, FSColor current) {
    try {
      children(svg, null, looks.of(svg, Map.of()), current);
      return true;
    } catch (IllegalStateException | IllegalArgumentException e) {
      return false;
    }
  }

  /**
   * @param pen null to see whether it can be drawn
   */
  private void children(Element of, Pen pen, Map<String, String> inherited, FSColor current) {
    for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        draw(element, pen, looks.of(element, inherited), current);
      }
    }
  }

  private void draw(Element element, Pen pen, Map<String, String> look, FSColor current) {
    if (element.hasAttribute("transform")) {
      throw new IllegalStateException("no way to draw a transform");
    }
    switch (element.getLocalName()) {
      case "g" -> children(element, pen, look, current);
      case "path" -> ink(pen, path(element.getAttribute("d")), look, current);
      case "circle" -> {
        double r = number(element, "r");
        double left = number(element, "cx") - r;
        double top = number(element, "cy") - r;
        ink(pen, new Ellipse2D.Double(left, top, 2 * r, 2 * r), look, current);
      }
      case "rect" -> {
        double left = number(element, "x");
        double top = number(element, "y");
        double wide = number(element, "width");
        double high = number(element, "height");
        ink(pen, new Rectangle2D.Double(left, top, wide, high), look, current);
      }
      case "ellipse" -> {
        double rx = number(element, "rx");
        double ry = number(element, "ry");
        double left = number(element, "cx") - rx;
        double top = number(element, "cy") - ry;
        ink(pen, new Ellipse2D.Double(left, top, 2 * rx, 2 * ry), look, current);
      }
      case "line" ->
          ink(
              pen,
              new Line2D.Double(
                  number(element, "x1"),
                  number(element, "y1"),
                  number(element, "x2"),
                  number(element, "y2")),
              look,
              current);
      case "polyline" -> ink(pen, points(element, false), look, current);
      case "polygon" -> ink(pen, points(element, true), look, current);
      case "text" -> text(element, pen, look, current);
      case "title", "desc" -> {}
      default -> throw new IllegalStateException("no way to draw " + element.getLocalName());
    }
  }

  private static Path2D points(Element element, boolean closed) {
    Path2D path = new Path2D.Double();
    String text = element.getAttribute("points").strip();
    String[] numbers = text.isEmpty() ? new String[0] : text.split("[ ,]+");
    for (int i = 0; i + 1 < numbers.length; i += 2) {
      double x = Double.parseDouble(numbers[i]);
      double y = Double.parseDouble(numbers[i + 1]);
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    if (closed && numbers.length > 1) {
      path.closePath();
    }
    return path;
  }

  private static void ink(Pen pen, Shape shape, Map<String, String> look, FSColor current) {
    double opacity = Double.parseDouble(look.getOrDefault("opacity", "1"));
    FSColor fill = colour(look.getOrDefault("fill", "#000000"), current);
    if (fill != null && pen != null) {
      pen.fill(shape, fill, opacity * Double.parseDouble(look.getOrDefault("fill-opacity", "1")));
    }
    FSColor stroke = colour(look.getOrDefault("stroke", "none"), current);
    if (stroke != null) {
      double width = Double.parseDouble(look.getOrDefault("stroke-width", "1").replace("px", ""));
      float[] dashes = dashes(look.get("stroke-dasharray"));
      if (pen != null) {
        pen.stroke(shape, stroke, width, dashes);
      }
    }
  }

  private static FSColor colour(String text, FSColor current) {
    if (text.equals("none")) {
      return null;
    }
    if (text.equals("currentColor")) {
      return current;
    }
    if (!text.matches("#[0-9a-fA-F]{3}([0-9a-fA-F]{3})?")) {
      throw new IllegalStateException("no way to draw in " + text);
    }
    String hex = text.length() == 4 ? text.replaceAll("#(.)(.)(.)", "#$1$1$2$2$3$3") : text;
    return new FSRGBColor(Integer.parseInt(hex.substring(1), 16));
  }

  private static float[] dashes(String text) {
    if (text == null || text.equals("none")) {
      return null;
    }
    String[] words = text.trim().split("[ ,]+");
    float[] lengths = new float[words.length];
    for (int i = 0; i < words.length; i++) {
      lengths[i] = Float.parseFloat(words[i]);
    }
    return lengths;
  }

  private static void text(Element element, Pen pen, Map<String, String> look, FSColor current) {
    String text = element.getTextContent();
    double size = Double.parseDouble(look.getOrDefault("font-size", "13.5").replace("px", ""));
    Face face =
        look.getOrDefault("font-family", "").contains("Maths") ? Face.MATHS : Face.LETTERING;
    double width = size * face.width(text);
    double x = number(element, "x");
    double left =
        switch (element.getAttribute("text-anchor")) {
          case "middle" -> x - width / 2;
          case "end" -> x - width;
          default -> x;
        };
    FSColor ink = colour(look.getOrDefault("fill", "#000000"), current);
    double y = number(element, "y");
    if (pen != null) {
      pen.text(face, text, left, y, size, 1, ink);
    }
  }

  private static double number(Element element, String name) {
    String text = element.getAttribute(name);
    return text.isEmpty() ? 0 : Double.parseDouble(text);
  }

  /** Absolute strokes: M, L and Z, and single steps across and down. */
  static Path2D path(String data) {
    Path2D path = new Path2D.Double();
    StrokeReader read = new StrokeReader(data);
    while (read.next()) {
      switch (read.letter()) {
        case 'M' -> path.moveTo(read.number(), read.number());
        case 'L' -> path.lineTo(read.number(), read.number());
        case 'H' -> path.lineTo(read.number(), path.getCurrentPoint().getY());
        case 'V' -> path.lineTo(path.getCurrentPoint().getX(), read.number());
        case 'm', 'l', 'h', 'v' -> relative(path, read);
        case 'Z', 'z' -> path.closePath();
        default -> throw new IllegalStateException("no way to draw " + read.letter());
      }
    }
    return path;
  }

  private static void relative(Path2D path, StrokeReader read) {
    double x = path.getCurrentPoint() == null ? 0 : path.getCurrentPoint().getX();
    double y = path.getCurrentPoint() == null ? 0 : path.getCurrentPoint().getY();
    switch (read.letter()) {
      case 'm' -> path.moveTo(x + read.number(), y + read.number());
      case 'l' -> path.lineTo(x + read.number(), y + read.number());
      case 'h' -> path.lineTo(x + read.number(), y);
      default -> path.lineTo(x, y + read.number());
    }
  }
}
