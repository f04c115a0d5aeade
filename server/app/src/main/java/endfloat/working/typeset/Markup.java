package endfloat.working.typeset;

/** Pieces of MathML. */
final class Markup {
  private Markup() {}

  static String element(String name, String... inner) {
    return "<" + name + ">" + String.join("", inner) + "</" + name + ">";
  }

  static String row(String... inner) {
    return element("mrow", inner);
  }

  static String sign(String sign) {
    return "<mo>" + XmlText.escaped(sign) + "</mo>";
  }

  static String upright(String text) {
    return "<mi mathvariant=\"normal\">" + XmlText.escaped(text) + "</mi>";
  }

  /** A text; blanks at its ends are kept, which an element would lose. */
  static String text(String text) {
    String kept = text.startsWith(" ") ? "\u00a0" + text.substring(1) : text;
    kept = kept.endsWith(" ") ? kept.substring(0, kept.length() - 1) + "\u00a0" : kept;
    return element("mtext", XmlText.escaped(kept));
  }

  /** A small space, of a factor or a unit. */
  static String space() {
    return "<mspace width=\".2em\"></mspace>";
  }

  static String bracketed(String inner) {
    return row("<mo stretchy=\"true\">(</mo>", inner, "<mo stretchy=\"true\">)</mo>");
  }
}
