package endfloat.units;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What to say to a symbol that is no unit here, or is two. */
final class UnknownUnit {
  private static final String PRESSURE =
      "whether a pressure is gauge or absolute cannot be told from the unit, and the air pressure of"
          + " the day is between them";

  private static final String TENTH = "a tenth is 0.0001 in to some and 0.1 mm to others";

  private static final String TENTH_OUT = "write 0.1 thou or 0.1 mm for each";

  private static final String POUND = "lb is a mass, the pound of force is lbf";

  /** Symbols refused on purpose: what they are, and what to write. */
  private static final Map<String, String[]> REFUSED =
      Map.ofEntries(
          refused("gal", "\"gal\" is two gallons, 20 % apart", "write gal_UK or gal_US"),
          refused("gallon", "\"gallon\" is two gallons, 20 % apart", "write gal_UK or gal_US"),
          refused("qt", "\"qt\" is two quarts, 20 % apart", "write qt_UK or qt_US"),
          refused("pt", "\"pt\" is two pints, 20 % apart", "write pt_UK or pt_US"),
          refused("pint", "\"pint\" is two pints, 20 % apart", "write pt_UK or pt_US"),
          refused("fl_oz", "\"fl_oz\" is two fluid ounces", "write fl_oz_UK or fl_oz_US"),
          refused(
              "ton", "\"ton\" is three masses", "write t, ton_UK (2240 lb) or ton_US (2000 lb)"),
          refused(
              "tonf", "\"tonf\" is two forces", "write tonf_UK (2240 lbf) or tonf_US (2000 lbf)"),
          refused(
              "tsi",
              "\"tsi\" counts long tons in Britain and short tons in America, 12 % apart",
              "write tonf_UK/in^2 or tonf_US/in^2"),
          refused("cal", "\"cal\" is two calories", "write cal_th (4.184 J) or cal_IT (4.1868 J)"),
          refused("kcal", "\"kcal\" is two calories", "write kcal_th or kcal_IT"),
          refused("psig", PRESSURE, gauge("psi")),
          refused("psia", PRESSURE, gauge("psi")),
          refused("barg", PRESSURE, gauge("bar")),
          refused("bara", PRESSURE, gauge("bar")),
          refused("kn", "\"kn\" is a knot to some and a slip for kN to others", "write knot or kN"),
          refused("ftlb", POUND, "a torque is lbf.ft"),
          refused("lbft", POUND, "a torque is lbf.ft"),
          refused("inlb", POUND, "a torque is lbf.in"),
          refused("lbin", POUND, "a torque is lbf.in"),
          refused("kph", "\"kph\" is not a unit here", "write km/h"),
          refused("fpm", "\"fpm\" is not a unit here", "write ft/min"),
          refused("tenth", TENTH, TENTH_OUT),
          refused("tenths", TENTH, TENTH_OUT),
          refused("SWG", "SWG is a table of sizes, not a unit", "write the diameter in in or mm"));

  private UnknownUnit() {}

  private static Map.Entry<String, String[]> refused(String symbol, String what, String wayOut) {
    return Map.entry(symbol, new String[] {what, wayOut});
  }

  private static String gauge(String unit) {
    return "write "
        + unit
        + " and say it in the name, such as oil_pressure_gauge; add the barometer where the absolute"
        + " pressure is wanted";
  }

  static UnitException exception(String symbol, String text) {
    String[] known = REFUSED.get(symbol);
    if (known != null) {
      return new UnitException(known[0], known[1]);
    }
    List<String> nearest = nearest(symbol);
    String where = symbol.equals(text) ? "" : " in \"" + text + "\"";
    String wayOut =
        nearest.isEmpty()
            ? "write a unit of the table, such as mm, N.m or 1/K"
            : "nearest: " + String.join(", ", nearest);
    return new UnitException("\"" + symbol + "\"" + where + " is not a unit", wayOut);
  }

  /**
   * First another case (kW for KW), then two units run together (N.m for Nm), then misspellings.
   */
  private static List<String> nearest(String symbol) {
    List<String> misspelt = UnitTable.nearest(symbol);
    return Stream.of(
            misspelt.stream().filter(symbol::equalsIgnoreCase),
            UnitTable.asProduct(symbol).stream(),
            misspelt.stream())
        .flatMap(s -> s)
        .distinct()
        .limit(3)
        .toList();
  }
}
