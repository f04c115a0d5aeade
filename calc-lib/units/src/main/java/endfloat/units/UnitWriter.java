package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.util.ArrayList;
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
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    for (Item item : items) {
      String name = print ? item.atom().printed() : item.atom().symbol();
      boolean up = item.exponent() > 0;
      (up ? above : below).add(name + power(Math.abs(item.exponent()), item.root(), print));
    }
    String top = above.isEmpty() ? "1" : String.join(point, above);
    if (below.isEmpty()) {
      return top;
    }
    String bottom = String.join(point, below);
    return top + "/" + (below.size() > 1 ? "(" + bottom + ")" : bottom);
  }

  private static String power(int exponent, int root, boolean print) {
    if (root != 1) {
      return "^(" + exponent + "/" + root + ")";
    }
    if (exponent == 1) {
      return "";
    }
    return print ? superscript(exponent) : "^" + exponent;
  }

  private static String superscript(int exponent) {
    StringBuilder raised = new StringBuilder();
    for (char digit : Integer.toString(exponent).toCharArray()) {
      raised.append(SUPERSCRIPTS.charAt(digit - '0'));
    }
    return raised.toString();
  }
}
