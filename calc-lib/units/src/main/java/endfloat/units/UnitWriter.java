package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.util.List;

/** Writes a product of units, for the working language and for print. */
final class UnitWriter {
  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

  private UnitWriter() {}

  /** As the working language reads it: {@code kg.m^2}, {@code 1/K}, {@code g/(kW.h)}. */
  static String symbol(List<Item> items) {
    return quotient(items, ".", false);
  }

  /** As it is printed: {@code kg·m²}, {@code 1/K}, {@code g/(kW·h)}. */
  static String printed(List<Item> items) {
    return quotient(items, "·", true);
  }

  private static String quotient(List<Item> items, String point, boolean print) {
    StringBuilder above = new StringBuilder();
    StringBuilder below = new StringBuilder();
    int lower = 0;
    for (Item item : items) {
      boolean up = item.exponent() > 0;
      lower += up ? 0 : 1;
      StringBuilder side = up ? above : below;
      side.append(side.length() == 0 ? "" : point);
      side.append(print ? item.atom().printed() : item.atom().symbol());
      side.append(power(Math.abs(item.exponent()), item.root(), print));
    }
    if (above.length() == 0) {
      above.append('1');
    }
    if (lower == 0) {
      return above.toString();
    }
    return above
        .append(lower > 1 ? "/(" : "/")
        .append(below)
        .append(lower > 1 ? ")" : "")
        .toString();
  }

  private static String power(int exponent, int root, boolean print) {
    if (root != 1) {
      return "^(" + exponent + "/" + root + ")";
    }
    if (exponent == 1) {
      return "";
    }
    return print ? superscript(exponent) : "^".concat(Integer.toString(exponent));
  }

  private static String superscript(int exponent) {
    StringBuilder raised = new StringBuilder();
    for (char digit : Integer.toString(exponent).toCharArray()) {
      raised.append(SUPERSCRIPTS.charAt(digit - '0'));
    }
    return raised.toString();
  }
}
