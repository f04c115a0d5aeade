package endfloat.engine;

import endfloat.units.UnitSystem;
import endfloat.working.Terms;
import java.util.Optional;

/**
 * What holds for the whole record.
 *
 * @param units whose units it shows
 * @param rule decision rule for limits that name none; empty where each takes its own default
 * @param coverage coverage factor k of the guard band and of expanded uncertainties as printed, for
 *     uncertainties that do not rest on a few readings
 * @param stage the current stage: a bare name of a reading means its readings at this stage
 * @param terms in whose words messages are
 */
public record GraphSettings(
    UnitSystem units, Optional<DecisionRule> rule, double coverage, String stage, Terms terms) {
  /** Of lines and clauses without a record. */
  public static final GraphSettings STANDARD =
      new GraphSettings(UnitSystem.AS_TYPED, Optional.empty(), 2, "as found", Terms.BRITISH);

  /**
   * Expanded uncertainty: k times the standard one, or more where that rests on a few readings.
   *
   * @param degrees effective degrees of freedom; infinite, or NaN where none can be stated
   */
  public double expanded(double standardUncertainty, double degrees) {
    return Coverage.factor(coverage, degrees) * standardUncertainty;
  }

  /** The same with messages in the words of one side. */
  public GraphSettings in(Terms words) {
    return new GraphSettings(units, rule, coverage, stage, words);
  }

  GraphSettings atStage(String other) {
    return new GraphSettings(units, rule, coverage, other, terms);
  }
}
