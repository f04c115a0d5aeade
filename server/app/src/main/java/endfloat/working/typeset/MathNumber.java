package endfloat.working.typeset;

import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and their units as they are set. */
final class MathNumber {
  private static final Pattern SCIENTIFIC =
      Pattern.compile("([-+\u2212]?[\\d.]+)[eE]([-+\u2212]?)0*(\\d+)");
  private static final Pattern FRACTION = Pattern.compile("(?:(\\d+)[ \u00a0])?(\\d+)/(\\d+)");
  private static final Pattern SHOWN =
      Pattern.compile(
          "([-+\u2212]?(?:[\\d.]+(?:[eE][-+\u2212]?\\d+)?|(?:\\d+ )?\\d+/\\d+))[ \u00a0]?(.*)");

  private MathNumber() {}

  static String set(String digits, Optional<Unit> unit) {
    return set(digits, unit.map(Unit::print).orElse(""));
  }

  private static String set(String digits, String unit) {
    Matcher scientific = SCIENTIFIC.matcher(digits);
    if (scientific.matches()) {
      String sign =
          scientific.group(2).isEmpty() || scientific.group(2).equals("+") ? "" : "\u2212";
      String power =
          Markup.element("msup", "<mn>10</mn>", "<mn>" + sign + scientific.group(3) + "</mn>");
      String below = unit.startsWith("1/") ? Markup.text(unit.substring(1)) : unit(unit);
      return Markup.row(number(scientific.group(1)), Markup.sign("×"), power, below);
    }
    Matcher fraction = FRACTION.matcher(digits);
    if (fraction.matches()) {
      String whole = fraction.group(1) == null ? "" : number(fraction.group(1));
      String part = Markup.element("mfrac", number(fraction.group(2)), number(fraction.group(3)));
      return Markup.row(whole, part, unit(unit));
    }
    return unit.isEmpty() ? number(digits) : Markup.row(number(digits), unit(unit));
  }

  private static String number(String digits) {
    return "<mn>" + XmlText.escaped(digits.replace('-', '\u2212')) + "</mn>";
  }

  private static String unit(String unit) {
    if (unit.isEmpty()) {
      return "";
    }
    return unit.equals("°") || unit.equals("%")
        ? Markup.text((unit.equals("%") ? "\u2009" : "") + unit)
        : Markup.space() + Markup.text(unit);
  }

  /**
   * A figure as a sheet shows it, such as {@code 0.335 mm}; negative ones in brackets.
   *
   * @param alone whether no sign stands beside it
   */
  static String shown(String text, boolean alone) {
    Matcher matcher = SHOWN.matcher(text.strip());
    if (!matcher.matches()) {
      return Markup.text(text);
    }
    String set = set(matcher.group(1), printed(matcher.group(2)));
    boolean negative = "-\u2212".indexOf(text.strip().charAt(0)) >= 0;
    return negative && !alone ? Markup.bracketed(set) : set;
  }

  /** A unit as it is printed, where the text is one of the table. */
  private static String printed(String unit) {
    try {
      return unit.isEmpty() ? unit : UnitTable.find(unit).print();
    } catch (endfloat.units.UnitException e) {
      return unit;
    }
  }

  static String spoken(String digits, Optional<Unit> unit) {
    String said = digits.replace("-", "minus ");
    return unit.map(u -> said + " " + u.print()).orElse(said);
  }
}
