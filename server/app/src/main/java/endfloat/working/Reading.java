package endfloat.working;

import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Where the reader of lines stands, and what it has read of the statement at hand. */
final class Reading {
  final SourceText source;
  final String text;
  final List<Token> painted = new ArrayList<>();
  List<Lexeme> lexemes = new ArrayList<>();
  int at;

  Reading(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  /** The letter at an offset; a line end past the text. */
  char letter(int offset) {
    return offset < text.length() && offset >= 0 ? text.charAt(offset) : '\n';
  }

  /** First offset from here on that is no blank. */
  int pastBlanks(int offset) {
    int after = offset;
    while (after < text.length() && Letters.isBlank(text.charAt(after))) {
      after++;
    }
    return after;
  }

  int pastName(int offset) {
    int after = offset;
    while (Letters.inName(letter(after))) {
      after++;
    }
    return after;
  }

  int pastDigits(int offset) {
    int after = offset;
    while (Letters.isDigit(letter(after))) {
      after++;
    }
    return after;
  }

  /** Type of the lexeme before the last {@code back}; 0 where there is none. */
  int typeBack(int back) {
    int index = lexemes.size() - 1 - back;
    return index < 0 ? 0 : lexemes.get(index).getType();
  }

  /** Takes the text from here to an offset as one token. */
  void take(int type, int to, String kind) {
    take(type, text.substring(at, to), to, kind, null);
  }

  void take(int type, String read, int to, String kind, Unit unit) {
    lexemes.add(new Lexeme(type, read, at, to, unit));
    paint(at, to, kind);
    at = to;
  }

  void paint(int from, int to, String kind) {
    if (to > from) {
      painted.add(new Token(source.span(from, to), kind));
    }
  }
}
