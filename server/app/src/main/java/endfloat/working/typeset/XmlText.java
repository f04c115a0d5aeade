package endfloat.working.typeset;

/** A text as the content or a quoted attribute of an element of XML, SVG, MathML or HTML. */
public final class XmlText {
  private static final int REPLACEMENT = 0xFFFD;

  private XmlText() {}

  /**
   * Escapes what would be markup; what XML cannot hold becomes U+FFFD.
   *
   * @param text any text, also one that came from outside
   */
  public static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isOfXml(c) ? c : REPLACEMENT);
              }
            });
    return safe.toString();
  }

  /** Char of XML 1.0 (fifth edition), production 2. */
  private static boolean isOfXml(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
