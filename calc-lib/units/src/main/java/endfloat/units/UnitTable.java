package endfloat.units;

import java.util.List;

/** Every unit of the trade, with exact factors. */
public final class UnitTable {
  private UnitTable() {}

  /**
   * @param text a symbol, an alias, a UCUM code, or a product such as {@code g/(kW.h)}, {@code
   *     N.m}, {@code mm^2/s}, {@code 1/K}
   * @throws UnitException if it is unknown; carries what to do
   */
  public static Unit find(String text) {
    throw new UnsupportedOperationException();
  }

  /** Known symbols nearest to a misspelt one, best first, at most three. */
  public static List<String> nearest(String text) {
    throw new UnsupportedOperationException();
  }

  /** Symbols with their meaning, for completion: those of the dimension first. */
  public static List<Entry> entries() {
    throw new UnsupportedOperationException();
  }

  /** One line of the table. */
  public record Entry(
      String symbol, List<String> aliases, String ucum, String meaning, Unit unit) {}
}
