package endfloat.report.pdf;

import endfloat.report.pdf.FormulaPiece.Letters;
import endfloat.report.pdf.FormulaPiece.Root;
import endfloat.report.pdf.FormulaPiece.Rule;
import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Sets the MathML that the sheet writes: rows, fractions, roots, indices, powers and cases. The
 * measures are those of the face's own MATH table where it has one for the purpose.
 *
 * @param size of the type to that of the formula
 * @param display whether fractions have their full size
 */
record FormulaSetting(double size, boolean display) {
  // constants of the MATH table of Endfloat Maths, to which FormulaSettingTest holds them
  static final double SCRIPT = 0.7;
  static final double SCRIPT_OF_SCRIPT = 0.55;
  static final double AXIS = 0.258;
  static final double SUB_DOWN = 0.21;
  static final double SUP_UP = 0.36;
  static final double AFTER_SCRIPT = 0.04;
  static final double TIGHT_GAP = 0.068;
  static final double GAP = 0.15;
  static final double STROKE = 0.068;

  /** Part of what it encloses that a bracket must cover; an index below need not be. */
  private static final double COVERED = 0.92;

  /** The atoms of a whole formula, in their order. */
  static List<FormulaAtom> of(List<Element> rows, boolean display) {
    return new FormulaSetting(1, display).atoms(rows, 0);
  }

  static List<Element> children(Element of) {
    List<Element> elements = new ArrayList<>();
    for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        elements.add(element);
      }
    }
    return elements;
  }

  private FormulaSetting script() {
    return new FormulaSetting(Math.max(size * SCRIPT, SCRIPT_OF_SCRIPT), false);
  }

  private FormulaPiece set(Element element) {
    List<Element> inner = children(element);
    return switch (element.getLocalName()) {
      case "mi" -> letters(italic(element), 1);
      case "mn", "mtext" -> letters(element.getTextContent(), 1);
      case "mo" -> letters(element.getTextContent(), 1);
      case "mspace" -> FormulaPiece.space(em(element, "width"));
      case "mpadded" -> row(inner).sized(em(element, "height"), em(element, "depth"));
      case "mfrac" -> fraction(inner.get(0), inner.get(1));
      case "msub" -> below(set(inner.get(0)), script().set(inner.get(1)));
      case "msup" -> above(set(inner.get(0)), script().set(inner.get(1)));
      case "msqrt" -> root(row(inner), FormulaPiece.NOTHING);
      case "mroot" -> root(set(inner.get(0)), script().script().set(inner.get(1)));
      case "mtable" -> table(inner);
      case "mrow", "math", "mtd" -> row(inner);
      default -> throw new IllegalStateException("no way to set " + element.getLocalName());
    };
  }

  private double em(Element element, String attribute) {
    String text = element.getAttribute(attribute);
    return text.isEmpty() ? 0 : size * Double.parseDouble(text.replace("em", ""));
  }

  private FormulaPiece letters(String text, double stretch) {
    Face.Reach reach = Face.MATHS.reach(text);
    Letters letters = new Letters(text, 0, 0, size, stretch);
    return new FormulaPiece(
        size * Face.MATHS.width(text),
        size * stretch * reach.above(),
        size * stretch * reach.below(),
        List.of(letters));
  }

  /** A single letter is a quantity and slanted; more of them are a word. */
  private static String italic(Element element) {
    String text = element.getTextContent();
    boolean upright = element.getAttribute("mathvariant").equals("normal");
    if (upright || text.codePointCount(0, text.length()) != 1) {
      return text;
    }
    int slanted = slanted(text.codePointAt(0));
    return Face.MATHS.has(slanted) ? Character.toString(slanted) : text;
  }

  /** Mathematical Alphanumeric Symbols, Unicode 15.0. */
  private static int slanted(int letter) {
    if (letter == 'h') {
      return 0x210E;
    }
    return letter >= 'a' && letter <= 'z'
        ? 0x1D44E + letter - 'a'
        : letter >= 'A' && letter <= 'Z' ? 0x1D434 + letter - 'A' : letter;
  }

  /** Side by side. */
  private FormulaPiece row(List<Element> elements) {
    return atoms(elements, 0).stream()
        .map(FormulaAtom::piece)
        .reduce(FormulaPiece.NOTHING, FormulaPiece::then);
  }

  /** What stands side by side, rows in rows too; brackets grow with what stands between them. */
  private List<FormulaAtom> atoms(List<Element> elements, int level) {
    boolean bracketed = elements.stream().anyMatch(FormulaSetting::isBracket);
    List<List<FormulaAtom>> parts = new ArrayList<>();
    double height = 0;
    double depth = 0;
    for (int i = 0; i < elements.size(); i++) {
      List<FormulaAtom> part = part(elements, i, bracketed ? level + 1 : level);
      parts.add(part);
      for (FormulaAtom atom : part) {
        height = Math.max(height, atom.piece().height());
        depth = Math.max(depth, atom.piece().depth());
      }
    }
    List<FormulaAtom> all = new ArrayList<>();
    for (int i = 0; i < elements.size(); i++) {
      if (isBracket(elements.get(i))) {
        String sign = elements.get(i).getTextContent();
        all.add(new FormulaAtom(bracket(sign, height, depth), level, false));
      } else {
        all.addAll(parts.get(i));
      }
    }
    return all;
  }

  private List<FormulaAtom> part(List<Element> elements, int at, int level) {
    Element element = elements.get(at);
    if (isBracket(element)) {
      return List.of();
    }
    if (element.getLocalName().equals("mrow")) {
      return atoms(children(element), level);
    }
    FormulaPiece piece = set(element);
    if (element.getLocalName().equals("mo")) {
      Signs.Room room = Signs.around(element, at == 0);
      FormulaPiece roomy =
          FormulaPiece.space(size * room.before())
              .then(piece)
              .then(FormulaPiece.space(size * room.after()));
      return List.of(new FormulaAtom(roomy, level, Signs.mayBreakBefore(element, at == 0)));
    }
    boolean after = at > 0 && elements.get(at - 1).getTextContent().equals(",");
    boolean unit = at + 1 < elements.size() && elements.get(at + 1).getLocalName().equals("mtext");
    boolean factor =
        element.getLocalName().equals("mspace")
            && at > 0
            && !unit
            && !isFunction(elements.get(at - 1));
    boolean words = element.getTextContent().startsWith("\u00a0");
    return List.of(new FormulaAtom(piece, level, after || factor || words));
  }

  /** A word such as sin, whose argument stays with it. */
  private static boolean isFunction(Element element) {
    return element.getLocalName().equals("mi") && element.getTextContent().length() > 1;
  }

  private static boolean isBracket(Element element) {
    return element.getLocalName().equals("mo") && element.getAttribute("stretchy").equals("true");
  }

  /** As high as what it encloses, even about the axis; never lower than by itself. */
  private FormulaPiece bracket(String sign, double height, double depth) {
    FormulaPiece plain = letters(sign, 1);
    double axis = AXIS * size;
    double needed = COVERED * 2 * Math.max(height - axis, depth + axis);
    double itself = plain.height() + plain.depth();
    if (needed <= itself * 1.25) {
      return plain;
    }
    FormulaPiece stretched = letters(sign, needed / itself);
    double middle = (stretched.height() - stretched.depth()) / 2;
    return stretched.raised(axis - middle);
  }

  private FormulaPiece fraction(Element over, Element under) {
    // small already in a power: smaller still could not be read on paper
    FormulaSetting part = display || size < 1 ? new FormulaSetting(size, false) : script();
    FormulaPiece top = part.set(over);
    FormulaPiece bottom = part.set(under);
    double stroke = STROKE * size;
    double gap = (display ? GAP : TIGHT_GAP) * size;
    double side = 0.08 * size;
    double width = Math.max(top.width(), bottom.width()) + 2 * side;
    double axis = AXIS * size;
    double up = axis + stroke / 2 + gap + top.depth();
    double down = axis - stroke / 2 - gap - bottom.height();
    FormulaPiece bar =
        new FormulaPiece(
            width,
            axis + stroke / 2,
            0,
            List.of(new Rule(0.02 * size, axis - stroke / 2, width - 0.04 * size, stroke)));
    return bar.with(top, (width - top.width()) / 2, up)
        .with(bottom, (width - bottom.width()) / 2, down)
        .wide(width + 0.06 * size);
  }

  private FormulaPiece below(FormulaPiece base, FormulaPiece script) {
    double down = Math.max(SUB_DOWN * size, base.depth() + 0.05 * size);
    return base.with(script, base.width() + 0.02 * size, -down)
        .wide(base.width() + script.width() + AFTER_SCRIPT * size);
  }

  private FormulaPiece above(FormulaPiece base, FormulaPiece script) {
    double up = Math.max(SUP_UP * size, base.height() - 0.3 * size);
    return base.with(script, base.width() + 0.04 * size, up)
        .wide(base.width() + script.width() + (AFTER_SCRIPT + 0.04) * size);
  }

  private FormulaPiece root(FormulaPiece inner, FormulaPiece degree) {
    double stroke = STROKE * size;
    double gap = 0.12 * size;
    double height = Math.max(inner.height(), 0.5 * size) + gap;
    double depth = inner.depth() + 0.04 * size;
    double hook = 0.55 * size + 0.05 * (height + depth);
    double left = Math.max(0, degree.width() - 0.3 * hook);
    double width = inner.width() + 0.08 * size;
    FormulaPiece sign =
        new FormulaPiece(
            left + hook + width,
            height + stroke,
            depth,
            List.of(
                new Root(left, -depth, hook, height + depth + stroke, stroke),
                new Rule(left + hook - stroke / 2, height, width + stroke / 2, stroke)));
    return sign.with(inner, left + hook, 0)
        .with(degree, Math.max(0, 0.3 * hook - degree.width()), -depth + 0.55 * (height + depth))
        .wide(left + hook + width + 0.06 * size);
  }

  /** Cases under each other, about the axis; columns begin on one line. */
  private FormulaPiece table(List<Element> rows) {
    FormulaSetting cell = new FormulaSetting(size, false);
    List<List<FormulaPiece>> cells =
        rows.stream().map(row -> children(row).stream().map(cell::set).toList()).toList();
    List<Double> columns = new ArrayList<>();
    for (List<FormulaPiece> row : cells) {
      for (int i = 0; i < row.size(); i++) {
        if (i == columns.size()) {
          columns.add(0.0);
        }
        columns.set(i, Math.max(columns.get(i), row.get(i).width()));
      }
    }
    FormulaPiece all = FormulaPiece.NOTHING;
    double line = 0;
    for (List<FormulaPiece> row : cells) {
      FormulaPiece set = FormulaPiece.NOTHING;
      double x = 0;
      for (int i = 0; i < row.size(); i++) {
        set = set.with(row.get(i), x, 0);
        x += columns.get(i) + 0.8 * size;
      }
      double height = Math.max(set.height(), 0.75 * size);
      line -= height;
      all = all.with(set, 0, line);
      line -= Math.max(set.depth(), 0.25 * size) + 0.1 * size;
    }
    return all.raised(AXIS * size - line / 2).wide(all.width() + 0.1 * size);
  }
}
