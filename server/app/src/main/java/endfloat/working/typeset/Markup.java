package endfloat.working.typeset;

/** Pieces of MathML. */
final class Markup {
  private Markup() {}

  /** A text as the content or the attribute of an element. */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> {
          if (Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1))) {
            escaped.append(c).append(text.charAt(++i));
          } else {
            escaped.append(isOfXml(c) ? c : '\ufffd');
          }
        }
      }
    }
    return escaped.toString();
  }

  private static boolean isOfXml(char c) {
    return c == '\t' || (c >= ' ' && !Character.isSurrogate(c) && c != '\ufffe' && c != '\uffff');
  }

  static String element(String name, String... inner) {
    return "<" + name + ">" + String.join("", inner) + "</" + name + ">";
  }

  static String row(String... inner) {
    return element("mrow", inner);
  }

  static String sign(String sign) {
    return "<mo>" + escaped(sign) + "</mo>";
  }

  static String upright(String text) {
    return "<mi mathvariant=\"normal\">" + escaped(text) + "</mi>";
  }

  /** A text; blanks at its ends are kept, which an element would lose. */
  static String text(String text) {
    String kept = text.startsWith(" ") ? "\u00a0" + text.substring(1) : text;
    kept = kept.endsWith(" ") ? kept.substring(0, kept.length() - 1) + "\u00a0" : kept;
    return element("mtext", escaped(kept));
  }

  /** A small space, of a factor or a unit. */
  static String space() {
    return "<mspace width=\".2em\"></mspace>";
  }

  static String bracketed(String inner) {
    return row("<mo stretchy=\"true\">(</mo>", inner, "<mo stretchy=\"true\">)</mo>");
  }
}
