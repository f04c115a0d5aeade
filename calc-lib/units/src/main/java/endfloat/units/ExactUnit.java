package endfloat.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** A product of powers of units of the table, with its exact factor. */
final class ExactUnit implements Unit {
  private static final MathContext FIGURES_15 = new MathContext(15);

  /** Decimal places that a temperature keeps in kelvin. */
  private static final int POINT_PLACES = 11;

  /** A unit raised to the power {@code exponent / root}. */
  record Item(Atom atom, int exponent, int root) {}

  private final List<Item> items;
  private final Dimension dimension;
  private final Factor factor;
  private final BigDecimal offset;

  /** The factor where it is a short decimal and there is no offset, else null. */
  private final PlainDecimal plainFactor;

  private final double roundedFactor;

  private final String symbol;
  private final String printed;

  ExactUnit(List<Item> items) {
    this.items = List.copyOf(items);
    Dimension measured = Dimension.NONE;
    Factor product = Factor.ONE;
    for (Item item : items) {
      measured = measured.times(item.atom().dimension().power(item.exponent(), item.root()));
      product = product.times(item.atom().factor().power(item.exponent(), item.root()));
    }
    dimension = measured;
    factor = product;
    offset = isOne(items) ? items.get(0).atom().offset() : null;
    plainFactor = offset == null ? factor.plain() : null;
    roundedFactor = plainFactor == null ? Double.NaN : plainFactor.value();
    symbol = UnitWriter.symbol(items);
    printed = UnitWriter.printed(items);
  }

  private static boolean isOne(List<Item> items) {
    return items.size() == 1 && items.get(0).exponent() == 1 && items.get(0).root() == 1;
  }

  List<Item> items() {
    return items;
  }

  Factor factor() {
    return factor;
  }

  @Override
  public String symbol() {
    return symbol;
  }

  @Override
  public String print() {
    return printed;
  }

  @Override
  public Dimension dimension() {
    return dimension;
  }

  @Override
  public boolean isTemperaturePoint() {
    return offset != null;
  }

  @Override
  public Unit interval() {
    return isTemperaturePoint() ? UnitTable.find(items.get(0).atom().interval()) : this;
  }

  @Override
  public double toSi(String decimal) {
    PlainDecimal plain = plainFactor == null ? null : PlainDecimal.read(decimal);
    if (plain != null) {
      double si = plain.times(plainFactor);
      if (!Double.isNaN(si)) {
        return si;
      }
    }
    return toSi(NumberText.read(decimal));
  }

  double toSi(NumberText number) {
    BigDecimal si = si(number.numerator(), new BigDecimal(number.denominator()));
    double value = si.doubleValue();
    if (Double.isInfinite(value) || (value == 0 && si.signum() != 0)) {
      throw new UnitException(
          number.value()
              + (symbol.equals("1") ? "" : " " + symbol)
              + " is beyond what can be reckoned with",
          "check the exponent");
    }
    return value;
  }

  private BigDecimal si(BigDecimal number, BigDecimal denominator) {
    BigDecimal counted = isTemperaturePoint() ? number.add(offset.multiply(denominator)) : number;
    BigDecimal scaled = factor.times(counted);
    return denominator.compareTo(BigDecimal.ONE) == 0
        ? scaled
        : scaled.divide(denominator, Factor.WORKING);
  }

  @Override
  public double toSi(double value) {
    return Double.isFinite(value)
        ? si(ShortestDecimal.of(value), BigDecimal.ONE).doubleValue()
        : value;
  }

  /**
   * Of the numbers that read back as this SI value the one with at most 15 figures (on a
   * temperature scale 11 places), so that what was typed comes back; where there is none, the
   * quotient.
   */
  @Override
  public double fromSi(double si) {
    if (!Double.isFinite(si)) {
      return si;
    }
    PlainDecimal plain = plainFactor == null ? null : PlainDecimal.near(si / roundedFactor);
    if (plain != null && plain.times(plainFactor) == si) {
      // No other number of 15 figures reads back as this one.
      return plain.value();
    }
    BigDecimal quotient = factor.under(ShortestDecimal.of(si));
    BigDecimal number = isTemperaturePoint() ? quotient.subtract(offset) : quotient;
    BigDecimal few =
        isTemperaturePoint()
            ? number.setScale(POINT_PLACES, RoundingMode.HALF_EVEN)
            : number.round(FIGURES_15);
    return (si(few, BigDecimal.ONE).doubleValue() == si ? few : number).doubleValue();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExactUnit u && symbol.equals(u.symbol);
  }

  @Override
  public int hashCode() {
    return symbol.hashCode();
  }

  @Override
  public String toString() {
    return symbol;
  }
}
