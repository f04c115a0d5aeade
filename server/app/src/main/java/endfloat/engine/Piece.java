package endfloat.engine;

import endfloat.working.Parser;
import endfloat.working.Span;
import endfloat.working.Working;
import java.util.List;

/**
 * One statement of a working: its line, or the lines that a bracket holds together. A working is
 * cut up so that an edit parses the line that changed and no other.
 *
 * @param firstLine number of lines before it
 * @param text of it
 */
record Piece(int firstLine, String text) {
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
    return endfloat.working.Piece.of(working).stream()
        .map(p -> new Piece(p.firstLine(), working.substring(p.from(), p.to())))
        .toList();
  }
}
