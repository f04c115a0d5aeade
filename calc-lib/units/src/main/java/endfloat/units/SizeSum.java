package endfloat.units;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size said by another: {@code 2.1235 in less two thou}, {@code 20 thou under 2.125 in}, {@code
 * 60.00 mm plus 0.02 mm}. Added as doubles, so right to their last figure.
 */
final class SizeSum {
  private static final Pattern ONTO =
      Pattern.compile("(.+?)\\s+(less|minus|plus)\\s+(.+)", Pattern.CASE_INSENSITIVE);
  private static final Pattern FROM =
      Pattern.compile("(.+?)\\s+(under|over)\\s+(.+)", Pattern.CASE_INSENSITIVE);

  private static final Map<String, String> NUMBERS =
      Map.ofEntries(
          Map.entry("a", "1"),
          Map.entry("one", "1"),
          Map.entry("two", "2"),
          Map.entry("three", "3"),
          Map.entry("four", "4"),
          Map.entry("five", "5"),
          Map.entry("six", "6"),
          Map.entry("seven", "7"),
          Map.entry("eight", "8"),
          Map.entry("nine", "9"),
          Map.entry("ten", "10"),
          Map.entry("twelve", "12"),
          Map.entry("fifteen", "15"),
          Map.entry("twenty", "20"),
          Map.entry("thirty", "30"),
          Map.entry("forty", "40"),
          Map.entry("half a", "0.5"),
          Map.entry("half", "0.5"));

  private static final Pattern IN_WORDS =
      Pattern.compile(
          "(half a|[a-z]+|[0-9]+)(\\s+and\\s+a\\s+half)?\\s+([a-z].*)", Pattern.CASE_INSENSITIVE);

  private SizeSum() {}

  /** Reads it; empty where the text is no sum. */
  static Optional<Size> read(String text, Unit field) {
    Matcher onto = ONTO.matcher(text);
    if (onto.matches()) {
      boolean less = !onto.group(2).equalsIgnoreCase("plus");
      return Optional.of(sum(onto.group(1), onto.group(3), less, field));
    }
    Matcher from = FROM.matcher(text);
    if (from.matches()) {
      boolean less = from.group(2).equalsIgnoreCase("under");
      return Optional.of(sum(from.group(3), from.group(1), less, field));
    }
    return Optional.empty();
  }

  private static Size sum(String whole, String part, boolean less, Unit field) {
    Size base = Size.single(figures(whole), field);
    Size other = Size.single(figures(part), field);
    boolean bareBase = isBare(whole);
    boolean barePart = isBare(part);
    if (!base.unit().dimension().same(other.unit().dimension())
        || base.unit().isTemperaturePoint()) {
      throw new UnitException(
          "\"" + part + "\" cannot be put to \"" + whole + "\"", "write the sum as one number");
    }
    if (barePart && !bareBase) {
      throw new UnitException(
          "\"" + part + "\" has no unit", "write it with its unit, such as " + part + " thou");
    }
    if (bareBase && !barePart && otherSystem(field, other.unit())) {
      String inches = other.unit().symbol().equals("thou") ? "in" : other.unit().symbol();
      throw new UnitException(
          "\""
              + whole
              + "\" has no unit, and beside "
              + other.unit().print()
              + " it is hardly "
              + field.print(),
          "write " + whole + " " + inches + ", or " + whole + " " + field.print());
    }
    double si = less ? base.si() - other.si() : base.si() + other.si();
    return new Size(si, base.unit());
  }

  private static boolean isBare(String text) {
    return text.matches("[-+\u2212]?[0-9. \u00a0/]+");
  }

  private static boolean otherSystem(Unit a, Unit b) {
    return Size.isMetric(a) != Size.isMetric(b);
  }

  /** {@code two thou} as {@code 2 thou}, {@code one and a half thou} as {@code 1.5 thou}. */
  static String figures(String text) {
    Matcher words = IN_WORDS.matcher(text.strip());
    if (!words.matches()) {
      return text;
    }
    String said = words.group(1).toLowerCase(Locale.ROOT);
    boolean digits = Character.isDigit(said.charAt(0));
    String number = digits ? said : NUMBERS.get(said);
    if (number == null || (words.group(2) != null && number.indexOf('.') >= 0)) {
      return text;
    }
    return number + (words.group(2) == null ? "" : ".5") + " " + words.group(3);
  }
}
