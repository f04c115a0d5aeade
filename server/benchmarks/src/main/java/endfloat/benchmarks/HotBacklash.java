package endfloat.benchmarks;

import endfloat.engine.Clause;
import endfloat.engine.GraphSettings;
import endfloat.engine.GraphSource;
import java.util.List;

/**
 * Task: hot backlash of a bevel mesh. A steel tower shaft carries a bevel pinion in a light-alloy
 * case; heat moves the pinion along its axis. Twelve formulas, eight uncertain inputs.
 *
 * <p>Here in the three forms that are measured: lines of the working language, one Java method, and
 * plain expressions in SI for a general evaluator.
 */
final class HotBacklash {
  /** The inputs, with expanded uncertainties U = 2 u, and the exact constants. */
  static final String INPUTS =
      """
      lash_cold [mm] = 0.180 mm ± 0.024 mm
      case_length [mm] = 142.0 mm ± 0.10 mm
      shaft_length [mm] = 138.5 mm ± 0.10 mm
      alpha_case [1/K] = 22.8e-6 1/K ± 0.80e-6 1/K
      alpha_shaft [1/K] = 11.7e-6 1/K ± 0.50e-6 1/K
      t_case [degC] = 92 degC ± 6 K
      t_shaft [degC] = 108 degC ± 8 K
      end_float [mm] = 0.080 mm ± 0.020 mm
      t_cold [degC] = 20 degC
      pressure_angle [deg] = 20 deg
      pitch_cone_angle [deg] = 24.5 deg
      pitch_radius [mm] = 38 mm
      bearing_slop [mm] = 0.020 mm
      wobble [mm] = 0.015 mm
      """;

  static final String CHAIN =
      """
      rise_case [K] = t_case - t_cold
      rise_shaft [K] = t_shaft - t_cold
      growth_case [mm] = case_length * alpha_case * rise_case
      growth_shaft [mm] = shaft_length * alpha_shaft * rise_shaft
      shift [mm] = growth_case - growth_shaft
      rate [1] = 2 * tan(pressure_angle) * sin(pitch_cone_angle)
      opened [mm] = rate * shift
      floated [mm] = rate * end_float
      lash_hot [mm] = lash_cold + opened
      lash_least [mm] = lash_hot - floated
      lash_angle [arcmin] = lash_least / pitch_radius
      lash_reduced [mm] = lash_hot - sqrt((floated / 2)^2 + (rate * bearing_slop)^2 + wobble^2)
      """;

  static final Clause INPUT_CLAUSE = new Clause.Working("inputs", "", INPUTS);

  static final GraphSource SOURCE =
      new GraphSource(
          List.of(INPUT_CLAUSE, new Clause.Working("chain", "", CHAIN)),
          List.of(),
          GraphSettings.STANDARD);

  static final List<String> RESULTS =
      List.of(
          "rise_case",
          "rise_shaft",
          "growth_case",
          "growth_shaft",
          "shift",
          "rate",
          "opened",
          "floated",
          "lash_hot",
          "lash_least",
          "lash_angle",
          "lash_reduced");

  /** Values of the results [SI], by 50-digit arithmetic outside this project (mpmath 1.3). */
  static final double[] VALUES = {
    72,
    88,
    0.2331072e-3,
    0.1425996e-3,
    0.0905076e-3,
    0.30187199335640485,
    0.027321709625904148e-3,
    0.024149759468512388e-3,
    0.20732170962590415e-3,
    0.18317195015739176e-3,
    16.571020530314562 * Math.PI / 10800,
    0.18714118929698451e-3
  };

  /** Standard uncertainties to first order [SI], by differences in the same arithmetic. */
  static final double[] UNCERTAINTIES = {
    3,
    4,
    0.010538977613e-3,
    0.00716244304902e-3,
    0.0127424738398e-3,
    0,
    0.0038465959783e-3,
    0.00301871993356e-3,
    0.0126014404185e-3,
    0.0129579693879e-3,
    1.17226887945 * Math.PI / 10800,
    0.0126337610461e-3
  };

  /** The inputs in SI, temperatures in kelvin: the order of {@link #INPUTS}. */
  static final double[] SI = {
    0.180e-3,
    142.0e-3,
    138.5e-3,
    22.8e-6,
    11.7e-6,
    365.15,
    381.15,
    0.080e-3,
    293.15,
    20 * Math.PI / 180,
    24.5 * Math.PI / 180,
    38e-3,
    0.020e-3,
    0.015e-3
  };

  /** Names of the inputs, and the chain, as plain expressions for a general evaluator. */
  static final List<String> NAMES =
      INPUTS.lines().map(line -> line.substring(0, line.indexOf(' '))).toList();

  static final List<String> PLAIN =
      CHAIN.lines().map(line -> line.substring(line.indexOf('=') + 2)).toList();

  private HotBacklash() {}

  /** The chain written by hand, nothing folded. */
  static void byHand(double[] in, double[] out) {
    out[0] = in[5] - in[8];
    out[1] = in[6] - in[8];
    out[2] = in[1] * in[3] * out[0];
    out[3] = in[2] * in[4] * out[1];
    out[4] = out[2] - out[3];
    out[5] = 2 * StrictMath.tan(in[9]) * StrictMath.sin(in[10]);
    out[6] = out[5] * out[4];
    out[7] = out[5] * in[7];
    out[8] = in[0] + out[6];
    out[9] = out[8] - out[7];
    out[10] = out[9] / in[11];
    double slop = out[5] * in[12];
    out[11] = out[8] - Math.sqrt(out[7] / 2 * (out[7] / 2) + slop * slop + in[13] * in[13]);
  }
}
