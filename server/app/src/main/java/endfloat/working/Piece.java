package endfloat.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a working that belong to one statement: one line, or several that an open bracket
 * holds together. A line that looks like the start of a statement, and closes no more brackets than
 * it opens, begins a piece of its own even there, so that a bracket left open harms its own
 * statement only. Each piece can be read by itself.
 *
 * @param firstLine number of lines before it
 * @param from offset of its first letter
 * @param to offset after its last, the newline left out
 */
public record Piece(int firstLine, int from, int to) {
  private static final Pattern STATEMENT =
      Pattern.compile(
          "\\s*(?:(?:[\\p{L}_][\\p{L}\\d_]*\\s*(?:\\[[^\\n]*?])?\\s*=(?!=))|limit\\s|correlate\\s)");

  /** All pieces of a working in order; blank lines and comments are pieces too. */
  public static List<Piece> of(String working) {
    List<Piece> pieces = new ArrayList<>();
    int line = 0;
    int from = 0;
    while (from <= working.length()) {
      int first = line;
      int to = end(working, from);
      line++;
      int depth = depth(working, from, to, 0);
      while (depth > 0 && to < working.length() && !begins(working, to + 1)) {
        int next = end(working, to + 1);
        depth = depth(working, to + 1, next, depth);
        to = next;
        line++;
      }
      pieces.add(new Piece(first, from, to));
      from = to + 1;
    }
    return pieces;
  }

  private static int end(String text, int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }

  private static boolean begins(String text, int from) {
    int to = end(text, from);
    Matcher matcher = STATEMENT.matcher(text).region(from, to);
    return matcher.lookingAt() && depth(text, from, to, 1000) >= 1000;
  }

  /** Brackets open after a line, those in texts and comments left out. */
  private static int depth(String text, int from, int to, int before) {
    int depth = before;
    char quote = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '“') {
        quote = c == '"' ? '"' : '”';
      } else if (c == '(' || c == '[') {
        depth++;
      } else if (c == ')' || c == ']') {
        depth = Math.max(0, depth - 1);
      } else if (c == '-' && isComment(text, i)) {
        return depth;
      }
    }
    return depth;
  }

  /** Two or more dashes with a blank or the line's start before and a blank or its end after. */
  static boolean isComment(String text, int at) {
    if (!text.startsWith("--", at)) {
      return false;
    }
    if (at > 0 && text.charAt(at - 1) != '\n' && !Letters.isBlank(text.charAt(at - 1))) {
      return false;
    }
    int after = at;
    while (after < text.length() && text.charAt(after) == '-') {
      after++;
    }
    return after == text.length()
        || text.charAt(after) == '\n'
        || Letters.isBlank(text.charAt(after));
  }
}
