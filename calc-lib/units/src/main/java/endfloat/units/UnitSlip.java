package endfloat.units;

import endfloat.units.ExactUnit.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Recognises the usual slips between a mass and its weight, and between a temperature and a letter,
 * once a unit turns out to have the wrong dimension.
 */
public final class UnitSlip {
  private static final Map<String, String> MEANT =
      Map.ofEntries(
          Map.entry("lb", "lbf"),
          Map.entry("oz", "ozf"),
          Map.entry("kg", "kgf"),
          Map.entry("g", "gf"),
          Map.entry("ton_UK", "tonf_UK"),
          Map.entry("ton_US", "tonf_US"),
          Map.entry("lbf", "lb"),
          Map.entry("ozf", "oz"),
          Map.entry("kgf", "kg"),
          Map.entry("gf", "g"),
          Map.entry("tonf_UK", "ton_UK"),
          Map.entry("tonf_US", "ton_US"),
          Map.entry("C", "degC"),
          Map.entry("F", "degF"),
          Map.entry("S", "s"));

  private UnitSlip() {}

  /**
   * What was probably meant, as a way out; empty where no usual slip gives the wanted dimension.
   *
   * @param written the unit with the wrong dimension
   * @param wanted the dimension that belongs there
   */
  public static Optional<String> between(Unit written, Dimension wanted) {
    List<Item> items = ((ExactUnit) written).items();
    for (Item slip : items) {
      String meant = MEANT.get(slip.atom().symbol());
      if (meant != null) {
        Unit mended = replaced(items, slip, (ExactUnit) UnitTable.find(meant));
        if (mended.dimension().same(wanted)) {
          return Optional.of(
              slip.atom().symbol()
                  + " is "
                  + article(slip.atom().dimension().words())
                  + ", "
                  + meant
                  + " is "
                  + article(UnitTable.find(meant).dimension().words())
                  + "; write "
                  + mended.symbol());
        }
      }
    }
    return Optional.empty();
  }

  private static String article(String words) {
    return words.startsWith("temperature")
        ? "a temperature"
        : words.equals("time") ? "the second" : "a " + words;
  }

  private static Unit replaced(List<Item> items, Item slip, ExactUnit meant) {
    List<Item> mended = new ArrayList<>(items);
    Item one = meant.items().get(0);
    mended.set(items.indexOf(slip), new Item(one.atom(), slip.exponent(), slip.root()));
    return new ExactUnit(mended);
  }
}
