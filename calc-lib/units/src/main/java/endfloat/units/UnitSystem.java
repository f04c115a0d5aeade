package endfloat.units;

/** Whose units a sheet shows. Readings keep the unit they were typed in. */
public enum UnitSystem {
  METRIC,
  /** Inches and pounds-force, with the imperial gallon. */
  IMPERIAL,
  /** Inches and pounds-force, with the US gallon. */
  AMERICAN
}
