package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;

/** Cuts the pieces of a working into tokens; a newline inside a piece is a blank. */
final class LineReader {
  private static final Pattern NOTE = Pattern.compile("\\(\\s*(?:k|dof)\\s*=");
  private static final Pattern REMARK = Pattern.compile("\\(\\s*(?:condition|state|rule)\\s*:");

  private final Reading reading;
  private final UnitReader units;
  private final NumberReader numbers;
  private final SignReader signs;
  private Nesting nesting = new Nesting();
  private String comment = "";
  private Refusal refusal;
  private int from = -1;
  private boolean spread;

  LineReader(SourceText source) {
    reading = new Reading(source);
    units = new UnitReader(reading);
    numbers = new NumberReader(reading, units);
    signs = new SignReader(reading);
  }

  /** Tokens for the editor, of all statements read so far. */
  List<endfloat.working.Token> painted() {
    return reading.painted;
  }

  List<Statement> statements() {
    List<Statement> statements = new ArrayList<>();
    for (Piece piece : Piece.of(reading.text)) {
      reading.at = piece.from();
      while (reading.at < piece.to()) {
        char c = reading.letter(reading.at);
        if (c == '\n' || Letters.isBlank(c)) {
          reading.at++;
        } else {
          if (from < 0) {
            from = reading.at;
          }
          token(c);
        }
      }
      finish(statements);
    }
    return statements;
  }

  private void finish(List<Statement> statements) {
    if (!reading.lexemes.isEmpty() || refusal != null) {
      int end = reading.at;
      reading.lexemes.add(new Lexeme(Token.EOF, "", end, end, null));
      statements.add(
          new Statement(
              reading.lexemes, comment, Optional.ofNullable(refusal), from, lastLetter(end)));
    }
    reading.lexemes = new ArrayList<>();
    nesting = new Nesting();
    comment = "";
    refusal = null;
    from = -1;
    spread = false;
  }

  private int lastLetter(int end) {
    return reading.lexemes.size() > 1
        ? Math.max(reading.lexemes.get(reading.lexemes.size() - 2).to(), from)
        : end;
  }

  private void token(char c) {
    int before = reading.typeBack(0);
    int count = reading.lexemes.size();
    int start = reading.at;
    try {
      one(c);
      for (int i = count; i < reading.lexemes.size(); i++) {
        nesting.count(reading.lexemes.get(i), i == count ? before : WorkingGrammar.NUMBER);
      }
    } catch (Refusal e) {
      if (refusal == null) {
        refusal = e;
      }
      int end = Math.max(e.to(), start + 1);
      if (end > reading.at) {
        reading.paint(Math.max(e.from(), reading.at), end, "wrong");
        reading.at = end;
      }
    }
  }

  private void one(char c) {
    if (Letters.isDigit(c)) {
      numbers.take();
      refuseBracket();
    } else if (Letters.startsName(c)) {
      name();
    } else if (c == '"' || c == '“') {
      text(c == '"' ? '"' : '”');
    } else if (Piece.isComment(reading.text, reading.at)) {
      comment();
    } else if (c == '(') {
      bracket();
    } else if (c == '[' && reading.lexemes.size() == 1 && isName(0)) {
      units.takeMark();
    } else if (c == '[' && isName(0)) {
      throw new Refusal(
          reading.at,
          reading.at + 1,
          "A value has no places in brackets",
          "Choose a station by name, such as pick(bore, cylinder: 3)");
    } else {
      signs.take(c, nesting.brackets());
      spread |= reading.typeBack(0) == WorkingGrammar.PLUS_MINUS;
    }
  }

  private boolean isName(int back) {
    return reading.typeBack(back) == WorkingGrammar.NAME;
  }

  private void name() {
    int end = reading.pastName(reading.at);
    String typed = reading.text.substring(reading.at, end);
    int next = reading.pastBlanks(end);
    boolean colon = reading.letter(next) == ':' && nesting.brackets() > 0;
    boolean field = reading.typeBack(0) == WorkingGrammar.DOT;
    if (field) {
      reading.take(WorkingGrammar.NAME, Letters.name(typed), end, "field", null);
    } else if (colon) {
      reading.take(WorkingGrammar.ARGUMENT, Letters.name(typed), end, "argument", null);
    } else if (LineWords.isWord(typed)) {
      reading.take(LineWords.type(typed), end, "word");
    } else if (reading.letter(next) == '(' && !opensNote(next) && !opensRemark(next)) {
      reading.take(WorkingGrammar.FUNCTION, Letters.name(typed), end, "function", null);
    } else {
      reading.take(WorkingGrammar.NAME, Letters.name(typed), end, "name", null);
    }
  }

  private boolean opensNote(int at) {
    return spread
        && nesting.brackets() == 0
        && NOTE.matcher(reading.text).region(at, reading.text.length()).lookingAt();
  }

  private boolean opensRemark(int at) {
    return !reading.lexemes.isEmpty()
        && reading.lexemes.get(0).getType() == WorkingGrammar.LIMIT
        && nesting.brackets() == 0
        && REMARK.matcher(reading.text).region(at, reading.text.length()).lookingAt();
  }

  private void bracket() {
    int type = WorkingGrammar.OPEN;
    boolean afterValue = endsValue() || isName(0);
    if (afterValue && opensNote(reading.at)) {
      type = WorkingGrammar.NOTE_OPEN;
    } else if ((afterValue && opensRemark(reading.at)) || (inLimit() && endsValue())) {
      type = WorkingGrammar.REMARK_OPEN;
    } else if (reading.typeBack(0) == WorkingGrammar.CLOSE
        || reading.typeBack(0) == WorkingGrammar.LIST_CLOSE) {
      throw new Refusal(
          reading.at,
          reading.at + 1,
          "Between the two brackets a sign is missing",
          "Write * for a product: (a + b) * (c + d)");
    }
    reading.take(type, reading.at + 1, "sign");
  }

  private boolean inLimit() {
    return nesting.brackets() == 0
        && !reading.lexemes.isEmpty()
        && reading.lexemes.get(0).getType() == WorkingGrammar.LIMIT;
  }

  private boolean endsValue() {
    return switch (reading.typeBack(0)) {
      case WorkingGrammar.NUMBER,
          WorkingGrammar.UNIT,
          WorkingGrammar.TEXT,
          WorkingGrammar.CLOSE,
          WorkingGrammar.LIST_CLOSE ->
          true;
      default -> false;
    };
  }

  /** {@code 2(a + b)}, read by some as a product. */
  private void refuseBracket() {
    int next = reading.pastBlanks(reading.at);
    if (reading.letter(next) != '(' || opensNote(next) || opensRemark(next) || inLimit()) {
      return;
    }
    if (spread) {
      throw new Refusal(
          next,
          next + 1,
          "What stands in brackets after ± says how wide it is",
          "Write (k = 2) or (k = 2, dof = 12)");
    }
    Lexeme number = reading.lexemes.get(reading.lexemes.size() - 1);
    String typed = reading.text.substring(number.from(), number.to());
    throw new Refusal(
        next,
        next + 1,
        "Between the number and the bracket a sign is missing",
        number.getType() == WorkingGrammar.UNIT
            ? "Write * before the bracket"
            : "Write " + typed + " * (...)");
  }

  private void text(char close) {
    int start = reading.at;
    StringBuilder text = new StringBuilder();
    int end = start + 1;
    while (true) {
      char c = reading.letter(end);
      if (c == '\n') {
        throw new Refusal(start, end, "The text is not closed", "Close it with \"");
      }
      end++;
      if (c == close) {
        if (close != '"' || reading.letter(end) != '"') {
          break;
        }
        end++;
      }
      text.append(c);
    }
    reading.take(WorkingGrammar.TEXT, text.toString(), end, "text", null);
  }

  private void comment() {
    int start = reading.at;
    int end = reading.text.indexOf('\n', start);
    end = end < 0 ? reading.text.length() : end;
    int after = start;
    while (reading.letter(after) == '-') {
      after++;
    }
    String said = reading.text.substring(after, end).strip();
    if (!reading.lexemes.isEmpty()) {
      comment = comment.isEmpty() ? said : comment + " " + said;
    } else {
      from = -1;
    }
    reading.paint(start, end, "comment");
    reading.at = end;
  }
}
