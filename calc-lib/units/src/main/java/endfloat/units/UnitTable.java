package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Every unit of the trade, with exact factors.
 *
 * <p>What is two things under one name is refused and says what to write: {@code gal}, {@code pt},
 * {@code ton}, {@code cal}. So are {@code psig}, {@code psia}, {@code barg} and {@code bara}: a
 * unit cannot carry the air pressure of the day, so a pressure says in its name what it is. {@code
 * K} is always a difference; {@code degC} and {@code degF} are points on their own and intervals in
 * a compound unit. {@code rpm} and {@code rev/s} are angular speeds, {@code Hz} is not.
 */
public final class UnitTable {
  private static final UnitDefinitions TABLE = new UnitDefinitions();
  private static final Map<String, Unit> FOUND = new ConcurrentHashMap<>();

  /** Texts come from outside; past this many they are read each time. */
  private static final int KEPT = 4096;

  private static final int LONGEST = 200;

  private UnitTable() {}

  /**
   * The unit of a text.
   *
   * @param text a symbol, an alias, a UCUM code, or a product such as {@code g/(kW.h)}, {@code
   *     N.m}, {@code mm^2/s}, {@code 1/K}
   * @throws UnitException if it is unknown; carries what to do
   */
  public static Unit find(String text) {
    Unit known = FOUND.get(text);
    if (known != null) {
      return known;
    }
    if (text.length() > LONGEST) {
      throw new UnitException("the unit is longer than " + LONGEST + " letters", "shorten it");
    }
    Unit unit = new ExactUnit(UnitText.read(text, TABLE.byName::get));
    if (FOUND.size() < KEPT) {
      FOUND.put(text, unit);
    }
    return unit;
  }

  /** Known symbols nearest to a misspelt one, best first, at most three. */
  public static List<String> nearest(String text) {
    return NearestSymbol.of(text, TABLE.definitions.stream().map(d -> d.atom().symbol()).toList());
  }

  /** Two units that were run together, joined by a point; empty where the text is no such pair. */
  static Optional<String> asProduct(String text) {
    for (int at = 1; at < text.length(); at++) {
      String left = text.substring(0, at);
      String right = text.substring(at);
      if (Character.isLetter(right.charAt(0))
          && TABLE.byName.containsKey(left)
          && TABLE.byName.containsKey(right)) {
        return Optional.of(left + "." + right);
      }
    }
    return Optional.empty();
  }

  /**
   * The coherent SI unit of a dimension, such as {@code kg.m^2/s^2}; {@code 1} for a pure number.
   */
  public static Unit coherent(Dimension dimension) {
    String[] symbols = {"m", "kg", "s", "K", "A", "rad"};
    List<Item> items = new ArrayList<>();
    for (int i : new int[] {1, 0, 2, 3, 4, 5}) {
      int numerator = dimension.numerator(i);
      if (numerator != 0) {
        int common = gcd(Math.abs(numerator), dimension.denominator());
        items.add(
            new Item(
                TABLE.byName.get(symbols[i]),
                numerator / common,
                dimension.denominator() / common));
      }
    }
    return items.isEmpty() ? find("1") : new ExactUnit(items);
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Symbols with their meaning, in the order of the table, for completion. */
  public static List<Entry> entries() {
    return TABLE.definitions.stream()
        .map(
            d ->
                new Entry(
                    d.atom().symbol(), d.aliases(), d.ucum(), d.meaning(), find(d.atom().symbol())))
        .toList();
  }

  /** One line of the table. */
  public record Entry(
      String symbol, List<String> aliases, String ucum, String meaning, Unit unit) {}
}
