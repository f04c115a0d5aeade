package endfloat.cli;

/** Exit codes. Where several hold, 2 comes before 1 and 1 before 0. */
final class Exit {
  /** Done; a verdict "not proven" is no fault. */
  static final int DONE = 0;

  /** A verdict is outside, or figures disagree. */
  static final int OUTSIDE = 1;

  /** The input cannot be used as it stands. */
  static final int BAD_INPUT = 2;

  private Exit() {}
}
