package endfloat.units;

import java.math.BigDecimal;

/**
 * One unit of the table, before it stands in a product.
 *
 * @param symbol as it is written in the working language
 * @param printed as it is printed
 * @param dimension what it measures
 * @param factor of one of it in SI
 * @param offset added to a number on this temperature scale before the factor; null for all others
 * @param interval symbol of the interval of a temperature scale; its own symbol for all others
 * @param system whose unit it is; null where every system uses it
 */
record Atom(
    String symbol,
    String printed,
    Dimension dimension,
    Factor factor,
    BigDecimal offset,
    String interval,
    UnitSystem system) {

  boolean isPoint() {
    return offset != null;
  }
}
