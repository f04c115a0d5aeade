package endfloat.review;

import java.util.Set;

/** A record is to be compared at a stage at which nothing of it is read. */
public final class StageNotReadException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String wayOut;

  StageNotReadException(String stage, Set<String> stages) {
    super("Nothing of the record is read at the stage '" + stage + "'.");
    this.wayOut =
        stages.isEmpty()
            ? "It has no readings; leave the stage out."
            : "It is read at these: " + String.join(", ", stages) + ".";
  }

  /** What can be done. */
  public String wayOut() {
    return wayOut;
  }
}
