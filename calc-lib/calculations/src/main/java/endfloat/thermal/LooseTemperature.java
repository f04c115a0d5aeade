package endfloat.thermal;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Where heat ends an interference. */
public final class LooseTemperature {
  private static final double MOLTEN = 1773.15;

  private LooseTemperature() {}

  /**
   * Common temperature at which an interference is gone: {@code 20 °C + (d - D)/(α_b D - α_s d)}.
   *
   * @param bore D, diameter of the bore at 20 degC
   * @param shaft d, diameter of the shaft, bush or liner in it at 20 degC, above the bore
   * @param expansionBore α_b, of the outer part
   * @param expansionShaft α_s, of the inner part
   * @return temperature of both parts at which they are just free
   * @throws RefusedException if they do not come free by heating both, or above 1500 °C only
   */
  @Calculates(
      source = "derived: zero of hot_clearance with one temperature for both parts",
      cautions = {
        "Both parts at one temperature, both free: no pressure is left at this point, but a fit"
            + " slips earlier, when its pressure no longer holds the load.",
        "Expansion is the mean from 20 degC to the result; look it up again if the result is far"
            + " from there."
      },
      terms = {"loose", "bush loose in housing", "hot", "interference lost", "liner"},
      partials = "looseTemperaturePartials")
  @In("degC")
  public static double looseTemperature(
      @In("mm") @Range("> 0 mm") double bore,
      @In("mm") @Range("> 0 mm") double shaft,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionBore,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") double expansionShaft) {
    if (shaft < bore) {
      throw new OutOfRangeException(
          "shaft", shaft, bore, Double.POSITIVE_INFINITY, "mm", "it is loose already at 20 degC");
    }
    double opening = expansionBore * bore - expansionShaft * shaft;
    if (!(opening > 0)) {
      throw new RefusedException(
          "the bore grows no faster than what is in it: heating both never frees them, it tightens"
              + " them; heat the outer part alone, see heat_to_fit");
    }
    double temperature = ReferenceTemperature.KELVIN + (shaft - bore) / opening;
    if (temperature > MOLTEN) {
      throw new RefusedException(
          "they would come free above 1500 degC only, where no metal of an engine is solid: heating"
              + " both does not free them");
    }
    return temperature;
  }

  /** Of {@link #looseTemperature}. */
  public static double[][] looseTemperaturePartials(
      double bore, double shaft, double expansionBore, double expansionShaft) {
    double opening = expansionBore * bore - expansionShaft * shaft;
    double rise = (shaft - bore) / opening;
    return new double[][] {
      {
        (-1 - rise * expansionBore) / opening,
        (1 + rise * expansionShaft) / opening,
        -rise * bore / opening,
        rise * shaft / opening
      }
    };
  }
}
