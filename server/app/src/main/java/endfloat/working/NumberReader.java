package endfloat.working;

import endfloat.working.grammar.WorkingGrammar;
import java.util.Set;

/** Takes a number and the unit after it; also {@code 3/8 in} and {@code 1 15/16 in}. */
final class NumberReader {
  private static final Set<String> OF_FRACTIONS = Set.of("in", "inch", "ft", "foot", "feet");

  private final Reading reading;
  private final UnitReader units;

  NumberReader(Reading reading, UnitReader units) {
    this.reading = reading;
    this.units = units;
  }

  void take() {
    int from = reading.at;
    int end = end(from);
    if (fraction(from, end)) {
      return;
    }
    refuseComma(from, end);
    String number = reading.text.substring(from, end);
    reading.take(WorkingGrammar.NUMBER, number.replace('\u2212', '-'), end, "number", null);
    int unit = units.start(end);
    if (unit >= 0) {
      units.take(unit, number);
    } else {
      refuseUnitOver(end, number);
    }
  }

  private int end(int from) {
    int end = reading.pastDigits(from);
    if (reading.letter(end) == '.' && reading.letter(end + 1) != '.') {
      if (!Letters.isDigit(reading.letter(end + 1))) {
        String digits = reading.text.substring(from, end);
        throw new Refusal(
            from,
            end + 1,
            "The number ends in a point",
            "Write " + digits + " or " + digits + ".0");
      }
      end = reading.pastDigits(end + 1);
      if (reading.letter(end) == '.' && Letters.isDigit(reading.letter(end + 1))) {
        int after = reading.pastDigits(end + 1);
        throw new Refusal(
            from, after, "The number has two points", "Write one point, and no point in thousands");
      }
    }
    if (reading.letter(end) == 'e' || reading.letter(end) == 'E') {
      int digits = end + 1;
      char sign = reading.letter(digits);
      if (sign == '+' || sign == '-' || sign == '\u2212') {
        digits++;
      }
      int after = reading.pastDigits(digits);
      if (after > digits) {
        return after;
      }
    }
    return end;
  }

  /** Takes a fraction of an inch or a foot; refuses any other that a unit follows. */
  private boolean fraction(int from, int end) {
    if (!isWhole(from, end) || reading.typeBack(0) == WorkingGrammar.POWER) {
      return false;
    }
    int stroke = reading.pastBlanks(end);
    if (stroke > end && Letters.isDigit(reading.letter(stroke))) {
      return mixed(from, stroke);
    }
    if (reading.letter(stroke) != '/' && reading.letter(stroke) != '÷') {
      return false;
    }
    int below = reading.pastBlanks(stroke + 1);
    int after = reading.pastDigits(below);
    if (after == below || !isWhole(below, after)) {
      return false;
    }
    int unit = units.start(after);
    if (unit < 0) {
      return false;
    }
    String symbol = reading.text.substring(unit, units.end(unit));
    boolean tight = stroke == end && below == stroke + 1 && !joinsStroke(from);
    if (tight && OF_FRACTIONS.contains(symbol)) {
      takeFraction(from, after, unit);
      return true;
    }
    if (!UnitReader.isUnit(symbol)) {
      return false;
    }
    String above = reading.text.substring(from, end);
    String under = reading.text.substring(below, after);
    boolean ofFraction = OF_FRACTIONS.contains(symbol);
    throw new Refusal(
        from,
        unit + symbol.length(),
        above + "/" + under + " " + symbol + " can be read two ways",
        "Write "
            + above
            + " / ("
            + under
            + " "
            + symbol
            + ") to divide by "
            + under
            + " "
            + symbol
            + ", or "
            + (ofFraction
                ? "(" + above + "/" + under + " " + symbol + ")"
                : "(" + above + "/" + under + ") * 1 " + symbol)
            + " for the fraction of a "
            + symbol);
  }

  /** {@code x/1/2 in}: the stroke before belongs to the fraction as much as the one in it. */
  private boolean joinsStroke(int from) {
    return reading.typeBack(0) == WorkingGrammar.OVER
        && reading.lexemes.get(reading.lexemes.size() - 1).to() == from;
  }

  private boolean mixed(int from, int second) {
    int stroke = reading.pastDigits(second);
    int below = stroke + 1;
    int after = reading.pastDigits(below);
    if (reading.letter(stroke) != '/' || after == below || !isWhole(below, after)) {
      return false;
    }
    int unit = units.start(after);
    String number = reading.text.substring(from, after);
    String symbol = unit < 0 ? "" : reading.text.substring(unit, units.end(unit));
    if (OF_FRACTIONS.contains(symbol)) {
      takeFraction(from, after, unit);
      return true;
    }
    throw new Refusal(
        from,
        after,
        number + " is a size in inches or feet, and neither follows it",
        "Write " + number + " in, or the number with a decimal point");
  }

  private void takeFraction(int from, int after, int unit) {
    String typed = reading.text.substring(from, after);
    String digits = typed.replaceAll("[\\s\u00a0\u2009\u202f]+", " ");
    reading.take(WorkingGrammar.NUMBER, digits, after, "number", null);
    units.take(unit, typed);
  }

  /** Whether the digits between two offsets stand alone, no point or exponent after them. */
  private boolean isWhole(int from, int end) {
    char next = reading.letter(end);
    return reading.pastDigits(from) == end
        && !(next == '.' && Letters.isDigit(reading.letter(end + 1)));
  }

  private void refuseComma(int from, int end) {
    if (reading.letter(end) != ',' || !Letters.isDigit(reading.letter(end + 1))) {
      return;
    }
    boolean inBrackets =
        reading.lexemes.stream()
                .mapToInt(
                    l ->
                        switch (l.getType()) {
                          case WorkingGrammar.OPEN, WorkingGrammar.LIST_OPEN -> 1;
                          case WorkingGrammar.CLOSE, WorkingGrammar.LIST_CLOSE -> -1;
                          default -> 0;
                        })
                .sum()
            > 0;
    if (!inBrackets) {
      int after = reading.pastDigits(end + 1);
      String number = reading.text.substring(from, after);
      throw new Refusal(
          from,
          after,
          "A comma in a number is read as a decimal point by some and as thousands by others",
          number.indexOf('.') >= 0
              ? "Write " + number.replace(".", "").replace(',', '.')
              : "Write " + number.replace(',', '.') + " or " + number.replace(",", ""));
    }
  }

  /** {@code 23e-6 /K}: a unit below a stroke needs its 1, and a value a blank after the stroke. */
  private void refuseUnitOver(int end, String number) {
    int stroke = reading.pastBlanks(end);
    int from = stroke + 1;
    if (stroke == end
        || reading.letter(stroke) != '/'
        || !Letters.startsUnit(reading.letter(from))) {
      return;
    }
    int after = units.end(from);
    String symbol = reading.text.substring(from, after);
    if (UnitReader.isUnit(symbol) && reading.letter(reading.pastBlanks(after)) != '(') {
      throw new Refusal(
          stroke,
          after,
          "A unit below a stroke needs its 1",
          "Write "
              + number
              + " 1/"
              + symbol
              + ", or "
              + number
              + " / "
              + symbol
              + " to divide by a value of that name");
    }
  }
}
