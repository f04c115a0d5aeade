package endfloat.joints;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/**
 * A hub pressed or shrunk on a shaft, or a bush in a housing (the housing is the hub then, the bush
 * the hollow shaft). Elastic, of one length, no rotation: Lamé's thick rings.
 */
public final class PressFit {
  private static final double AMBIENT = 293.15;

  private PressFit() {}

  /**
   * The joint cold and hot. Tension is positive, compression negative.
   *
   * @param effectiveInterference diametral interference left after the peaks are flattened
   * @param pressure between the parts at 20 degC
   * @param hubHoopBore hoop stress of the hub at its bore
   * @param hubHoopOutside hoop stress of the hub at its outside
   * @param hubRadialBore radial stress of the hub at its bore
   * @param hubEquivalent von Mises stress of the hub at its bore, plane stress
   * @param shaftHoopInterface hoop stress of the shaft at the joint
   * @param shaftHoopBore hoop stress of the shaft at its own bore; at the axis of a solid shaft
   * @param pushOutForce axial force at which the joint slides
   * @param torque at which the joint slips
   * @param jointDiameter common diameter after fitting
   * @param hubOutsideAfter outside diameter of the hub after fitting
   * @param shaftBoreAfter bore of the hollow shaft or bush after fitting; 0 if solid
   * @param boreReduction how much that bore closes, diametral
   * @param interferenceHot diametral interference of the free parts at their temperatures, peaks
   *     flattened; negative means a clearance
   * @param pressureHot pressure at those temperatures; 0 where the parts have come free
   * @param torqueHot torque at which the joint slips hot
   * @param heatHubTo temperature of the hub at which it slips over a shaft at 20 degC
   * @param coolShaftTo temperature of the shaft at which it slips into a hub at 20 degC
   */
  public record Joint(
      @In("mm") double effectiveInterference,
      @In("MPa") double pressure,
      @In("MPa") double hubHoopBore,
      @In("MPa") double hubHoopOutside,
      @In("MPa") double hubRadialBore,
      @In("MPa") double hubEquivalent,
      @In("MPa") double shaftHoopInterface,
      @In("MPa") double shaftHoopBore,
      @In("kN") Uncertain pushOutForce,
      @In("N.m") Uncertain torque,
      @In("mm") double jointDiameter,
      @In("mm") double hubOutsideAfter,
      @In("mm") double shaftBoreAfter,
      @In("mm") double boreReduction,
      @In("mm") double interferenceHot,
      @In("MPa") double pressureHot,
      @In("N.m") Uncertain torqueHot,
      @In("degC") Uncertain heatHubTo,
      @In("degC") Uncertain coolShaftTo) {}

  /**
   * Pressure, stresses, holding force, torque and sizes of a press or shrink fit.
   *
   * <p>With δ the diametral interference left, {@code p = δ / (d [((D² + d²)/(D² − d²) + ν_h)/E_h +
   * ((d² + b²)/(d² − b²) − ν_s)/E_s])}; hoop stress at the hub's bore {@code p (D² + d²)/(D² −
   * d²)}, at its outside {@code 2 p d²/(D² − d²)}; in the shaft {@code −p (d² + b²)/(d² − b²)} at
   * the joint and {@code −2 p d²/(d² − b²)} at its bore, −p throughout when solid. Push-out force
   * {@code π d L p μ}, torque {@code F d/2}. Hot, the free interference is {@code δ + d (α_s ΔT_s −
   * α_h ΔT_h)} with the moduli of the cold parts.
   *
   * @param diameter d, nominal diameter of the joint, taken as the hub's bore before fitting
   * @param interference shaft less bore, diametral, as measured at 20 degC
   * @param hubOutside D, outside diameter of the hub or housing
   * @param length L, length of the joint; needed for force and torque
   * @param modulusHub E_h, modulus of elasticity of the hub
   * @param poissonHub ν_h, Poisson's ratio of the hub
   * @param modulusShaft E_s, modulus of elasticity of the shaft or bush
   * @param poissonShaft ν_s, Poisson's ratio of the shaft or bush
   * @param shaftBore b, bore of the shaft or bush; 0 if solid
   * @param friction μ, coefficient of friction at slip
   * @param roughnessHub Rz of the hub's bore; 0.8 of the sum of both Rz is lost (DIN 7190-1)
   * @param roughnessShaft Rz of the shaft's seat
   * @param expansionHub α_h, mean coefficient of expansion; needed with a temperature
   * @param expansionShaft α_s, likewise
   * @param temperatureHub of the hub, uniform
   * @param temperatureShaft of the shaft, uniform
   * @param fittingClearance diametral clearance wanted while fitting; not given = 0.001 of the
   *     diameter, common practice
   * @return the joint cold and hot
   * @throws RefusedException if the diameters are not b &lt; d &lt; D, or expansions are missing
   */
  @Calculates(
      source =
          "Lamé's equations for press fits: Shigley's Mechanical Engineering Design, 9th ed.,"
              + " section 3-16, Eqs. (3-56) and (3-57), with diametral interference; loss of"
              + " interference 0.8 (Rz_a + Rz_b): DIN 7190-1 (from memory)",
      cautions = {
        "Elastic only: compare hub_equivalent and shaft_hoop_bore with the yield strengths.",
        "Friction 0.12 is common practice for steel on steel, without a source; oil, plating and"
            + " the way of assembly alter it.",
        "Ends of the hub and shoulders raise the stress beyond these values; speed lowers the"
            + " pressure: neither is counted.",
        "Hot, the moduli are those of the cold parts and each part has one temperature.",
        FittingTemperature.WARM,
        FittingTemperature.COLD
      },
      terms = {"shrink fit", "interference fit", "force fit", "bush", "bushing", "liner", "Lamé"})
  public static Joint pressFit(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("mm") @Range(">= 0 mm") double interference,
      @In("mm") @Range("> 0 mm") double hubOutside,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double length,
      @In("GPa") @Range("> 0 GPa") double modulusHub,
      @In("1") @Range("0 .. 0.5") double poissonHub,
      @In("GPa") @Range("> 0 GPa") double modulusShaft,
      @In("1") @Range("0 .. 0.5") double poissonShaft,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double shaftBore,
      @In("1") @Range("0 .. 1") @Default("0.12") double friction,
      @In("um") @Range(">= 0 um") @Default("0 um") double roughnessHub,
      @In("um") @Range(">= 0 um") @Default("0 um") double roughnessShaft,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") @Default(Default.NOT_GIVEN) double expansionHub,
      @In("1/K") @Range("-1e-4 1/K .. 1e-3 1/K") @Default(Default.NOT_GIVEN) double expansionShaft,
      @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperatureHub,
      @In("degC") @Range("-270 degC .. 1500 degC") @Default("20 degC") double temperatureShaft,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double fittingClearance) {
    if (!(hubOutside > diameter)) {
      throw new RefusedException(
          "hub_outside must be larger than the diameter of the joint, or there is no ring to hold");
    }
    if (!(shaftBore < diameter)) {
      throw new RefusedException("shaft_bore must be smaller than the diameter of the joint");
    }
    double left = Math.max(0, interference - 0.8 * (roughnessHub + roughnessShaft));
    double d2 = diameter * diameter;
    double outside2 = hubOutside * hubOutside;
    double bore2 = shaftBore * shaftBore;
    double ring = (outside2 + d2) / (outside2 - d2);
    double core = (d2 + bore2) / (d2 - bore2);
    double give =
        diameter * ((ring + poissonHub) / modulusHub + (core - poissonShaft) / modulusShaft);
    double pressure = left / give;
    double hubHoop = pressure * ring;
    double holding = StrictMath.PI * diameter * length * friction;
    double hot =
        left
            + diameter
                * (growth("expansion_shaft", expansionShaft, temperatureShaft)
                    - growth("expansion_hub", expansionHub, temperatureHub));
    double pressureHot = Math.max(0, hot) / give;
    double closing = 2 * pressure * d2 * shaftBore / (modulusShaft * (d2 - bore2));
    return new Joint(
        left,
        pressure,
        hubHoop,
        2 * pressure * d2 / (outside2 - d2),
        -pressure,
        StrictMath.sqrt(hubHoop * hubHoop + hubHoop * pressure + pressure * pressure),
        -pressure * core,
        shaftBore == 0 ? -pressure : -2 * pressure * d2 / (d2 - bore2),
        held(holding * pressure),
        held(holding * pressure * diameter / 2),
        diameter * (1 + pressure * (ring + poissonHub) / modulusHub),
        hubOutside + 2 * pressure * d2 * hubOutside / (modulusHub * (outside2 - d2)),
        shaftBore - closing,
        closing,
        hot,
        pressureHot,
        held(holding * pressureHot * diameter / 2),
        heat(diameter, interference, fittingClearance, expansionHub),
        cool(diameter, interference, fittingClearance, expansionShaft));
  }

  private static Uncertain heat(
      double diameter, double interference, double clearance, double expansion) {
    if (!(expansion > 0)) {
      return Uncertain.absent("give expansion_hub to have the temperature to heat to");
    }
    double open = Double.isNaN(clearance) ? diameter / 1000 : clearance;
    return new Uncertain(AMBIENT + (interference + open) / (expansion * diameter), 0);
  }

  private static Uncertain cool(
      double diameter, double interference, double clearance, double expansion) {
    if (!(expansion > 0)) {
      return Uncertain.absent("give expansion_shaft to have the temperature to cool to");
    }
    double open = Double.isNaN(clearance) ? diameter / 1000 : clearance;
    double temperature = AMBIENT - (interference + open) / (expansion * diameter);
    return temperature < FittingTemperature.NITROGEN
        ? Uncertain.absent(
            "cooling alone cannot do it: colder than liquid nitrogen; heat the hub as well")
        : new Uncertain(temperature, 0);
  }

  private static Uncertain held(double value) {
    return Double.isNaN(value)
        ? Uncertain.absent("force and torque need the length of the joint: give length")
        : new Uncertain(value, 0);
  }

  private static double growth(String name, double expansion, double temperature) {
    if (temperature == AMBIENT) {
      return 0;
    }
    if (Double.isNaN(expansion)) {
      throw new RefusedException("give " + name + ": the part is not at 20 degC");
    }
    return expansion * (temperature - AMBIENT);
  }
}
