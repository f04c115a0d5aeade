package endfloat.engine;

import endfloat.units.UnitSystem;
import java.util.Optional;

/**
 * What holds for the whole record.
 *
 * @param units whose units it shows
 * @param rule decision rule for limits that name none; empty where each takes its own default
 * @param coverage coverage factor k of the guard band and of expanded uncertainties as printed
 * @param stage the current stage: a bare name of a reading means its readings at this stage
 */
public record GraphSettings(
    UnitSystem units, Optional<DecisionRule> rule, double coverage, String stage) {
  /** Of lines and clauses without a record. */
  public static final GraphSettings STANDARD =
      new GraphSettings(UnitSystem.AS_TYPED, Optional.empty(), 2, "as found");

  GraphSettings atStage(String other) {
    return new GraphSettings(units, rule, coverage, other);
  }
}
