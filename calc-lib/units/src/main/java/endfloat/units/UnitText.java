package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Reads a unit text: symbols with whole powers, joined by {@code .} or {@code *} and {@code /},
 * brackets only straight after a stroke.
 *
 * <pre>
 * unit   = item { ("." | "*") item } [ "/" below ] { "/" item }
 * below  = item | "(" item { ("." | "*") item } ")"
 * item   = "1" | symbol [ "^" [ "-" ] digits | "^(" digits "/" digits ")" | digit ]
 * symbol = letter or one of % ° Ω [..] , then letters, digits, _ and UCUM's [..]
 * </pre>
 *
 * A point after a stroke, {@code J/kg.K}, is refused: people read it both ways.
 */
final class UnitText {
  private static final int HIGHEST_POWER = 20;

  private final String text;
  private final Function<String, Atom> table;
  private final List<Item> items = new ArrayList<>();
  private int at;

  private UnitText(String text, Function<String, Atom> table) {
    this.text = text;
    this.table = table;
  }

  /**
   * @param table gives the unit of a symbol, or null
   */
  static List<Item> read(String typed, Function<String, Atom> table) {
    String text = plain(typed);
    if (text.isEmpty()) {
      throw new UnitException("the unit is empty", "write one, such as mm, or 1 for a pure number");
    }
    UnitText reader = new UnitText(text, table);
    reader.product();
    return reader.items;
  }

  /** One spelling for signs that look the same. */
  private static String plain(String typed) {
    StringBuilder plain = new StringBuilder();
    for (char c : typed.strip().toCharArray()) {
      int superscript = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c);
      if (superscript >= 0) {
        plain.append((char) ('0' + superscript));
      } else {
        plain.append(
            switch (c) {
              case '·', '⋅', '*', '×' -> '.';
              case 'µ', 'μ' -> 'u';
              case '\u2212', '⁻' -> '-';
              case '\u2126' -> 'Ω';
              default -> c;
            });
      }
    }
    return plain.toString();
  }

  private void product() {
    item(1);
    boolean below = false;
    while (at < text.length()) {
      char sign = text.charAt(at);
      if (sign == '/') {
        at++;
        below = true;
        if (at < text.length() && text.charAt(at) == '(') {
          bracket();
        } else {
          item(-1);
        }
      } else if (sign == '.' && !below) {
        at++;
        item(1);
      } else if (sign == '.') {
        throw twoWays();
      } else {
        throw unexpected();
      }
    }
    items.removeIf(i -> i.atom().symbol().equals("1") && text.length() > 1);
  }

  private void bracket() {
    at++;
    item(-1);
    while (at < text.length() && text.charAt(at) == '.') {
      at++;
      item(-1);
    }
    if (at >= text.length() || text.charAt(at) != ')') {
      throw new UnitException(
          "the bracket of \"" + text + "\" is not closed",
          "inside it only products stand: g/(kW.h)");
    }
    at++;
  }

  private void item(int sign) {
    int from = at;
    while (at < text.length() && inSymbol(text.charAt(at), at == from)) {
      at = text.charAt(at) == '[' ? Math.max(text.indexOf(']', at), at) + 1 : at + 1;
    }
    if (at == from) {
      throw unexpected();
    }
    String symbol = text.substring(from, at);
    Atom atom = table.apply(symbol);
    int exponent = 1;
    int root = 1;
    if (atom == null && symbol.length() > 1 && endsInPower(symbol)) {
      atom = table.apply(symbol.substring(0, symbol.length() - 1));
      exponent = symbol.charAt(symbol.length() - 1) - '0';
    }
    if (atom == null) {
      throw UnknownUnit.exception(symbol, text);
    }
    if (at < text.length() && text.charAt(at) == '^') {
      at++;
      if (at < text.length() && text.charAt(at) == '(') {
        at++;
        exponent = digits();
        expect('/');
        root = digits();
        expect(')');
      } else {
        exponent = power();
      }
    } else if (at + 1 < text.length() && text.charAt(at) == '-' && isDigit(text.charAt(at + 1))) {
      exponent = power();
    }
    if (exponent == 0 || root == 0) {
      throw new UnitException("\"" + text + "\" has a power of 0", "leave that unit out");
    }
    items.add(new Item(atom, sign * exponent, root));
  }

  private boolean inSymbol(char c, boolean first) {
    if (first && c == '1') {
      return at + 1 == text.length() || text.charAt(at + 1) == '/';
    }
    return Character.isLetter(c)
        || c == '%'
        || c == '°'
        || c == '['
        || (!first && (Character.isDigit(c) || c == '_'));
  }

  private static boolean endsInPower(String symbol) {
    char last = symbol.charAt(symbol.length() - 1);
    return last >= '2' && last <= '9' && !Character.isDigit(symbol.charAt(symbol.length() - 2));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private int power() {
    boolean minus = at < text.length() && text.charAt(at) == '-';
    if (minus) {
      at++;
    }
    return minus ? -digits() : digits();
  }

  private int digits() {
    int from = at;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    String digits = text.substring(from, at);
    if (digits.isEmpty()) {
      throw new UnitException(
          "\"" + text + "\" has a power that is no whole number", "write it as mm^2 or s^-1");
    }
    if (digits.length() > 2 || Integer.parseInt(digits) > HIGHEST_POWER) {
      throw new UnitException(
          "\"" + text + "\" has a power above " + HIGHEST_POWER, "check the power");
    }
    return Integer.parseInt(digits);
  }

  private void expect(char wanted) {
    if (at >= text.length() || text.charAt(at) != wanted) {
      throw unexpected();
    }
    at++;
  }

  private UnitException twoWays() {
    int stroke = text.lastIndexOf('/', at);
    String above = text.substring(0, stroke);
    String first = text.substring(stroke + 1, at);
    String rest = text.substring(at + 1);
    return new UnitException(
        "\"" + text + "\" can be read two ways",
        "write " + above + "/(" + first + "." + rest + ") or " + above + "." + rest + "/" + first);
  }

  private UnitException unexpected() {
    if (at >= text.length()) {
      return new UnitException(
          "\"" + text + "\" ends too early", "write the unit that follows, or leave the sign out");
    }
    return switch (text.charAt(at)) {
      case '-' ->
          new UnitException(
              "\"" + text + "\" joins units with a dash", "join them with a point: lbf.ft");
      case ' ' ->
          new UnitException("\"" + text + "\" has a blank inside", "join units with a point: N.m");
      case '{' ->
          new UnitException(
              "\"" + text + "\" has a remark in braces, which counts as 1",
              "leave it out, a revolution is rev, so a speed is rev/min");
      case '(' ->
          new UnitException(
              "\"" + text + "\" has a bracket that does not follow a stroke",
              "brackets stand only below: g/(kW.h)");
      default ->
          new UnitException(
              "\"" + text.charAt(at) + "\" in \"" + text + "\" belongs to no unit",
              "write symbols, whole powers, . and /, such as kg.m^2 or g/(kW.h)");
    };
  }
}
