package endfloat.working;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.grammar.WorkingGrammar;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes the unit straight after a number, and the unit mark after a name. It stands here and not in
 * the grammar because only here the blanks can still be seen.
 */
final class UnitReader {
  /** A symbol that ends in a figure. */
  private static final Pattern RAISED =
      Pattern.compile("(?<![\\p{L}\\d_^])(\\p{L}+)[2-9](?![\\p{L}\\d_^])");

  private final Reading reading;

  UnitReader(Reading reading) {
    this.reading = reading;
  }

  /** Where the unit begins that follows a number ending at {@code after}; -1 where none does. */
  int start(int after) {
    int from = reading.pastBlanks(after);
    char first = reading.letter(from);
    if (first == '1'
        && from > after
        && reading.letter(from + 1) == '/'
        && Letters.startsUnit(reading.letter(from + 2))) {
      return from;
    }
    if (!Letters.startsUnit(first)) {
      return -1;
    }
    int end = reading.pastName(from);
    return LineWords.isWord(reading.text.substring(from, end)) ? -1 : from;
  }

  /** End of the run of unit text that begins at {@code from}. */
  int end(int from) {
    int at = from;
    if (reading.letter(at) == '1') {
      at += 2;
    }
    at = pastSymbol(at);
    while (true) {
      char sign = reading.letter(at);
      if ((sign == '.' || sign == '·' || sign == '⋅' || sign == '/')
          && Letters.startsUnit(reading.letter(at + 1))) {
        at = pastSymbol(at + 1);
      } else if (sign == '/' && reading.letter(at + 1) == '(') {
        int close = pastBracket(at + 2);
        if (close < 0
            || !isProduct(reading.text.substring(at + 2, close - 1))
            || !isUnit(reading.text.substring(from, close))) {
          return at;
        }
        at = close;
      } else {
        return at;
      }
    }
  }

  private int pastSymbol(int from) {
    int at = from + 1;
    while (Letters.inUnit(reading.letter(at))) {
      at++;
    }
    if (reading.letter(at) == '^') {
      int digits = at + 1;
      if (reading.letter(digits) == '-' || reading.letter(digits) == '\u2212') {
        digits++;
      }
      int end = reading.pastDigits(digits);
      if (end > digits) {
        return end;
      }
    }
    return at;
  }

  /** After the bracket that closes {@code (kW.h)}; -1 where other than unit text stands in it. */
  private int pastBracket(int from) {
    int at = from;
    while (true) {
      if (!Letters.startsUnit(reading.letter(at))) {
        return -1;
      }
      at = pastSymbol(at);
      char sign = reading.letter(at);
      if (sign == ')') {
        return at + 1;
      }
      if (sign != '.' && sign != '·' && sign != '⋅') {
        return -1;
      }
      at++;
    }
  }

  /** One symbol alone needs no bracket, so a bracket around one is a value's. */
  private static boolean isProduct(String inside) {
    return inside.indexOf('.') > 0 || inside.indexOf('·') > 0 || inside.indexOf('⋅') > 0;
  }

  static boolean isUnit(String text) {
    try {
      UnitTable.find(text);
      return true;
    } catch (UnitException e) {
      return false;
    }
  }

  /** Takes the unit that begins at {@code from}, the number before it already taken. */
  void take(int from, String number) {
    int end = end(from);
    Unit unit = find(from, end, number);
    reading.at = from;
    reading.take(WorkingGrammar.UNIT, reading.text.substring(from, end), end, "unit", unit);
    refusePower(from, end, number);
  }

  private void refusePower(int from, int end, String number) {
    int sign = reading.pastBlanks(end);
    if (reading.letter(sign) != '^') {
      return;
    }
    String unit = reading.text.substring(from, end);
    int after = reading.pastDigits(reading.pastBlanks(sign + 1));
    String power = reading.text.substring(sign + 1, after).strip();
    throw new Refusal(
        sign,
        after,
        "A power after a blank can be read two ways",
        "Write ("
            + number
            + " "
            + unit
            + ")^"
            + (power.isEmpty() ? "2" : power)
            + " for the power of both, or "
            + number
            + " "
            + unit
            + "^"
            + (power.isEmpty() ? "2" : power)
            + " for the power of the unit");
  }

  private Unit find(int from, int end, String number) {
    String run = reading.text.substring(from, end);
    refuseRaisedByFigure(from, end, run, number);
    try {
      return UnitTable.find(run);
    } catch (UnitException e) {
      throw new Refusal(from, end, sentence(e), ways(run, end, number, e));
    }
  }

  /**
   * {@code 20 mm/d2}: a figure at the end of a symbol is a power to some, part of a name to most.
   */
  private static void refuseRaisedByFigure(int from, int end, String run, String number) {
    Matcher raised = RAISED.matcher(run);
    while (raised.find()) {
      String symbol = raised.group(1);
      if (isUnit(symbol) && !isEntry(raised.group())) {
        String power = run.substring(0, raised.end(1)) + "^" + run.substring(raised.end(1));
        throw new Refusal(
            from,
            end,
            "\""
                + raised.group()
                + "\""
                + (run.equals(raised.group()) ? "" : " in \"" + run + "\"")
                + " is not a unit",
            "For a unit: write "
                + number
                + " "
                + power
                + asValue(run, number).map(v -> ". For a value: write " + v).orElse(""));
      }
    }
  }

  private static boolean isEntry(String symbol) {
    return UnitTable.entries().stream()
        .anyMatch(e -> e.symbol().equals(symbol) || e.aliases().contains(symbol));
  }

  static String sentence(UnitException e) {
    return capital(e.getMessage());
  }

  static String wayOut(UnitException e) {
    return e.wayOut().isEmpty() ? "" : capital(e.wayOut());
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  private String ways(String run, int end, String number, UnitException e) {
    String unit = e.wayOut().isEmpty() ? "" : "For a unit: " + e.wayOut();
    boolean call = reading.letter(reading.pastBlanks(end)) == '(';
    if (run.equals("pi") || run.equals("π") || call) {
      return "Write " + number + " * " + run + (call ? "(...)" : "");
    }
    Optional<String> value = asValue(run, number);
    return value.map(v -> "For a value: write " + v + ". " + unit).orElse(unit).strip();
  }

  /** The run read as sums of names; empty where it cannot be. */
  private static Optional<String> asValue(String run, String number) {
    int stroke = run.indexOf('/');
    if (run.indexOf('^') >= 0 || run.indexOf('(') >= 0 || run.startsWith("1/")) {
      return Optional.empty();
    }
    if (stroke > 0 && stroke == run.lastIndexOf('/')) {
      String above = run.substring(0, stroke);
      String below = run.substring(stroke + 1);
      return Optional.of(
          isUnit(above)
              ? number + " " + above + " / " + below
              : number + " * " + above + " / " + below);
    }
    int point = run.indexOf('.');
    if (point > 0 && stroke < 0 && isUnit(run.substring(0, point))) {
      return Optional.of(number + " " + run.substring(0, point) + " * " + run.substring(point + 1));
    }
    return stroke < 0 && point < 0 && Letters.startsName(run.charAt(0))
        ? Optional.of(number + " * " + run)
        : Optional.empty();
  }

  /** Takes {@code [mm]} at the place of the reading. */
  void takeMark() {
    int from = reading.at;
    int depth = 0;
    int end = from;
    do {
      char c = reading.letter(end);
      if (c == '\n') {
        throw new Refusal(
            from, end, "The unit mark is not closed", "Close it: [mm], or [1] for a pure number");
      }
      depth += c == '[' ? 1 : c == ']' ? -1 : 0;
      end++;
    } while (depth > 0);
    String symbol = reading.text.substring(from + 1, end - 1).strip();
    if (symbol.isEmpty()) {
      throw new Refusal(
          from, end, "The unit mark is empty", "Write a unit, such as [mm], or [1] for a number");
    }
    try {
      Unit unit = UnitTable.find(symbol);
      reading.lexemes.add(new Lexeme(WorkingGrammar.UNITMARK, symbol, from, end, unit));
      reading.paint(from, from + 1, "sign");
      reading.paint(from + 1, end - 1, "unit");
      reading.paint(end - 1, end, "sign");
      reading.at = end;
    } catch (UnitException e) {
      throw new Refusal(from, end, sentence(e), wayOut(e));
    }
  }
}
