package endfloat.engine;

import endfloat.units.Unit;

/**
 * The two ends of a limit as a sheet prints them: with the digits typed where those say the same in
 * the unit shown, wherever they were typed; else rounded, inwards, in that unit.
 *
 * @param low empty where there is no lower end
 * @param high empty where there is no upper end
 * @param unit as printed; empty for a pure number
 */
public record LimitShown(String low, String high, String unit) {
  private static final double SAME = 1e-12;

  /** A limit in a unit. */
  public static LimitShown of(Judgement limit, Unit unit) {
    double width = unit.interval().fromSi(limit.high() - limit.low());
    String low =
        Double.isNaN(limit.low())
            ? ""
            : says(limit.lowTyped(), limit.low(), unit)
                ? Shown.power(limit.lowTyped())
                : LimitNumber.low(unit.fromSi(limit.low()), width);
    String high =
        Double.isNaN(limit.high())
            ? ""
            : says(limit.highTyped(), limit.high(), unit)
                ? Shown.power(limit.highTyped())
                : LimitNumber.high(unit.fromSi(limit.high()), width);
    return new LimitShown(low, high, unit.print().equals("1") ? "" : unit.print());
  }

  /** Whether these digits are this number in this unit: 0.30 is, under another unit it is not. */
  private static boolean says(String typed, double si, Unit unit) {
    return typed.matches("[-\u2212]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?")
        && Math.abs(unit.toSi(typed.replace('\u2212', '-')) - si) <= SAME * Math.abs(si);
  }
}
