package endfloat.units;

/** Whose units a sheet shows. Readings keep the unit they were typed in. */
public enum UnitSystem {
  METRIC,
  /** Every figure in the unit of its own line: lines worked without a sheet. */
  AS_TYPED,
  /** Inches and pounds-force, with the imperial gallon. */
  IMPERIAL,
  /** Inches and pounds-force, with the US gallon. */
  AMERICAN
}
