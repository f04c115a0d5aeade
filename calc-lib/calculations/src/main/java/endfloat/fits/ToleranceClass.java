package endfloat.fits;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.RefusedException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class such as H7 or js6, and its limit deviations.
 *
 * @param hole capital letters
 * @param letter of the fundamental deviation, in small letters for holes too
 * @param grade -1 for 01
 */
record ToleranceClass(boolean hole, String letter, int grade) {
  private static final Pattern FORM = Pattern.compile("([A-Z]{1,2}|[a-z]{1,2})\\s*(01|\\d{1,2})");
  private static final Set<String> LETTERS =
      Set.of(
          "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p",
          "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");
  private static final Set<String> LARGE =
      Set.of("d", "e", "f", "g", "h", "js", "k", "m", "n", "p", "r", "s", "t", "u");

  /** Lower and upper limit deviation [um]. */
  record Deviations(double lower, double upper) {}

  /**
   * @param text such as H7, js6, ZA 9
   * @throws RefusedException if it is no tolerance class of ISO 286
   */
  static ToleranceClass parse(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    if (!matcher.matches()) {
      throw unknown(text);
    }
    String letters = matcher.group(1);
    String letter = letters.toLowerCase(Locale.ROOT);
    int grade = matcher.group(2).equals("01") ? -1 : Integer.parseInt(matcher.group(2));
    if (!LETTERS.contains(letter) || grade > 18 || matcher.group(2).equals("00")) {
      throw unknown(text);
    }
    return new ToleranceClass(Character.isUpperCase(letters.charAt(0)), letter, grade);
  }

  private static RefusedException unknown(String text) {
    return new RefusedException(
        "\""
            + text
            + "\" is no tolerance class of ISO 286; write a letter and a grade, such as H7 for a"
            + " hole or g6 for a shaft");
  }

  /** As it is written on a drawing. */
  String text() {
    return (hole ? letter.toUpperCase(Locale.ROOT) : letter) + (grade < 0 ? "01" : grade);
  }

  /**
   * Limit deviations at 20 degC.
   *
   * @param size nominal size [mm]
   * @throws OutOfRangeException if the size is not over 0 to 3150 mm
   * @throws RefusedException if ISO 286-1 has no such cell, or it is not certain here
   */
  Deviations deviations(double size) {
    if (!(size > 0 && size <= 3150 * (1 + 1e-9))) {
      throw new OutOfRangeException(
          "size", size / 1000, 0, 3.15, "mm", "ISO 286-1 ends at 3150 mm");
    }
    refuseWhatTheStandardLeavesOut(size);
    IsoTables tables = IsoTables.LIBRARY;
    double width = tables.grade(grade, size);
    if (letter.equals("js")) {
      return new Deviations(-width / 2, width / 2);
    }
    if (letter.equals("h")) {
      return hole ? new Deviations(0, width) : new Deviations(-width, 0);
    }
    boolean below = letter.compareTo("h") < 0;
    if (hole) {
      double fundamental = holeDeviation(size, tables);
      return below
          ? new Deviations(fundamental, fundamental + width)
          : new Deviations(fundamental - width, fundamental);
    }
    double fundamental = shaftDeviation(size, tables);
    return below
        ? new Deviations(fundamental - width, fundamental)
        : new Deviations(fundamental, fundamental + width);
  }

  private double shaftDeviation(double size, IsoTables tables) {
    return switch (letter) {
      case "j" -> tables.deviation("j" + (grade == 5 ? 6 : grade), size);
      // k rises above the zero line in grades 4 to 7 only
      case "k" -> grade >= 4 && grade <= 7 ? tables.deviation("k", size) : 0;
      default -> tables.deviation(letter, size);
    };
  }

  /** The mirror of the shaft's, plus delta where the standard asks for it. */
  private double holeDeviation(double size, IsoTables tables) {
    if (letter.equals("j")) {
      return tables.deviation("J" + grade, size);
    }
    if (letter.equals("n") && grade > 8 && size > 3 && size <= 500) {
      return 0;
    }
    // 0.0 - x, for -0.0 would print a sign
    double mirrored = letter.equals("k") && size > 500 ? 0 : 0.0 - tables.deviation(letter, size);
    boolean takesDelta =
        Set.of("k", "m", "n").contains(letter)
            ? grade <= 8
            : letter.compareTo("p") >= 0 && grade <= 7;
    if (!takesDelta || size <= 3 || size > 500) {
      return mirrored;
    }
    if (grade < 3) {
      throw absent(size, "its delta is given for IT3 to IT8 only");
    }
    if (letter.equals("m") && grade == 6 && size > 250 && size <= 315) {
      return -9; // special case of Table 2, instead of -11
    }
    return mirrored + tables.grade(grade, size) - tables.grade(grade - 1, size);
  }

  private void refuseWhatTheStandardLeavesOut(double size) {
    if (size <= 1 && grade >= 14) {
      throw absent(size, "IT14 to IT18 are not used up to 1 mm");
    }
    if (size <= 1 && (letter.equals("a") || letter.equals("b"))) {
      throw absent(size, "a and b are not used up to 1 mm");
    }
    if (size <= 1 && hole && letter.equals("n") && grade > 8) {
      throw absent(size, "N above IT8 is not used up to 1 mm");
    }
    if (size > 500 && !LARGE.contains(letter)) {
      throw absent(size, "over 500 mm there are only d to h, js, k, m, n, p, r, s, t and u");
    }
    if (size > 500 && grade < 1) {
      throw absent(size, "IT01 and IT0 end at 500 mm");
    }
    if (letter.equals("j") && (hole ? grade < 6 || grade > 8 : grade < 5 || grade > 8)) {
      throw absent(size, hole ? "J is given for IT6 to IT8" : "j is given for IT5 to IT8");
    }
    if (hole && letter.equals("k") && grade > 8 && size > 3) {
      throw absent(size, "K above IT8 is given up to 3 mm only");
    }
  }

  private RefusedException absent(double size, String why) {
    return new RefusedException(
        String.format(Locale.ROOT, "ISO 286-1 has no %s at %s mm: ", text(), number(size)) + why);
  }

  private static String number(double size) {
    double rounded = Math.rint(size * 1e6) / 1e6;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : Double.toString(rounded);
  }
}
