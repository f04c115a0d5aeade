package endfloat.picture;

import endfloat.working.typeset.XmlText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes one SVG picture. Numbers are written with at most two places and a point whatever the
 * locale, texts are escaped, and there is no way to write a script, a style or a reference.
 */
public final class SvgWriter {
  private static final double FARTHEST = 1e6;

  /** Where a text stands to its point. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  private final StringBuilder out = new StringBuilder(1024);
  private final Ink ink;
  private int groups;

  /**
   * @param width in user units, which are CSS pixels
   * @param label what the picture shows, with its numbers, for those who cannot see it
   */
  public SvgWriter(String className, double width, double height, String label, Ink ink) {
    this.ink = ink;
    String w = number(width);
    String h = number(height);
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    look(className);
    attribute("viewBox", "0 0 " + w + " " + h);
    attribute("width", w);
    attribute("height", h);
    attribute("role", "img");
    attribute("aria-label", label);
    out.append('>');
  }

  /** Nothing where the path has no stroke. */
  public SvgWriter path(String className, SvgPath path) {
    return path.isEmpty() ? this : element("path", className, Map.of("d", path.data()));
  }

  public SvgWriter circle(String className, double x, double y, double radius) {
    return element(
        "circle", className, Map.of("cx", number(x), "cy", number(y), "r", number(radius)));
  }

  public SvgWriter rectangle(String className, double x, double y, double width, double height) {
    return element(
        "rect",
        className,
        Map.of("x", number(x), "y", number(y), "width", number(width), "height", number(height)));
  }

  public SvgWriter text(String className, double x, double y, Anchor anchor, String text) {
    start("text", className, Map.of("x", number(x), "y", number(y), "text-anchor", word(anchor)));
    out.append('>').append(XmlText.escaped(text)).append("</text>");
    return this;
  }

  /** What follows, up to {@link #endGroup}, belongs together. */
  public SvgWriter startGroup(String className) {
    start("g", className, Map.of());
    out.append('>');
    groups++;
    return this;
  }

  public SvgWriter endGroup() {
    if (groups == 0) {
      throw new IllegalStateException("no group is open");
    }
    groups--;
    out.append("</g>");
    return this;
  }

  /** The whole picture; nothing can be added after. */
  public String finished() {
    if (groups != 0) {
      throw new IllegalStateException(groups + " groups are still open");
    }
    return out.append("</svg>").toString();
  }

  private SvgWriter element(String name, String className, Map<String, String> attributes) {
    start(name, className, attributes);
    out.append("/>");
    return this;
  }

  private void start(String name, String className, Map<String, String> attributes) {
    out.append('<').append(name);
    look(className);
    new TreeMap<>(attributes).forEach(this::attribute);
  }

  private void look(String className) {
    new TreeMap<>(ink.of(className)).forEach(this::attribute);
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(XmlText.escaped(value)).append('"');
  }

  private static String word(Anchor anchor) {
    return switch (anchor) {
      case START -> "start";
      case MIDDLE -> "middle";
      case END -> "end";
    };
  }

  /** A coordinate with at most two places. */
  static String number(double value) {
    if (!(Math.abs(value) <= FARTHEST)) {
      throw new IllegalArgumentException("a coordinate of " + value + " cannot be drawn");
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
