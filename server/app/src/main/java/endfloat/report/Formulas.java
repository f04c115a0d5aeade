package endfloat.report;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Formulas as the sheet sets them, made fit for paper and for a file that is read as XML too. */
final class Formulas {
  private static final String NAMESPACE = "xmlns=\"http://www.w3.org/1998/Math/MathML\" ";
  private static final Pattern WHOLE =
      Pattern.compile("<math ([^>]*)><mrow>(.*)</mrow></math>", Pattern.DOTALL);
  private static final Pattern TAG = Pattern.compile("<(/?)([a-z]+)[^>]*>");
  private static final Pattern SIGN = Pattern.compile("<mo>[+\u2212=\u00d7\u00b1]</mo>");

  private Formulas() {}

  /**
   * A formula that a line of paper may break before each sign that stands in no bracket and before
   * each factor. The first piece is labelled with the whole formula.
   */
  static String inXml(String math) {
    Matcher whole = WHOLE.matcher(math);
    if (!whole.matches()) {
      return math.replace("<math ", "<math " + NAMESPACE);
    }
    String inner = whole.group(2);
    StringBuilder out = new StringBuilder();
    int from = 0;
    int depth = 0;
    Matcher tag = TAG.matcher(inner);
    while (tag.find()) {
      boolean sign = SIGN.matcher(inner).region(tag.start(), inner.length()).lookingAt();
      boolean factor = tag.group(2).equals("mspace") && tag.group(1).isEmpty();
      if (depth == 0 && tag.start() > from && (sign || factor)) {
        piece(out, whole.group(1), inner.substring(from, tag.start()), from == 0);
        from = tag.start();
      }
      depth += tag.group(1).isEmpty() ? 1 : -1;
      if (depth < 0) {
        // two rows side by side, not one around all
        return math.replace("<math ", "<math " + NAMESPACE);
      }
    }
    piece(out, whole.group(1), inner.substring(from), from == 0);
    return out.toString();
  }

  private static void piece(StringBuilder out, String attributes, String inner, boolean first) {
    out.append(first ? "<math " : " <math ").append(NAMESPACE);
    out.append(first ? attributes : "displaystyle=\"true\" aria-hidden=\"true\"");
    // at the head of a piece a sign still stands between two terms
    String row = first ? inner : inner.replaceFirst("^<mo>", "<mo form=\"infix\">");
    out.append("><mrow>").append(row).append("</mrow></math>");
  }
}
