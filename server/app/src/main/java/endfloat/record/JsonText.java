package endfloat.record;

/**
 * A text between quotes, escaped as RFC 8785, 3.2.2.2 has it: the short forms, {@code \\u00xx} in
 * small letters for other control characters, and nothing else.
 */
final class JsonText {
  private static final char[] HEX = "0123456789abcdef".toCharArray();

  private JsonText() {}

  static void append(String text, StringBuilder out) {
    out.append('"');
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ' && c != '"' && c != '\\') {
        continue;
      }
      out.append(text, from, i);
      from = i + 1;
      escape(c, out);
    }
    out.append(text, from, text.length()).append('"');
  }

  private static void escape(char c, StringBuilder out) {
    out.append('\\');
    switch (c) {
      case '"', '\\' -> out.append(c);
      case '\b' -> out.append('b');
      case '\f' -> out.append('f');
      case '\n' -> out.append('n');
      case '\r' -> out.append('r');
      case '\t' -> out.append('t');
      default -> out.append("u00").append(HEX[c >> 4]).append(HEX[c & 15]);
    }
  }
}
