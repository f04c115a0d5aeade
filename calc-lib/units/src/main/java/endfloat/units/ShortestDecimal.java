package endfloat.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The shortest decimal that reads back as a double, the same on every JDK (before 19, {@code
 * Double.toString} gave a figure too many now and then).
 */
public final class ShortestDecimal {
  private static final MathContext FIGURES_15 = new MathContext(15);
  private static final MathContext FIGURES_16 = new MathContext(16);
  private static final MathContext FIGURES_17 = new MathContext(17);

  private ShortestDecimal() {}

  /**
   * The decimal of a double.
   *
   * @param value finite
   * @throws NumberFormatException if it is not finite
   */
  public static BigDecimal of(double value) {
    if (value == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal printed = new BigDecimal(Double.toString(value));
    if (printed.precision() > 15) {
      BigDecimal exact = new BigDecimal(value);
      printed = exact.round(FIGURES_15);
      if (printed.doubleValue() != value) {
        printed = exact.round(FIGURES_16);
      }
      if (printed.doubleValue() != value) {
        printed = exact.round(FIGURES_17);
      }
    }
    return printed.stripTrailingZeros();
  }
}
