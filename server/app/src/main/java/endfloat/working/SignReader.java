package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;

/** Takes one sign; several spellings of a sign are one token. */
final class SignReader {
  private final Reading reading;

  SignReader(Reading reading) {
    this.reading = reading;
  }

  void take(char c, int brackets) {
    switch (c) {
      case '+' -> plus();
      case '-' -> minus();
      case '\u2212' -> take(WorkingGrammar.MINUS, 1);
      case '*' -> times();
      case '·', '⋅', '×' -> take(WorkingGrammar.TIMES, 1);
      case '/', '÷' -> take(WorkingGrammar.OVER, 1);
      case '^' -> take(WorkingGrammar.POWER, 1);
      case '±' -> take(WorkingGrammar.PLUS_MINUS, 1);
      case '<' -> compare(WorkingGrammar.LESS, WorkingGrammar.AT_MOST);
      case '>' -> compare(WorkingGrammar.GREATER, WorkingGrammar.AT_LEAST);
      case '≤' -> take(WorkingGrammar.AT_MOST, 1);
      case '≥' -> take(WorkingGrammar.AT_LEAST, 1);
      case '≠' -> take(WorkingGrammar.UNEQUAL, 1);
      case '=' -> equal();
      case '!' -> unequal();
      case ')' -> close(WorkingGrammar.CLOSE, brackets);
      case ']' -> close(WorkingGrammar.LIST_CLOSE, brackets);
      case '[' -> take(WorkingGrammar.LIST_OPEN, 1);
      case ',' -> take(WorkingGrammar.COMMA, 1);
      case ':' -> colon();
      case '.' -> point();
      default -> throw unknown(c);
    }
  }

  private void take(int type, int length) {
    reading.take(type, reading.at + length, "sign");
  }

  private char next() {
    return reading.letter(reading.at + 1);
  }

  private Refusal refused(int length, String message, String wayOut) {
    return new Refusal(reading.at, reading.at + length, message, wayOut);
  }

  private void plus() {
    if (next() == '/' && reading.letter(reading.at + 2) == '-') {
      take(WorkingGrammar.PLUS_MINUS, 3);
    } else if (next() == '-' || next() == '\u2212') {
      // On a keyboard without the sign this is ±; as a sum of a negative value 90 +- 0.02 would
      // come out 89.98 and look right. That sum is written with a blank between, or with - alone.
      take(WorkingGrammar.PLUS_MINUS, 2);
    } else if (next() == '+') {
      throw refused(2, "++ is no sign of the language", "Write + once");
    } else {
      take(WorkingGrammar.PLUS, 1);
    }
  }

  private void minus() {
    if (next() == '-') {
      int end = reading.at;
      while (reading.letter(end) == '-') {
        end++;
      }
      throw refused(
          end - reading.at,
          "-- begins a comment only with a blank before and after it",
          "Write \" -- \" for a comment, or a - -b to take away a negative value");
    }
    take(WorkingGrammar.MINUS, 1);
  }

  private void times() {
    if (next() == '*') {
      throw refused(2, "** is no sign of the language", "Write ^ for a power");
    }
    take(WorkingGrammar.TIMES, 1);
  }

  private void compare(int alone, int withEqual) {
    if (next() == '=') {
      take(withEqual, 2);
    } else if (next() == '>') {
      throw refused(2, "<> is no sign of the language", "Write != for \"is not\"");
    } else {
      take(alone, 1);
    }
  }

  private void equal() {
    if (next() == '=') {
      throw refused(2, "== is no sign of the language", "Write = once");
    }
    if (next() == '<' || next() == '>') {
      throw refused(2, "=" + next() + " is no sign of the language", "Write " + next() + "=");
    }
    take(WorkingGrammar.EQUAL, 1);
  }

  private void unequal() {
    if (next() != '=') {
      throw refused(1, "! is no sign of the language", "Write not, or != for \"is not\"");
    }
    take(WorkingGrammar.UNEQUAL, 2);
  }

  private void close(int type, int brackets) {
    if (brackets == 0) {
      throw refused(1, "This bracket closes nothing", "Open it before, or take it out");
    }
    take(type, 1);
  }

  private void colon() {
    if (next() == '=') {
      throw refused(2, ":= is no sign of the language", "Write =");
    }
    take(WorkingGrammar.COLON, 1);
  }

  private void point() {
    char next = next();
    if (next == '.') {
      if (reading.letter(reading.at + 2) == '.') {
        throw refused(3, "... is no sign of the language", "Write two points between two limits");
      }
      take(WorkingGrammar.UP_TO, 2);
    } else if (Letters.isDigit(next)) {
      int end = reading.pastDigits(reading.at + 1);
      String digits = reading.text.substring(reading.at, end);
      throw refused(end - reading.at, "The number begins with a point", "Write 0" + digits);
    } else {
      take(WorkingGrammar.DOT, 1);
    }
  }

  private Refusal unknown(char c) {
    return switch (c) {
      case '–', '—' -> refused(1, "\"" + c + "\" is a dash, not a minus", "Write -");
      case '…' -> refused(1, "\"…\" is no sign of the language", "Write .. between two limits");
      case '²', '³' ->
          refused(1, "A raised figure stands only in units", "Write ^" + (c == '²' ? 2 : 3));
      case '\'', '‘', '’' -> refused(1, "A text stands in double quotes", "Write \"...\"");
      case '{', '}' -> refused(1, "Braces have no meaning here", "Write ( ) or [ ]");
      case ';' ->
          refused(1, "A semicolon ends nothing", "Write each statement on a line of its own");
      case '%' -> refused(1, "% stands only after a number", "Write the per cent as 5 %");
      case '°' -> refused(1, "° stands only after a number", "Write the angle as 20 deg or 20°");
      case '&', '|' -> refused(1, "\"" + c + "\" is no sign of the language", "Write and, or");
      case '#' -> refused(1, "# begins no comment", "Write -- and a blank before a comment");
      case '√' -> refused(1, "\"√\" is no sign of the language", "Write sqrt(...)");
      case '~', '≈' -> refused(1, "\"" + c + "\" is no sign of the language", "Write =");
      default -> {
        int length = Character.isSurrogatePair(c, reading.letter(reading.at + 1)) ? 2 : 1;
        String shown =
            Character.isISOControl(c)
                ? String.format(java.util.Locale.ROOT, "U+%04X", (int) c)
                : reading.text.substring(
                    reading.at, Math.min(reading.at + length, reading.text.length()));
        yield refused(length, "\"" + shown + "\" has no meaning here", "Take it out");
      }
    };
  }
}
