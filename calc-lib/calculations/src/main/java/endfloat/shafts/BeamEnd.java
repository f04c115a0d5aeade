package endfloat.shafts;

/** How an end of a beam is held. */
public enum BeamEnd {
  /** Neither force nor couple. */
  FREE,
  /** Cannot move, can turn. */
  SUPPORTED,
  /** Can neither move nor turn. */
  FIXED,
  /** Can move across the beam, cannot turn. */
  GUIDED;

  BeamLine.Support support() {
    double rigid = Double.POSITIVE_INFINITY;
    return switch (this) {
      case FREE -> BeamLine.Support.NONE;
      case SUPPORTED -> new BeamLine.Support(rigid, 0);
      case FIXED -> new BeamLine.Support(rigid, rigid);
      case GUIDED -> new BeamLine.Support(0, rigid);
    };
  }
}
