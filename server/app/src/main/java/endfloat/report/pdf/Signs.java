package endfloat.report.pdf;

import java.util.Set;
import org.w3c.dom.Element;

/** The room about a sign, as the operator dictionary of MathML Core gives it (appendix B). */
final class Signs {
  private static final Set<String> SUM = Set.of("+", "\u2212", "±");
  private static final Set<String> PRODUCT = Set.of("×", "·");
  private static final Set<String> RELATION = Set.of("=", "<", ">", "≤", "≥", "≠", "≈");

  private Signs() {}

  /** In em of the type. */
  record Room(double before, double after) {}

  /**
   * @param first whether nothing stands before it: a sign is then that of a number
   */
  static Room around(Element sign, boolean first) {
    String text = sign.getTextContent();
    boolean between = !first || sign.getAttribute("form").equals("infix");
    if (SUM.contains(text) || PRODUCT.contains(text)) {
      return between ? new Room(4 / 18.0, 4 / 18.0) : new Room(0, 0);
    }
    if (RELATION.contains(text)) {
      return new Room(5 / 18.0, 5 / 18.0);
    }
    return text.equals(",") ? new Room(0, 3 / 18.0) : new Room(0, 0);
  }

  /** A line may be broken before a sign between two terms. */
  static boolean mayBreakBefore(Element sign, boolean first) {
    String text = sign.getTextContent();
    boolean between = !first || sign.getAttribute("form").equals("infix");
    return between && (SUM.contains(text) || PRODUCT.contains(text) || RELATION.contains(text));
  }
}
