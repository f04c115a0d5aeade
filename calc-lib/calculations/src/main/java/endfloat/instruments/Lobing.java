package endfloat.instruments;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/** What two and three points show of a form with lobes, {@code r = R + A cos nφ}. */
public final class Lobing {
  private Lobing() {}

  /** How a diameter is taken. */
  public enum Gauge {
    TWO_POINT,
    /** Self-centring, the three anvils 120° apart. */
    THREE_POINT
  }

  /**
   * What a gauge shows while it is turned in a lobed bore.
   *
   * @param span largest less smallest reading, as diameter
   * @param deviation true roundness deviation, 2 A on the radius
   * @param factor span over deviation; 0: the gauge is blind to this form
   */
  public record Span(@In("mm") double span, @In("mm") double deviation, @In("1") double factor) {}

  /**
   * Span of the readings of a bore with n lobes: a two-point gauge misses odd lobes, a three-point
   * gauge all but multiples of three.
   *
   * <p>First order in A/R; what is left out stays below A²n²/R.
   *
   * @param lobes n, 2 or more
   * @param amplitude A, of the radius
   * @param gauge two point, or three point self-centring
   */
  @Calculates(
      source =
          "first-order response of symmetric two-point and three-point measurement, compare ISO 4292",
      cautions = "An out-of-round bore that reads round: take it with the other gauge as well.",
      terms = {"lobing", "three-lobed", "tri-lobe", "bore gauge", "out-of-round"})
  public static Span lobingSpan(
      @In("1") @Range("2 .. 100") double lobes,
      @In("mm") @Range(">= 0 mm") double amplitude,
      @Default("\"two point\"") Gauge gauge) {
    int n = whole(lobes);
    boolean seen = gauge == Gauge.TWO_POINT ? n % 2 == 0 : n % 3 == 0;
    double factor = seen ? 2 : 0;
    return new Span(2 * amplitude * factor, 2 * amplitude, factor);
  }

  /**
   * Roundness by V-block.
   *
   * @param factor F, indicator movement over the roundness deviation; its sign says which way
   * @param roundness deviation, reading over F
   */
  public record VBlock(@In("1") double factor, @In("mm") Uncertain roundness) {}

  /**
   * Roundness of a shaft turned in a V-block with the indicator on the bisector: {@code F = 1 +
   * (−1)ⁿ cos(n (90° − α/2))/sin(α/2)}.
   *
   * @param lobes n, 2 or more
   * @param angle α, included, of the block
   * @param reading of the indicator over a turn, for the roundness
   */
  @Calculates(
      source = "summit method of ISO 4292 and BS 3730-3",
      cautions = "A factor near nought means the block is blind to this form: use another angle.",
      terms = {"V-block", "vee block", "lobing", "roundness", "centreless ground"})
  public static VBlock vBlockRoundness(
      @In("1") @Range("2 .. 100") double lobes,
      @In("deg") @Range("20 deg .. 170 deg") @Default("90 deg") double angle,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double reading) {
    int n = whole(lobes);
    double sign = n % 2 == 0 ? 1 : -1;
    double factor =
        1 + sign * StrictMath.cos(n * (StrictMath.PI / 2 - angle / 2)) / StrictMath.sin(angle / 2);
    Uncertain roundness;
    if (Double.isNaN(reading)) {
      roundness = Uncertain.absent("give reading, the indicator's movement over a turn");
    } else if (Math.abs(factor) < 0.05) {
      roundness =
          Uncertain.absent("this block does not see this number of lobes: use another angle");
    } else {
      roundness = new Uncertain(reading / Math.abs(factor), 0);
    }
    return new VBlock(factor, roundness);
  }

  private static int whole(double lobes) {
    if (lobes != Math.rint(lobes)) {
      throw new RefusedException("lobes is a whole number.");
    }
    return (int) lobes;
  }
}
