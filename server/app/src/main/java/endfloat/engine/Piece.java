package endfloat.engine;

import endfloat.working.Parser;
import endfloat.working.Span;
import endfloat.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One statement of a working: its line, or the lines that a bracket holds together. A working is
 * cut up so that an edit parses the line that changed and no other.
 *
 * @param firstLine number of lines before it
 * @param text of it
 */
record Piece(int firstLine, String text) {
  private static final Pattern STATEMENT =
      Pattern.compile(
          "\\s*(?:(?:[\\p{L}_][\\p{L}\\d_]*\\s*(?:\\[[^\\n]*?])?\\s*=(?!=))|limit\\s|correlate\\s)");

  Working parse() {
    return Parser.parse(text);
  }

  boolean isBlank() {
    return text.isBlank();
  }

  /** What stands at a place of this piece. */
  String at(Span span) {
    String[] lines = text.split("\n", -1);
    if (span.line() < 1 || span.line() > lines.length) {
      return text;
    }
    String line = lines[span.line() - 1];
    int from = Math.max(0, Math.min(line.length(), span.from() - 1));
    if (span.to() - 1 > line.length()) {
      return text.strip();
    }
    return line.substring(from, Math.max(from, span.to() - 1));
  }

  /** A working in pieces, in order. */
  static List<Piece> of(String working) {
    List<Piece> pieces = new ArrayList<>();
    String[] lines = working.split("\n", -1);
    int at = 0;
    while (at < lines.length) {
      int end = end(lines, at);
      String text = end == at + 1 ? lines[at] : String.join("\n", List.of(lines).subList(at, end));
      pieces.add(new Piece(at, text));
      at = end;
    }
    return pieces;
  }

  /** The line after the last that an open bracket holds, by the same rule as the parser's. */
  private static int end(String[] lines, int from) {
    int depth = depth(lines[from]);
    int next = from + 1;
    while (depth > 0
        && next < lines.length
        && !(STATEMENT.matcher(lines[next]).lookingAt() && depth(lines[next]) >= 0)) {
      depth += depth(lines[next++]);
    }
    return next;
  }

  private static int depth(String line) {
    int depth = 0;
    boolean text = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        text = !text;
      } else if (!text && (c == '(' || c == '[')) {
        depth++;
      } else if (!text && (c == ')' || c == ']')) {
        depth--;
      } else if (!text && isComment(line, i)) {
        return depth;
      }
    }
    return depth;
  }

  private static boolean isComment(String line, int at) {
    return line.startsWith("--", at)
        && (at == 0 || Character.isWhitespace(line.charAt(at - 1)))
        && (at + 2 == line.length() || Character.isWhitespace(line.charAt(at + 2)));
  }
}
