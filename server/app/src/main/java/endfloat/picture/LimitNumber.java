package endfloat.picture;

import endfloat.units.ShortestDecimal;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The number of a limit that is shown in another unit than it was typed in. Verdicts are reckoned
 * from the limit as typed; only the print is rounded, and so little that nobody could judge
 * otherwise by it.
 */
public final class LimitNumber {
  /** A number as short as this is printed whole. */
  private static final int SHORT = 6;

  private static final int FIGURES = 5;

  /** The last place printed is no coarser than this part of the width between the limits. */
  private static final double PARTS = 200;

  private LimitNumber() {}

  /**
   * The text of a limit.
   *
   * @param at the limit in the unit shown
   * @param width between the two limits in that unit; NaN where there is only one
   */
  public static String text(double at, double width) {
    BigDecimal whole = ShortestDecimal.of(at);
    if (whole.precision() <= SHORT) {
      return plain(whole);
    }
    int places =
        width > 0
            ? (int) Math.ceil(StrictMath.log10(PARTS / width))
            : FIGURES - (whole.precision() - whole.scale());
    return plain(whole.setScale(places, RoundingMode.HALF_EVEN));
  }

  private static String plain(BigDecimal number) {
    if (number.signum() == 0) {
      return "0";
    }
    return number.stripTrailingZeros().toPlainString().replace('-', '\u2212');
  }
}
