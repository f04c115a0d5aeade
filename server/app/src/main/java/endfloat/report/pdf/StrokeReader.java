package endfloat.report.pdf;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the data of a path: letters, and the numbers after them. */
final class StrokeReader {
  private static final Pattern TOKEN = Pattern.compile("([A-Za-z])|(-?[0-9]*\\.?[0-9]+)");

  private final Matcher tokens;
  private String ahead;
  private char letter;

  StrokeReader(String data) {
    tokens = TOKEN.matcher(data);
    step();
  }

  private void step() {
    ahead = tokens.find() ? tokens.group() : "";
  }

  /** Goes to the next stroke; a further pair of numbers repeats the letter. */
  boolean next() {
    if (ahead.isEmpty()) {
      return false;
    }
    if (Character.isLetter(ahead.charAt(0))) {
      letter = ahead.charAt(0);
      step();
    } else if (letter == 'M' || letter == 'm') {
      letter = letter == 'M' ? 'L' : 'l';
    }
    return true;
  }

  char letter() {
    return letter;
  }

  double number() {
    double number = Double.parseDouble(ahead);
    step();
    return number;
  }
}
