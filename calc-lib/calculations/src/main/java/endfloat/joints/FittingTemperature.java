package endfloat.joints;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** How warm a hub or how cold a shaft must be to slip together, and what clearance that leaves. */
public final class FittingTemperature {
  private static final String SOURCE =
      "linear expansion, dT = (interference + clearance)/(alpha d): Shigley's Mechanical"
          + " Engineering Design, 9th ed., sections 3-16 and 3-17";

  /** Liquid nitrogen, the coldest that a workshop has [K]. */
  static final double NITROGEN = 77.15;

  static final String WARM =
      "Above about 150 degC tempered steels lose hardness, above about 120 to 150 degC age-hardened"
          + " aluminium alloys: keep below the tempering or ageing temperature of the part.";
  static final String COLD =
      "Dry ice (-78.5 degC) and liquid nitrogen (-196 degC) burn and displace air; many steels and"
          + " irons are brittle when cold: do not strike the part.";

  private FittingTemperature() {}

  /**
   * Diametral clearance of the free parts at their temperatures: {@code c = d (α_h ΔT_h − α_s ΔT_s)
   * − δ}; negative where they still interfere.
   *
   * @param diameter d, nominal diameter of the joint
   * @param interference δ, greatest diametral interference at 20 degC
   * @param expansionHub α_h, mean coefficient of expansion of the hub
   * @param expansionShaft α_s, of the shaft
   * @param temperatureHub uniform temperature of the hub
   * @param temperatureShaft uniform temperature of the shaft
   * @return diametral clearance; negative is interference
   */
  @Calculates(
      source = SOURCE,
      cautions = {WARM, COLD},
      terms = {"shrink fit", "dry ice", "liquid nitrogen", "heating"},
      partials = "fittingClearancePartials")
  @In("mm")
  public static double fittingClearance(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("mm") @Range(">= 0 mm") double interference,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionHub,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionShaft,
      @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperatureHub,
      @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperatureShaft) {
    return diameter
            * (expansionHub * (temperatureHub - 293.15)
                - expansionShaft * (temperatureShaft - 293.15))
        - interference;
  }

  /** Of {@link #fittingClearance}. */
  public static double[][] fittingClearancePartials(
      double diameter,
      double interference,
      double expansionHub,
      double expansionShaft,
      double temperatureHub,
      double temperatureShaft) {
    double warm = temperatureHub - 293.15;
    double cold = temperatureShaft - 293.15;
    return new double[][] {
      {
        expansionHub * warm - expansionShaft * cold,
        -1,
        diameter * warm,
        -diameter * cold,
        diameter * expansionHub,
        -diameter * expansionShaft
      }
    };
  }

  /**
   * Temperature of the hub at which it slips over the shaft with a wanted clearance: {@code T_h =
   * T_0 + (δ + c + d α_s (T_s − T_0))/(α_h d)} with T_0 = 20 degC.
   *
   * @param diameter d, nominal diameter of the joint
   * @param interference δ, greatest diametral interference at 20 degC
   * @param clearance c, diametral clearance wanted while fitting; 0.001 of the diameter is common
   * @param expansionHub α_h, mean coefficient of expansion of the hub up to that temperature
   * @param expansionShaft α_s, of the shaft; needed only if the shaft is not at 20 degC
   * @param temperatureShaft of the shaft while fitting
   * @return temperature of the hub
   * @throws RefusedException if the shaft is not at 20 degC and its expansion is missing
   */
  @Calculates(
      source = SOURCE,
      cautions = {
        WARM,
        "Add for the heat lost between oven and bench; common practice is 20 to 50 K, no source."
      },
      terms = {"shrink fit", "oven", "heating temperature"})
  @In("degC")
  public static double heatToFit(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("mm") @Range(">= 0 mm") double interference,
      @In("mm") @Range(">= 0 mm") double clearance,
      @In("1/K") @Range("1e-7 1/K .. 1e-3 1/K") double expansionHub,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") @Default(Default.NOT_GIVEN) double expansionShaft,
      @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperatureShaft) {
    double shaft = 0;
    if (temperatureShaft != 293.15) {
      if (Double.isNaN(expansionShaft)) {
        throw new RefusedException("give expansion_shaft: the shaft is not at 20 degC");
      }
      shaft = diameter * expansionShaft * (temperatureShaft - 293.15);
    }
    return 293.15 + (interference + clearance + shaft) / (expansionHub * diameter);
  }

  /**
   * Temperature of the shaft at which it slips into a hub at 20 degC with a wanted clearance:
   * {@code T_s = T_0 − (δ + c)/(α_s d)}.
   *
   * @param diameter d, nominal diameter of the joint
   * @param interference δ, greatest diametral interference at 20 degC
   * @param clearance c, diametral clearance wanted while fitting
   * @param expansionShaft α_s, mean coefficient of expansion of the shaft down to that temperature
   * @return temperature of the shaft
   * @throws RefusedException if cooling alone cannot do it
   */
  @Calculates(
      source = SOURCE,
      cautions = {
        COLD,
        "The coefficient falls with temperature: take the mean from 20 degC down, or the part stays"
            + " larger than worked out."
      },
      terms = {"shrink fit", "dry ice", "liquid nitrogen", "cooling temperature"})
  @In("degC")
  public static double coolToFit(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("mm") @Range(">= 0 mm") double interference,
      @In("mm") @Range(">= 0 mm") double clearance,
      @In("1/K") @Range("1e-7 1/K .. 1e-3 1/K") double expansionShaft) {
    double temperature = 293.15 - (interference + clearance) / (expansionShaft * diameter);
    if (temperature < NITROGEN) {
      throw new RefusedException(
          "cooling alone cannot do it: the shaft would have to be colder than liquid nitrogen"
              + " (-196 degC); heat the hub as well, with heat_to_fit");
    }
    return temperature;
  }
}
