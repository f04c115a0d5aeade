package endfloat.engine;

import endfloat.units.ShortestDecimal;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The number of a limit that is shown in another unit than it was typed in. Verdicts are reckoned
 * from the limit as typed; only the print is rounded, and always inwards: what keeps the printed
 * limit keeps the true one (method B of ISO 370; from memory).
 */
final class LimitNumber {
  /** A number as short as this is printed whole. */
  private static final int SHORT = 6;

  private static final int FIGURES = 5;

  /** Beyond these figures stands the rounding of the doubles. */
  private static final MathContext SURE = new MathContext(13, RoundingMode.HALF_EVEN);

  /** The last place printed is no coarser than this part of the width between the limits. */
  private static final double PARTS = 200;

  private LimitNumber() {}

  /**
   * The text of a lower limit.
   *
   * @param at the limit in the unit shown
   * @param width between the two limits in that unit; NaN where there is only one
   */
  static String low(double at, double width) {
    return text(at, width, RoundingMode.CEILING);
  }

  /** The text of an upper limit. */
  static String high(double at, double width) {
    return text(at, width, RoundingMode.FLOOR);
  }

  private static String text(double at, double width, RoundingMode inwards) {
    BigDecimal whole = ShortestDecimal.of(at).round(SURE).stripTrailingZeros();
    if (whole.precision() <= SHORT) {
      return plain(whole.signum() == 0 ? BigDecimal.ZERO : whole);
    }
    int places =
        width > 0
            ? (int) Math.ceil(StrictMath.log10(PARTS / width))
            : FIGURES - (whole.precision() - whole.scale());
    return plain(whole.setScale(places, inwards));
  }

  private static String plain(BigDecimal number) {
    return number.toPlainString().replace('-', '\u2212');
  }
}
