package endfloat.instruments;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.definition.TypesetAs;

/** Run-out that eccentricity, lobes and tilted faces cause. */
public final class RunOut {
  private static final int STEPS = 3600;

  private RunOut() {}

  /**
   * Run-out of a journal.
   *
   * @param runOut full indicator reading
   * @param fromEccentricity 2 e, what eccentricity alone would cause
   */
  public record Reading(@In("mm") double runOut, @In("mm") double fromEccentricity) {}

  /**
   * Full indicator reading of a journal that is eccentric and lobed: greatest less least of {@code
   * e cos φ + A cos(n φ − ψ)}.
   *
   * @param eccentricity e
   * @param amplitude A, of the lobed form on the radius
   * @param lobes n
   * @param phase ψ, of the form against the eccentricity
   */
  @Calculates(
      source =
          "ISO 1101: run-out is twice the eccentricity of a round journal; extremes of the sum",
      cautions =
          "Eccentricity and an oval in phase can show less together than their sum: read the form by itself.",
      terms = {"TIR", "FIM", "full indicator movement", "circular run-out"})
  public static Reading runOut(
      @In("mm") @Range(">= 0 mm") double eccentricity,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double amplitude,
      @In("1") @Range("2 .. 100") @Default("2") double lobes,
      @In("deg") @Default("0 deg") double phase) {
    if (lobes != Math.rint(lobes)) {
      throw new RefusedException("lobes is a whole number.");
    }
    return new Reading(
        extreme(1, eccentricity, amplitude, lobes, phase)
            + extreme(-1, eccentricity, amplitude, lobes, phase),
        2 * eccentricity);
  }

  /** Greatest of the sum with its sign turned as asked, sampled and closed in upon. */
  private static double extreme(double sign, double e, double a, double n, double phase) {
    double best = Double.NEGATIVE_INFINITY;
    double at = 0;
    double step = 2 * StrictMath.PI / STEPS;
    for (int i = 0; i < STEPS; i++) {
      double value = sign * radius(step * i, e, a, n, phase);
      if (value > best) {
        best = value;
        at = step * i;
      }
    }
    double low = at - step;
    double high = at + step;
    for (int k = 0; k < 100; k++) {
      double left = low + (high - low) / 3;
      double right = high - (high - low) / 3;
      if (sign * radius(left, e, a, n, phase) < sign * radius(right, e, a, n, phase)) {
        low = left;
      } else {
        high = right;
      }
    }
    return Math.max(best, sign * radius((low + high) / 2, e, a, n, phase));
  }

  private static double radius(double angle, double e, double a, double n, double phase) {
    return e * StrictMath.cos(angle) + a * StrictMath.cos(n * angle - phase);
  }

  /**
   * Run-out of a face that is tilted: {@code D |tan τ|}; it counts as positive either way.
   *
   * @param diameter D, of the circle on which the indicator runs
   * @param tilt τ, of the face against the axis
   */
  @Calculates(
      source = "plane geometry; axial run-out, ISO 1101",
      cautions = "End float of the shaft reads as face run-out: hold it against one thrust face.",
      terms = {"axial run-out", "face wobble", "swash"},
      partials = "faceRunOutPartials")
  @TypesetAs("diameter * abs(tan(tilt))")
  @In("mm")
  public static double faceRunOut(
      @In("mm") @Range("> 0 mm") double diameter,
      @In("deg") @Range("-45 deg .. 45 deg") double tilt) {
    return diameter * Math.abs(StrictMath.tan(tilt));
  }

  /** Of {@link #faceRunOut}. */
  public static double[][] faceRunOutPartials(double diameter, double tilt) {
    double cos = StrictMath.cos(tilt);
    double way = tilt < 0 ? -1 : 1;
    return new double[][] {{way * StrictMath.tan(tilt), way * diameter / (cos * cos)}};
  }
}
