package endfloat.thermal;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.definition.TypesetAs;
import java.util.List;

/** Growth of lengths with temperature. */
public final class ThermalGrowth {
  private static final String HOLDS =
      "Holds for a part that is free to grow and at one temperature throughout; take the coefficient for the interval of"
          + " temperature that is meant.";

  private ThermalGrowth() {}

  /**
   * Growth of a length by a change of temperature: ΔL = L α ΔT.
   *
   * <p>Negative on cooling. A bore grows as if it were solid.
   *
   * @param length L, before the change
   * @param expansion α, mean coefficient of linear expansion over the change
   * @param temperatureChange ΔT, positive on heating
   * @return ΔL, positive when it grows longer
   */
  @Calculates(
      source = "definition of the mean coefficient of linear expansion",
      cautions = HOLDS,
      terms = {"expansion", "heat growth", "hot length"},
      partials = "thermalGrowthPartials")
  @TypesetAs("length * expansion * temperature_change")
  @In("mm")
  public static double thermalGrowth(
      @In("mm") @Range(">= 0 mm") double length,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansion,
      @In("K") double temperatureChange) {
    return length * expansion * temperatureChange;
  }

  public static double[][] thermalGrowthPartials(
      double length, double expansion, double temperatureChange) {
    return new double[][] {
      {expansion * temperatureChange, length * temperatureChange, length * expansion}
    };
  }

  /**
   * A stretch of temperature with its own mean coefficient.
   *
   * @param from lower end
   * @param to upper end
   * @param expansion mean coefficient of linear expansion between them
   */
  @Part
  public record ExpansionInterval(
      @In("degC") double from,
      @In("degC") double to,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansion) {}

  /**
   * Growth of a length where the coefficient changes with temperature: ΔL = L Σ αᵢ ΔTᵢ over the
   * intervals passed.
   *
   * <p>The coefficients are means over their own intervals, all referred to the length at the
   * start. Cooling counts negative.
   *
   * @param length L, at the start
   * @param start temperature before
   * @param end temperature after
   * @param intervals that cover the way from start to end without a gap
   * @return ΔL, positive when it grows longer
   */
  @Calculates(
      source = "definition of the mean coefficient of linear expansion, summed over the intervals",
      cautions = HOLDS,
      terms = {"expansion", "temperature-dependent coefficient"},
      partials = "thermalGrowthByIntervalsPartials")
  @In("mm")
  public static double thermalGrowthByIntervals(
      @In("mm") @Range(">= 0 mm") double length,
      @In("degC") double start,
      @In("degC") double end,
      List<ExpansionInterval> intervals) {
    double low = Math.min(start, end);
    double high = Math.max(start, end);
    double covered = 0;
    double strain = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (ExpansionInterval interval :
        intervals.stream().sorted((a, b) -> Double.compare(a.from(), b.from())).toList()) {
      if (interval.to() <= interval.from()) {
        throw new RefusedException(
            "An interval of expansion runs from its lower to its higher temperature.");
      }
      if (interval.from() < reached - 1e-9) {
        throw new RefusedException(
            "Two intervals of expansion overlap; each temperature belongs to one.");
      }
      reached = interval.to();
      double passed = Math.max(0, Math.min(high, interval.to()) - Math.max(low, interval.from()));
      covered += passed;
      strain += interval.expansion() * passed;
    }
    if (covered < high - low - 1e-6) {
      throw new RefusedException(
          "The intervals of expansion leave a gap between start and end; take a coefficient tabulated for the missing stretch.");
    }
    return length * strain * Math.signum(end - start);
  }

  /**
   * Of {@link #thermalGrowthByIntervals}: at its ends the growth goes with the coefficient there.
   */
  public static double[][] thermalGrowthByIntervalsPartials(
      double length, double start, double end, List<ExpansionInterval> intervals) {
    return new double[][] {
      {
        thermalGrowthByIntervals(1, start, end, intervals),
        -length * expansionAt(start, intervals),
        length * expansionAt(end, intervals)
      }
    };
  }

  /** Where two intervals meet, that of either. */
  private static double expansionAt(double temperature, List<ExpansionInterval> intervals) {
    return intervals.stream()
        .filter(i -> temperature >= i.from() && temperature <= i.to())
        .findFirst()
        .orElseThrow()
        .expansion();
  }

  /**
   * How much more an outer part grows than the inner part of the same length: L (α_o ΔT_o − α_i
   * ΔT_i).
   *
   * <p>Positive when the outer part (block, case, housing) outgrows the inner one (shaft, stud,
   * bush).
   *
   * @param length L, common length at the cold temperature
   * @param expansionOuter α_o, coefficient of the outer part
   * @param expansionInner α_i, coefficient of the inner part
   * @param changeOuter ΔT_o, of the outer part
   * @param changeInner ΔT_i, of the inner part
   * @return difference of the growths
   */
  @Calculates(
      source = "difference of two thermal growths",
      cautions = HOLDS,
      terms = {"differential expansion", "block and shaft", "case and shaft"},
      partials = "differentialGrowthPartials")
  @TypesetAs("length * (expansion_outer * change_outer - expansion_inner * change_inner)")
  @In("mm")
  public static double differentialGrowth(
      @In("mm") @Range(">= 0 mm") double length,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionOuter,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionInner,
      @In("K") double changeOuter,
      @In("K") double changeInner) {
    return length * (expansionOuter * changeOuter - expansionInner * changeInner);
  }

  public static double[][] differentialGrowthPartials(
      double length,
      double expansionOuter,
      double expansionInner,
      double changeOuter,
      double changeInner) {
    return new double[][] {
      {
        expansionOuter * changeOuter - expansionInner * changeInner,
        length * changeOuter,
        -length * changeInner,
        length * expansionOuter,
        -length * expansionInner
      }
    };
  }
}
