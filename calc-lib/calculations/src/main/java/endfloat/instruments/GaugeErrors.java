package endfloat.instruments;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Errors of a gauge that stands askew or off the diameter. */
public final class GaugeErrors {
  private GaugeErrors() {}

  /**
   * Errors of a tilted length, both counted as sizes.
   *
   * @param readsLong L/cos θ − L, where a tilted gauge spans the true length between parallel faces
   * @param readsShort L − L cos θ, where a tilted scale of that length covers less
   * @param rule second-order rule: L θ²/2, or d²/(2 L) from an offset
   * @param angle θ
   */
  public record Cosine(
      @In("mm") double readsLong,
      @In("mm") double readsShort,
      @In("mm") double rule,
      @In("deg") double angle) {}

  /**
   * Cosine error of a length taken along a line askew to it: {@code L/cos θ − L}, or {@code L − L
   * cos θ}.
   *
   * @param length L
   * @param angle θ, between the line of measurement and the length
   * @param offset d, of one end across the length; instead of the angle, θ = atan(d/L)
   */
  @Calculates(
      source = "plane geometry",
      cautions =
          "Which of the two holds depends on what is fixed: faces (reads long) or scale (reads short).",
      terms = {"cosine error", "misaligned", "askew", "Abbe", "tilt"})
  public static Cosine cosineError(
      @In("mm") @Range("> 0 mm") double length,
      @In("deg") @Range("-80 deg .. 80 deg") @Default(Default.NOT_GIVEN) double angle,
      @In("mm") @Default(Default.NOT_GIVEN) double offset) {
    if (Double.isNaN(angle) == Double.isNaN(offset)) {
      throw new RefusedException("Give the angle or the offset, one of them.");
    }
    boolean byAngle = Double.isNaN(offset);
    double theta = byAngle ? angle : StrictMath.atan(offset / length);
    if (Math.abs(theta) > StrictMath.toRadians(80) * (1 + 1e-12)) {
      throw new RefusedException(
          "The offset leans by more than 80 degrees: it stands across the length, see the drawing.");
    }
    // 1 − cos θ without the loss of figures at small angles
    double half = StrictMath.sin(theta / 2);
    double shortfall = 2 * half * half;
    return new Cosine(
        length * shortfall / StrictMath.cos(theta),
        length * shortfall,
        byAngle ? length * theta * theta / 2 : offset * offset / (2 * length),
        theta);
  }

  /**
   * What a two-point gauge shows in a bore when it is not on the diameter.
   *
   * @param reading with both errors
   * @param chordError from being off the diameter, negative
   * @param tiltError from leaning along the axis, positive
   */
  public record BoreReading(
      @In("mm") double reading, @In("um") double chordError, @In("um") double tiltError) {}

  /**
   * Errors of a two-point bore gauge off the diameter by e or leaning along the axis by an angle:
   * chord {@code √(D² − 4 e²)}, leaning {@code D/cos τ}.
   *
   * @param diameter D, of the bore
   * @param offset e, from the line of measurement to the axis
   * @param tilt τ, lean of the gauge along the axis
   */
  @Calculates(
      source =
          "plane geometry: chord of a circle, span between parallel generators; point contacts",
      cautions =
          "The two errors have opposite signs: rock for the least reading along the axis and the greatest across it.",
      terms = {"bore gauge", "rocking", "telescopic gauge", "chord"})
  public static BoreReading boreGaugeError(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("mm") @Default("0 mm") double offset,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double tilt) {
    double radius = diameter / 2;
    if (Math.abs(offset) >= radius) {
      throw new RefusedException("offset is less than the radius of the bore.");
    }
    double chord = 2 * Math.sqrt((radius - offset) * (radius + offset));
    double half = StrictMath.sin(tilt / 2);
    double lean = 2 * half * half / StrictMath.cos(tilt);
    double chordError = -4 * offset * offset / (diameter + chord);
    return new BoreReading(chord * (1 + lean), chordError, diameter * lean);
  }
}
