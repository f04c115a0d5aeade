package endfloat.gears;

import endfloat.contact.HertzContact;
import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Bending and contact stress numbers of a spur pair by AGMA. */
public final class ToothStressAgma {
  private static final double FOOT_PER_MINUTE = 0.3048 / 60;

  private ToothStressAgma() {}

  /**
   * Stress numbers.
   *
   * @param bending s_t of the tooth whose geometry factor was given
   * @param contact s_c of the pair
   * @param dynamicFactor K_v
   * @param contactGeometry I, of the pair
   */
  public record Agma(
      @In("MPa") double bending,
      @In("MPa") double contact,
      @In("1") double dynamicFactor,
      @In("1") double contactGeometry) {}

  /**
   * Bending and contact stress number of an external spur pair by AGMA, simplified: {@code s_t =
   * F_t K_o K_v K_s K_m K_B/(b m J)}, {@code s_c = C_p √(F_t K_o K_v K_s K_m/(d₁ b I))}.
   *
   * <p>J comes from the charts of AGMA 908 for the tooth that is meant; {@code I = cos φ sin φ/2 ×
   * m_G/(m_G + 1)}; {@code K_v = ((A + √V)/A)^B} with A = 50 + 56 (1 − B), B = (12 − Q_v)^(2/3)/4,
   * V in ft/min. K_v counts above 1.
   *
   * @param tangential F_t on the pitch circle
   * @param faceWidth b
   * @param module m, 1 in / diametral pitch
   * @param teeth1 z₁, of the pinion
   * @param teeth2 z₂
   * @param geometryFactor J of the tooth whose bending is wanted
   * @param pressureAngle φ
   * @param quality Q_v, transmission accuracy; with a speed it gives K_v
   * @param pitchLineSpeed V
   * @param overload K_o
   * @param size K_s
   * @param loadDistribution K_m
   * @param rim K_B
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException with a speed above the limit of the quality, or without a quality
   */
  @Calculates(
      source =
          "ANSI/AGMA 2001-D04 as in Shigley's Mechanical Engineering Design, 9th ed., Eqs. (14-15),"
              + " (14-16), (14-23), (14-27) to (14-29), from memory",
      cautions = {
        "No rating: allowable stress numbers and lives are not worked out here.",
        "Bending hangs on J, read from a chart for this tooth, this mate and this place of the load."
      },
      terms = {"AGMA", "rating", "pitting", "tooth strength", "geometry factor", "J factor"})
  public static Agma toothStressAgma(
      @In("N") @Range(">= 0 N") double tangential,
      @In("mm") @Range("> 0 mm") double faceWidth,
      @In("mm") @Range("> 0 mm") double module,
      @In("1") @Range("10 .. 500") double teeth1,
      @In("1") @Range("10 .. 1000") double teeth2,
      @In("1") @Range("0.1 .. 0.8") double geometryFactor,
      @In("deg") @Range("14 deg .. 28 deg") @Default("20 deg") double pressureAngle,
      @In("1") @Range("3 .. 11.5") @Default(Default.NOT_GIVEN) double quality,
      @In("m/s") @Range(">= 0 m/s") @Default("0 m/s") double pitchLineSpeed,
      @In("1") @Range("1 .. 5") @Default("1") double overload,
      @In("1") @Range("1 .. 5") @Default("1") double size,
      @In("1") @Range("1 .. 5") @Default("1") double loadDistribution,
      @In("1") @Range("1 .. 5") @Default("1") double rim,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson2) {
    CylindricalMesh.whole("teeth_1", teeth1);
    CylindricalMesh.whole("teeth_2", teeth2);
    double dynamic = dynamicFactor(quality, pitchLineSpeed);
    double ratio = teeth2 / teeth1;
    double pitting =
        StrictMath.cos(pressureAngle) * StrictMath.sin(pressureAngle) / 2 * ratio / (ratio + 1);
    double elastic =
        HertzContact.contactModulus(modulus1, modulus2, poisson1, poisson2) / StrictMath.PI;
    double load = tangential * overload * dynamic * size * loadDistribution;
    return new Agma(
        load * rim / (faceWidth * module * geometryFactor),
        Math.sqrt(elastic * load / (module * teeth1 * faceWidth * pitting)),
        dynamic,
        pitting);
  }

  private static double dynamicFactor(double quality, double pitchLineSpeed) {
    if (pitchLineSpeed == 0) {
      return 1;
    }
    if (Double.isNaN(quality)) {
      throw new RefusedException("with a speed give quality, the Q_v of the gears");
    }
    double b = StrictMath.cbrt((12 - quality) * (12 - quality)) / 4;
    double a = 50 + 56 * (1 - b);
    double speed = pitchLineSpeed / FOOT_PER_MINUTE;
    double most = (a + quality - 3) * (a + quality - 3);
    if (speed > most) {
      throw new RefusedException(
          String.format(
              java.util.Locale.ROOT,
              "gears of quality %.3g run to %.0f ft/min at most; the speed is %.0f ft/min",
              quality,
              most,
              speed));
    }
    return StrictMath.pow((a + Math.sqrt(speed)) / a, b);
  }
}
