package endfloat.gears;

/** What becomes of the tips where profile shifts bring the centres closer than they add up to. */
public enum TipHeight {
  /** Addendum and profile shift as they are. */
  FULL,
  /** Turned down until the clearance at the mate's root is that of the rack again. */
  SHORTENED
}
