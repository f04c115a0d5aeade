package endfloat.plates;

/** How an edge of a plate is held. */
public enum Edge {
  /** Neither force nor moment. */
  FREE,
  /** Cannot move, can tilt. */
  SUPPORTED,
  /** Can neither move nor tilt. */
  FIXED,
  /** Can move, cannot tilt: a rigid hub or rim. */
  GUIDED
}
