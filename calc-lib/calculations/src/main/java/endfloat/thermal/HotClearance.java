package endfloat.thermal;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.TypesetAs;

/** Sizes and clearances away from 20 °C. */
public final class HotClearance {
  private HotClearance() {}

  /**
   * Diametral clearance of a shaft in a bore at their own temperatures: D (1 + α_D (T_D − 20 °C)) −
   * d (1 + α_d (T_d − 20 °C)).
   *
   * <p>The bore counts as if it were solid and free. A bush pressed into another metal follows its
   * housing; there the fit must be worked hot first. Negative is interference.
   *
   * @param bore D, diameter at 20 °C
   * @param shaft d, diameter at 20 °C
   * @param expansionBore α_D, mean coefficient from 20 °C
   * @param expansionShaft α_d, mean coefficient from 20 °C
   * @param tBore temperature of the part with the bore
   * @param tShaft temperature of the shaft
   * @return diametral clearance, negative where it has become interference
   */
  @Calculates(
      source = "free linear expansion of both parts from the reference temperature of ISO 1",
      cautions = "A bush pressed into another metal is not free: its bore follows the housing.",
      terms = {"running clearance", "hot clearance", "bearing clearance when warm"},
      partials = "hotClearancePartials")
  @TypesetAs(
      "bore * (1 + expansion_bore * (t_bore - 20 degC)) - shaft * (1 + expansion_shaft * (t_shaft - 20 degC))")
  @In("mm")
  public static double hotClearance(
      @In("mm") @Range("> 0 mm") double bore,
      @In("mm") @Range("> 0 mm") double shaft,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionBore,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionShaft,
      @In("degC") double tBore,
      @In("degC") double tShaft) {
    return bore * (1 + expansionBore * ReferenceTemperature.riseTo(tBore))
        - shaft * (1 + expansionShaft * ReferenceTemperature.riseTo(tShaft));
  }

  public static double[][] hotClearancePartials(
      double bore,
      double shaft,
      double expansionBore,
      double expansionShaft,
      double tBore,
      double tShaft) {
    double riseBore = ReferenceTemperature.riseTo(tBore);
    double riseShaft = ReferenceTemperature.riseTo(tShaft);
    return new double[][] {
      {
        1 + expansionBore * riseBore,
        -1 - expansionShaft * riseShaft,
        bore * riseBore,
        -shaft * riseShaft,
        bore * expansionBore,
        -shaft * expansionShaft
      }
    };
  }

  /**
   * Size at 20 °C of a part read at another temperature with an instrument at its own: L (1 + α_i
   * (T_i − 20 °C)) / (1 + α_p (T_p − 20 °C)).
   *
   * <p>The instrument's scale is right at 20 °C. Give 0 for its expansion where it has already been
   * corrected to its true length.
   *
   * @param length as read
   * @param expansionPart α_p, of the part
   * @param tPart temperature of the part
   * @param expansionInstrument α_i, of the instrument
   * @param tInstrument temperature of the instrument
   * @return size at 20 °C
   */
  @Calculates(
      source =
          "ISO 1:2016 (reference temperature 20 degC); free linear expansion of part and instrument",
      cautions = "Both must have soaked: a part still cooling has no one temperature.",
      terms = {"temperature correction", "size at 20 degC", "soak"},
      partials = "atReferenceTemperaturePartials")
  @TypesetAs(
      "length * (1 + expansion_instrument * (t_instrument - 20 degC)) / (1 + expansion_part * (t_part - 20 degC))")
  @In("mm")
  public static double atReferenceTemperature(
      @In("mm") @Range("> 0 mm") double length,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionPart,
      @In("degC") double tPart,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionInstrument,
      @In("degC") double tInstrument) {
    return length
        * (1 + expansionInstrument * ReferenceTemperature.riseTo(tInstrument))
        / (1 + expansionPart * ReferenceTemperature.riseTo(tPart));
  }

  public static double[][] atReferenceTemperaturePartials(
      double length,
      double expansionPart,
      double tPart,
      double expansionInstrument,
      double tInstrument) {
    double risePart = ReferenceTemperature.riseTo(tPart);
    double riseInstrument = ReferenceTemperature.riseTo(tInstrument);
    double instrument = 1 + expansionInstrument * riseInstrument;
    double part = 1 + expansionPart * risePart;
    double size = length * instrument / part;
    return new double[][] {
      {
        instrument / part,
        -size * risePart / part,
        -size * expansionPart / part,
        length * riseInstrument / part,
        length * expansionInstrument / part
      }
    };
  }
}
